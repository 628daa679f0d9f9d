import { describe, expect, it } from 'vitest';
import { offersFor } from '../../../client/fingering/offersFor.ts';
import type { Question } from '../../../client/fingering/messages.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { partOf } from '../../support/partBuilder.ts';

const part = partOf('{q=60} D5:1( E5:1 F5:1 G5:1 | A5:2 F5:1 D5:1) |');
const ids = part.measures.flatMap(({ notes }) => notes.map(({ id }) => id));
const question: Question = { from: ids[0]!, to: ids.at(-1)!, aim: 'usual', pencilled: [], standing: [], openStrings: 'free', hand: null, players: 8, assumedTempo: 90, language: 'en' };
const finger = (note: string, value: 0 | 1 | 2 | 3 | 4): Mark => ({ note, value: { kind: 'finger', finger: value } });
const string = (note: string, value: 1 | 2 | 3 | 4): Mark => ({ note, value: { kind: 'string', string: value } });

describe('fingerings for a passage of a part', () => {
  const { offers } = offersFor(part, question);

  it('are five that differ in string or place of the hand, cheapest first, with a picture and sentences for every note', () => {
    expect(offers).toHaveLength(5);
    expect(offers.map(({ cost }) => cost)).toEqual(offers.map(({ cost }) => cost).sort((a, b) => a - b));
    const ways = offers.map(({ facts }) => facts.steps.map((step) => `${step.string}.${step.finger === 0 ? 'open' : step.position}`).join());
    expect(new Set(ways).size).toBe(5);
    for (const offer of offers) {
      expect(offer.path.map(({ note }) => note)).toEqual(ids);
      expect(offer.steps.map(({ note }) => note)).toEqual(ids);
      expect(offer.terms.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(offer.cost, 1);
    }
    expect(offers[0]!.beside).toEqual([]);
    expect(offers[1]!.beside[0]).toMatch(/^Measure/);
    expect(offers[1]!.beside.join(' ')).toMatch(/; b /);
  });

  it('are compared two by two, with the notes that differ and a sentence for each place', () => {
    const { pairs } = offersFor(part, question);
    expect(pairs.map(({ a, b }) => `${a}${b}`)).toEqual(['01', '02', '03', '04', '12', '13', '14', '23', '24', '34']);
    for (const { a, b, differs, sentences } of pairs) {
      const way = (i: number, note: string): string => { const { string: on, finger: with_, position } = offers[i]!.facts.steps.find((step) => step.note === note)!; return `${on} ${with_} ${with_ === 0 ? '' : position}`; };
      expect(differs).toEqual(ids.filter((note) => way(a, note) !== way(b, note)));
      expect(differs.length).toBeGreaterThan(0);
      expect(sentences[0]).toMatch(/^Measure/);
    }
    expect(offers[3]!.beside).toEqual(pairs.find(({ a, b }) => a === 0 && b === 3)!.sentences);
  });

  it('are explained in the language asked for, with printed numbers', () => {
    const inGerman = offersFor(part, { ...question, language: 'de' }).offers;
    expect(inGerman.map(({ marks }) => marks)).toEqual(offers.map(({ marks }) => marks));
    expect(inGerman[0]!.totals).toMatch(/^a: \d+ Lagenwechsel, \d+ Saitenwechsel/);
    expect(inGerman[1]!.beside[0]).toMatch(/^Takt (1|2|1 bis 2): a /);
  });

  it('keep to what is pencilled', () => {
    const kept = offersFor(part, { ...question, pencilled: [finger(ids[0]!, 1), string(ids[0]!, 3)] });
    for (const { facts } of kept.offers) expect(facts.steps[0]).toMatchObject({ finger: 1, string: 3 });
  });

  it('stand beside the section’s own, which keeps to the marks in force', () => {
    const beside = offersFor(part, { ...question, standing: [finger(ids[0]!, 4), string(ids[0]!, 3)] });
    const own = beside.offers.find(({ by }) => by === 'section')!;
    expect(own.facts.steps[0]).toMatchObject({ finger: 4, string: 3 });
    expect(beside.offers.filter(({ by }) => by === 'engine')).toHaveLength(5);
  });

  it('take marks in force as the agreement gives them, with the seats they are for; those of some seats only are left to those seats', () => {
    const inForce = (seats: 'all' | ['1i']) => [{ ...finger(ids[0]!, 4), seats }, { ...string(ids[0]!, 3), seats }];
    expect(offersFor(part, { ...question, standing: inForce('all') }).offers.find(({ by }) => by === 'section')?.facts.steps[0]).toMatchObject({ finger: 4, string: 3 });
    expect(offersFor(part, { ...question, standing: inForce(['1i']) }).offers.some(({ by }) => by === 'section')).toBe(false);
  });

  it('cover the notes between the two that were named, whichever comes first', () => {
    const some = offersFor(part, { ...question, from: ids[4]!, to: ids[1]! });
    expect(some.offers[0]!.path.map(({ note }) => note)).toEqual(ids.slice(1, 5));
  });

  it('that ask more than the player’s hand carry the caution and what it could play instead', () => {
    const wide = partOf('{q=60} [E4 G#5]:2 |');
    const [one, two] = wide.measures[0]!.notes.map(({ id }) => id);
    const small = offersFor(wide, { ...question, from: one!, to: two!, hand: { factor: 0.8, shortFourth: true }, pencilled: [finger(one!, 1), string(one!, 3), finger(two!, 4), string(two!, 2)] });
    const words = small.offers[0]!.cautions.join(' ');
    expect(words).toMatch(/licensed clinician/);
    expect(words).not.toMatch(/\bsafe/i);
  });
});
