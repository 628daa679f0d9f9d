import { describe, expect, it } from 'vitest';
import { bodyOf, changedDay, chosenDeadline, deadlineShown, withDay, withoutDay, type ProgrammeDraft } from '../../../client/views/folder/programme/form.ts';
import { turnSentence, when } from '../../../client/views/folder/late.ts';

const empty: ProgrammeDraft = { title: ' Thaw ', season: '2026/27', conductor: '', days: [], deadlines: {} };

describe('a programme being written', () => {
  it('one more day follows the last of its kind, over the end of a month', () => {
    const first = changedDay(withDay(empty, 'rehearsal'), 0, { date: '2027-02-28', time: '10:00', words: 'Hall 2' });
    const second = withDay(withDay(first, 'rehearsal'), 'concert');
    expect(second.days).toEqual([
      { kind: 'rehearsal', date: '2027-02-28', time: '10:00', words: 'Hall 2' },
      { kind: 'rehearsal', date: '2027-03-01', time: '10:00', words: 'Hall 2' },
      { kind: 'concert', date: '', time: null, words: '' },
    ]);
    expect(withoutDay(second, 0).days.map(({ date }) => date)).toEqual(['2027-03-01', '']);
  });

  it('is kept without the days that have no date', () => {
    const draft = withDay(changedDay(withDay(empty, 'rehearsal'), 0, { date: '2027-03-29' }), 'concert');
    expect(bodyOf(draft)).toEqual({ title: 'Thaw', season: '2026/27', conductor: '', days: [{ kind: 'rehearsal', date: '2027-03-29', time: null, words: '' }], deadlines: {} });
  });

  it('deadlines follow the first rehearsal until they are chosen, and again when the choice is taken back', () => {
    const dated = changedDay(withDay(withDay(empty, 'concert'), 'rehearsal'), 1, { date: '2027-03-29' });
    expect([deadlineShown(dated, 'onStands'), deadlineShown(dated, 'printed'), deadlineShown(empty, 'onStands')]).toEqual(['2027-03-15', '', '']);
    const chosen = chosenDeadline(dated, 'onStands', '2027-03-20');
    const none = chosenDeadline(chosen, 'onStands', null);
    expect([deadlineShown(chosen, 'onStands'), deadlineShown(none, 'onStands'), deadlineShown(chosenDeadline(none, 'onStands', undefined), 'onStands')]).toEqual(['2027-03-20', '', '2027-03-15']);
  });
});

describe('what is late, in words', () => {
  it('says days in words a player would use', () => {
    expect([-4, -1, 0, 1, 9].map(when)).toEqual(['4 days late', 'one day late', 'due today', 'due tomorrow', 'due in 9 days']);
  });

  it('says who is waited for', () => {
    const [ilya, mona, jon] = ['Ilya', 'Mona', 'Jon'].map((name) => ({ id: name, name }));
    expect(turnSentence({ turn: 'players', players: [mona!, jon!], principal: ilya! })).toBe('Still to vote: Mona and Jon. Then Ilya decides.');
    expect(turnSentence({ turn: 'players', players: [mona!], principal: null })).toBe('Still to vote: Mona.');
    expect(turnSentence({ turn: 'principal', principal: ilya! })).toBe('It waits for Ilya.');
    expect(turnSentence({ turn: 'nobody' })).toBe('');
  });
});
