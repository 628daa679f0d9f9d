import { describe, expect, it } from 'vitest';
import { prepare, withPin } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { sequenceCosts } from '../../../core/fingering/sequences.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from './lines.ts';

const FIGURE = [0, 4, 2, 5, 4, 7, 5, 2];
/** The figure on four degrees, a tone apart. */
const line = eighths([0, 2, 4, 6].flatMap((degree) => FIGURE.map((above) => 69 + degree + above)));
const prepared = prepare({ instrument: instrumentNamed('violin'), line, tempo: 90, pins: new Map(), aim: 'usual', hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') });

describe('a figure that comes again on other degrees', () => {
  it('costs what share of its likely fingerings takes another finger, over all its places', () => {
    const { layers, marginals, sequences } = prepared;
    const places = [11, 19];
    expect(places.every((at) => sequences.has(at))).toBe(true);
    const group = [...sequences.keys()].filter((at) => at % 8 === 3);
    const likely = (finger: number): number => group.reduce((sum, at) => sum + layers[at]!.states.reduce((share, [place], s) => share + (place!.finger === finger ? marginals.states[at]![s]! : 0), 0), 0) / group.length;
    for (const at of group) layers[at]!.states.forEach(([place], s) => expect(sequences.get(at)![s]).toBeCloseTo(1 - likely(place!.finger), 9));
  });

  it('is not what a line without a return is', () => {
    const lone = eighths([69, 71, 74, 73, 78, 76, 81, 79, 74, 77, 70, 83]);
    expect(sequenceCosts(prepared.layers.slice(0, 12), lone, prepared.marginals).size).toBe(0);
  });

  it('is a cost of its own that adds up with the others', () => {
    for (const { cost, terms } of suggest(prepared, 5)) {
      expect(terms.sequence).toBeGreaterThan(0);
      expect(Object.values(terms).reduce((sum, part) => sum + part, 0)).toBeCloseTo(cost, 6);
    }
  });

  it('is weighed after a pin as if solved with the pin from the start', () => {
    const pin = { string: 3 };
    const again = withPin(prepared, 'n11', pin)!;
    const anew = prepare({ ...prepared.request, pins: new Map([['n11', pin]]) });
    const kept = anew.layers.findIndex(({ states }, i) => states.length !== prepared.layers[i]!.states.length);
    expect(kept).toBe(11);
    for (const [at, costs] of anew.sequences) if (at !== kept) costs.forEach((cost, s) => expect(again.sequences.get(at)![s]).toBeCloseTo(cost, 6));
    expect(suggest(again, 1)[0]!.cost).toBeCloseTo(suggest(anew, 1)[0]!.cost, 6);
  });
});
