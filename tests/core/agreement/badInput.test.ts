import { describe, expect, it } from 'vitest';
import { refusalText } from '../../../core/agreement/refusal.ts';
import { Conversation, id, PRINCIPAL, slip } from './section.ts';

function sentence(name: string, input: unknown): string {
  const decision = new Conversation().hear(PRINCIPAL, name, input);
  return decision.ok ? 'written' : refusalText(decision.refusal);
}

const mark = { note: 'm1n0', value: { kind: 'finger', finger: 2 } };

describe('input of the wrong form', () => {
  const cases: [string, string, unknown, string][] = [
    ['an empty reason', 'propose', { ...slip(1), why: '  ' }, 'the sentence of why is missing. Write something.'],
    ['a long reason', 'propose', { ...slip(1), why: 'x'.repeat(501) }, 'the sentence of why must be 500 or fewer characters. Make it shorter.'],
    ['no reason', 'setAside', { proposal: id(1) }, 'the sentence of why is missing or of the wrong kind. Fill it in.'],
    ['no marks', 'propose', { ...slip(1), marks: [] }, 'the marks are missing. Write something.'],
    ['too many marks', 'propose', { ...slip(1), marks: Array(401).fill(mark) }, 'the marks must be 400 or fewer. Make it shorter.'],
    ['a finger no hand has', 'propose', { ...slip(1), marks: [mark, { ...mark, value: { kind: 'finger', finger: 5 } }] }, 'mark 2: its sign is not one of the things it can be. Choose again.'],
    ['a sign nobody knows', 'propose', { ...slip(1), marks: [{ ...mark, value: { kind: 'smile' } }] }, 'mark 1: its sign is not one of the things it can be. Choose again.'],
    ['a measure before the first', 'propose', { ...slip(1), from: 0 }, 'the first measure must be 1 or more.'],
    ['half a measure', 'comment', { id: id(1), measure: 1.5, text: 'x' }, 'the measure is missing or of the wrong kind. Fill it in.'],
    ['too long a comment', 'comment', { id: id(1), measure: 1, text: 'x'.repeat(2001) }, 'the words must be 2000 or fewer characters. Make it shorter.'],
    ['a name that is none', 'withdraw', { proposal: 'slip a' }, 'the proposal it is about is not one of the things it can be. Choose again.'],
    ['a seat written wrongly', 'propose', { ...slip(1), seats: ['front'] }, 'the seats are not one of the things it can be. Choose again.'],
    ['a field from elsewhere', 'moveOn', { stage: 'printed', force: true }, 'the whole line has something unknown (force). Load the page again.'],
    ['nothing at all', 'moveOn', undefined, 'the whole line is missing or of the wrong kind. Fill it in.'],
    ['a stage nobody knows', 'moveOn', { stage: 'lost' }, 'the stage is not one of the things it can be. Choose again.'],
    ['an operation nobody knows', 'eraseAll', {}, 'the library does not know what this page asks for. Load the page again.'],
  ];
  it.each(cases)('%s: the sentence says where and what to do', (_, name, input, words) => {
    expect(sentence(name, input)).toBe(`Not written: ${words}`);
  });

  it('limits are met exactly: 500 characters of why, 400 marks, 2,000 characters of comment', () => {
    const notes = Array.from({ length: 400 }, (_, n) => `n${n}`);
    const talk = new Conversation({ measures: 1, notes: new Map(notes.map((note) => [note, 1])), seats: [] });
    expect(talk.say(PRINCIPAL, 'propose', slip(1, { why: 'x'.repeat(500), marks: notes.map((note) => ({ note, value: { kind: 'finger', finger: 1 } })) }))).toBe('written');
    expect(talk.say(PRINCIPAL, 'comment', { id: id(2), measure: 1, text: 'x'.repeat(2000) })).toBe('written');
  });

  it('spaces round a sentence are not kept', () => {
    const talk = new Conversation();
    talk.say(PRINCIPAL, 'propose', slip(1, { why: '  Darker \n' }));
    expect(talk.state.proposals[id(1)]?.why).toBe('Darker');
  });
});
