import { describe, expect, it } from 'vitest';
import type { Part } from '../../../core/music/part.ts';
import { partsOfFile } from '../../../server/imports/oneFile.ts';
import type { StoredPart } from '../../../server/store/library.ts';
import { smallPart } from '../../support/smallPart.ts';

const stored = (edition: string, ...names: string[]): StoredPart[] =>
  names.map((name, i) => ({ id: `${edition}${i}`, work: { id: 'w', title: '', composer: '' }, edition, section: null, content: smallPart(`P${i + 1}`, name), revision: 1, rewritten: 0, head: 0 }));
const file = (...names: string[]): Part[] => names.map((name, i) => smallPart(`P${i + 1}`, name));
const about = (work: StoredPart[], parts: Part[], movement = '') => {
  const found = partsOfFile(work, parts, movement);
  return [found.stored.map(({ id }) => id), found.parts.map(({ name }) => name)];
};

describe('what a corrected file is about', () => {
  it('all parts of a work in one file, also where the file lacks one', () => {
    expect(about(stored('a', 'Violin I', 'Viola'), file('Violin I'))).toEqual([['a0', 'a1'], ['Violin I']]);
  });

  it('the one part of its own file where each part came in a file', () => {
    expect(about([...stored('a', 'Violin I'), ...stored('b', 'Viola')], file('Viola'))).toEqual([['b0'], ['Viola']]);
  });

  it('all of them where the file is the whole work', () => {
    expect(about([...stored('a', 'Violin I'), ...stored('b', 'Viola')], file('Violin I', 'Viola'))).toEqual([['a0', 'b0'], ['Violin I', 'Viola']]);
  });

  it('the movement it is called after; its parts keep the name of the movement', () => {
    const work = [...stored('a', 'Violin I (one)', 'Viola (one)'), ...stored('b', 'Violin I (two)', 'Viola (two)')];
    expect(about(work, file('Violin I', 'Viola'), 'two')).toEqual([['b0', 'b1'], ['Violin I (two)', 'Viola (two)']]);
  });

  it('a part keeps the instrument the librarian gave it', () => {
    const [part] = stored('a', 'Violin III');
    const given = { ...part!, content: { ...part!.content, instrument: 'viola' as const } };
    expect(partsOfFile([given], file('Violin III', 'Violin I'), '').parts.map(({ instrument }) => instrument)).toEqual(['viola', 'violin']);
  });
});
