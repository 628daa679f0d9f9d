import { describe, expect, it } from 'vitest';
import { HAND_IN_ENGLISH } from '../../../../core/fingering/words/english.ts';
import { HAND_IN_FRENCH } from '../../../../core/fingering/words/french.ts';
import { HAND_IN_GERMAN } from '../../../../core/fingering/words/german.ts';
import type { HandWords } from '../../../../core/fingering/words/handWords.ts';
import { HAND_IN_ITALIAN } from '../../../../core/fingering/words/italian.ts';

const OTHERS: [string, HandWords][] = [['German', HAND_IN_GERMAN], ['French', HAND_IN_FRENCH], ['Italian', HAND_IN_ITALIAN]];

/** Every sentence with blanks, each filled with what can be told from the others. */
function sentences(words: HandWords): Record<string, string> {
  const { clause, hand } = words;
  return {
    finger: words.finger(3), string: words.string('G'), position: words.position(14), half: words.position(2.5), measure: words.measure(77), measures: words.measures(71, 72), note: words.note('q1', 5, 'q2'),
    letters: words.letters(21, true), semitones: words.semitones(22, false), travel: words.travel(61, 62, 63, 'q1'), reaches: words.reaches('q1', 'up'), follows: words.follows('q1'), stretch: words.stretch('q1', 61, 'q2'),
    stays: clause.stays('q1', 'q2'), shiftsTo: clause.shiftsTo('q1', 'q2', 'q3'), shiftsOverOpen: clause.shiftsOverOpen('q1'), substitutes: clause.substitutes('q1', 'q2'), shifts: clause.shifts(51, 'q1'),
    delayed: clause.delayed('q1', 'q2', 'q3'), crossesTo: clause.crossesTo('q1', 'q2'), crossesAndBack: clause.crossesAndBack('q1', 'q2', 'q3'), crosses: clause.crosses(51), reachesFor: clause.reachesFor('q1', 'q2', 'back'),
    out: clause.reaches(51), open: clause.open(['q1', 'q2']), many: clause.open(['q1', 'q2', 'q3']), slidesInto: clause.slidesInto('q1'), slidesIntoMeasure: clause.slidesIntoMeasure('q1'), slides: clause.slides(51, 'q1'), fingers: clause.fingers(['q1', 'q2', 'q3']),
    tooWide: hand.tooWide('q1', 61, 'q2'), instead: hand.instead('q1', 'q2'), loses: hand.loses(['q1', 'q2']), losesOne: hand.loses(['q1']), noWay: hand.noWay(['q1', 'q2']),
    sideBySide: words.sideBySide('q1', ['q2', 'q3'], 'q4', 'q5'), totals: words.totals('q1', { shifts: 51, crossings: 52, openStrings: 53, slides: 54 }, 'q2'),
  };
}
const blanks = (text: string): string[] => [...new Set(text.match(/q\d|[5-7]\d/g) ?? [])].sort();

describe.each(OTHERS)('the hand in %s', (_, words) => {
  it('tells all that English tells', () => {
    const english = sentences(HAND_IN_ENGLISH);
    for (const [name, text] of Object.entries(sentences(words))) {
      expect(blanks(text), `${name}: ${text}`).toEqual(blanks(english[name]!));
      expect(text, name).not.toMatch(/undefined|NaN| {2}/);
    }
  });

  it('has a word for every cost that English names', () => {
    expect(Object.keys(words.terms).sort()).toEqual(Object.keys(HAND_IN_ENGLISH.terms).sort());
    const alike = Object.values(words.terms).filter((term) => term !== 'extensions' && Object.values(HAND_IN_ENGLISH.terms).includes(term));
    expect(alike).toEqual([]);
  });
});

describe('strings, positions and notes by the habit of the language', () => {
  it('strings', () => {
    expect(OTHERS.map(([, { string }]) => string('E'))).toEqual(['der E-Saite', 'la corde de mi', 'la corda di mi']);
  });

  it('positions', () => {
    expect(OTHERS.map(([, { position }]) => [0, 1, 3].map(position))).toEqual([
      ['der halben Lage', 'der 1. Lage', 'der 3. Lage'],
      ['demi-position', '1re position', '3e position'],
      ['mezza posizione', 'prima posizione', 'terza posizione'],
    ]);
  });

  it('notes: German has H and B, As and Es; French and Italian sing', () => {
    const notes = [['B', 0], ['B', -1], ['A', -1], ['E', -1], ['F', 2]] as const;
    expect(OTHERS.map(([, { pitch }]) => notes.map(([letter, alter]) => pitch(letter, alter)))).toEqual([
      ['H', 'B', 'As', 'Es', 'Fisis'],
      ['si', 'si bémol', 'la bémol', 'mi bémol', 'fa double dièse'],
      ['si', 'si bemolle', 'la bemolle', 'mi bemolle', 'fa doppio diesis'],
    ]);
  });

  it('whole sentences with their prepositions', () => {
    const shift = OTHERS.map(([, words]) => words.clause.shiftsTo(words.position(3), words.string('A'), words.note(words.pitch('B', -1), 1, null)));
    expect(shift).toEqual([
      'wechselt bei B auf der A-Saite zu der 3. Lage',
      'démanche en 3e position sur la corde de la au si bémol',
      'passa in terza posizione sulla corda di la al si bemolle',
    ]);
    expect(OTHERS.map(([, words]) => words.clause.delayed(words.note('q', 1, null), words.finger(4), words.note('r', 2, null)))).toEqual([
      'greift mit dem 4. Finger nach q voraus und lässt die Hand auf 2. r folgen',
      'va chercher le q avec le 4e doigt et laisse la main suivre sur le 2e r',
      'cerca il q col 4º dito e lascia che la mano segua sul 2º r',
    ]);
  });
});
