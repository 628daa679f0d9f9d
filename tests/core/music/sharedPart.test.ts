import { describe, expect, it } from 'vitest';
import type { InstrumentName, Part } from '../../../core/music/part.ts';
import { sharedParts } from '../../../core/music/sharedPart.ts';
import { smallPart } from '../../support/smallPart.ts';

const part = (name: string, instrument: InstrumentName): Part => ({ ...smallPart('P5', name), instrument });
const names = (parts: readonly Part[]) => sharedParts(parts).map(({ name, instrument }) => `${name} = ${instrument}`);

describe('a part for cellos and basses', () => {
  it.each(['Violoncello e Contrabbasso', 'Vc. & Cb.', 'Violoncelli e Bassi', 'Cello/Bass', 'Violoncelles et contrebasses', 'Violoncelli und Kontrabässe'])('"%s" is one for each', (name) => {
    expect(names([part(name, 'cello')])).toEqual([`${name} (Vc.) = cello`, `${name} (Cb.) = double-bass`]);
  });

  it('the basses sound an octave lower, the cellos as written, and ids are the same', () => {
    const [cello, bass] = sharedParts([part('Violoncello e Basso', 'cello')]);
    const [high, low] = [cello!, bass!].map(({ measures }) => measures[0]!.notes[0]!);
    expect([cello!.transposition, bass!.transposition]).toEqual([0, -12]);
    expect(high!.sounding).toBeUndefined();
    expect(low).toEqual({ ...high, sounding: high!.midi! - 12 });
  });

  it('"Bassi" is for both only where no part is for cello', () => {
    expect(names([part('Viola', 'viola'), part('Bassi', 'double-bass')])).toEqual(['Viola = viola', 'Bassi (Vc.) = cello', 'Bassi (Cb.) = double-bass']);
    expect(names([part('Violoncello', 'cello'), part('Bassi', 'double-bass')])).toEqual(['Violoncello = cello', 'Bassi = double-bass']);
  });
});
