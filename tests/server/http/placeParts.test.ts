import { describe, expect, it } from 'vitest';
import type { SectionView } from '../../../core/agreement/wire/http.ts';
import { instrumentOf } from '../../../core/musicxml/instrument.ts';
import { placeParts } from '../../../server/http/placeParts.ts';
import { smallPart } from '../../support/smallPart.ts';

const section = (name: string, instrument: string): SectionView => ({ id: name, name, instrument, seats: [], principal: null, settings: {} });
const SECTIONS = [section('First violins', 'violin'), section('Second violins', 'violin'), section('Violas', 'viola'), section('Cellos', 'cello'), section('Basses', 'double-bass')];
const placed = (names: string[]) => placeParts(names.map((name, i) => ({ ...smallPart(`P${i}`, name), instrument: instrumentOf(name, undefined) })), SECTIONS);
const ALL = SECTIONS.map(({ id }) => id);

describe('parts find their sections by name', () => {
  it.each([
    [['Violin 1', 'Violin 2', 'Viola', 'Violoncello', 'Contrabass']],
    [['Violin I', 'Violin II', 'Violas', 'Cellos', 'Double Basses']],
    [['1. Violine', '2. Violine', 'Bratsche', 'Violoncell', 'Kontrabass']],
    [['Erste Geigen', 'Zweite Geigen', 'Bratschen', 'Celli', 'Bässe']],
    [['Violons I', 'Violons II', 'Altos', 'Violoncelles', 'Contrebasses']],
    [['Premiers violons', 'Deuxièmes violons', 'Alto', 'Violoncelle', 'Contrebasse']],
    [['Violino primo', 'Violino secondo', 'Viola', 'Violoncello', 'Violone']],
    [['Violini I', 'Violini II', 'Viole', 'Violoncelli', 'Contrabbassi']],
    [['Vl.1', 'Vl. 2', 'Br.', 'Vcl.', 'Kb.']],
    [['Vln. I', 'Vln. II', 'Vla.', 'Vc.', 'Cb.']],
    [['Violin', 'Violin', 'Viola', 'Cello', 'Bass']],
  ])('%s', (names) => {
    expect(placed(names)).toEqual(ALL);
  });

  it('a soloist is not put among the section, nor a third violin, nor divided violas apart', () => {
    expect(placed(['Solo Violin', 'Violin 1', 'Violin 2'])).toEqual([null, 'First violins', 'Second violins']);
    expect(placed(['Violino principale', 'Violino I', 'Violino II'])).toEqual([null, 'First violins', 'Second violins']);
    expect(placed(['Violin 1', 'Violin 2', 'Violin 3'])).toEqual(['First violins', 'Second violins', null]);
    expect(placed(['Viola I', 'Viola II'])).toEqual(['Violas', 'Violas']);
  });
});
