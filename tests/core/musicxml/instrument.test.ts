import { describe, expect, it } from 'vitest';
import type { InstrumentName } from '../../../core/music/part.ts';
import { childrenNamed } from '../../../core/musicxml/element.ts';
import { instrumentOf } from '../../../core/musicxml/instrument.ts';
import { parseXml } from '../../../core/musicxml/parse.ts';

const NAMES: Record<InstrumentName | 'none', string[]> = {
  violin: ['Violin', 'Violin 1', 'Violin II', 'Solo Violin', 'Violine 2', 'Violinen I', '1. Violine', 'Violino I', 'Violino primo', 'Violini II', 'Violon 1', 'Violons II', 'Premier violon', 'Geige', '2. Geigen', 'Vl. 2', 'Vl.1', 'Vln. I', 'Vln1', 'Vn. 2', 'V.no I', 'Vni II', 'Vno', 'Viol. I', 'Fiddle', 'Violinum'],
  viola: ['Viola', 'Viola 3', 'Violas', 'Viole', 'Viole II', 'Bratsche', 'Bratschen', 'Alto', 'Altos', 'Alto 1', 'Alto II', 'Vla.', 'Vle', 'Va.', 'Br.'],
  cello: ['Violoncello', 'Violoncello 3', 'Violoncelli', 'Violoncelle', 'Violoncelles', 'Cello', 'Celli', 'Vc.', 'Vlc.', 'Vcl.', 'Vcllo', 'Violoncellum', 'Violoncell'],
  'double-bass': ['Contrabass', 'Double Bass', 'Double Basses', 'Kontrabass', 'Kontrabässe', 'Contrebasse', 'Contrebasses', 'Contrabbasso', 'Contrabbassi', 'Contrabasso', 'Violone', 'String Bass', 'Bassi', 'Basso', 'Bässe', 'Basses', 'Cb.', 'Kb.', 'Db.', 'C.B.'],
  none: ['Flute 1', 'Bb Clarinet 2', 'Bass Clarinet', 'Bass Guitar', '4-string Bass Guitar', 'Bass Trombone', 'Bass Tuba', 'Alto Trombone', 'Alto Sax.', 'Contrabassoon', 'Bb (basso) Horn 4', 'Viola da gamba', "Viola d'amore", 'Soprano Alto', 'Tenor', 'Basso continuo', 'Harpsichord', 'Recorder 2', 'Part 1', 'MusicXML Part', ''],
};

const listed = (text: string) => {
  const parsed = parseXml(`<part-list><score-part id="P1">${text}</score-part></part-list>`);
  if (!parsed.ok) throw new Error(parsed.fault.text);
  return childrenNamed(parsed.root, 'score-part')[0]!;
};
const sound = (id: string) => listed(`<score-instrument id="I"><instrument-name>x</instrument-name><instrument-sound>${id}</instrument-sound></score-instrument>`);

describe('the instrument of a part', () => {
  for (const [instrument, names] of Object.entries(NAMES)) {
    it.each(names)(`"%s" is ${instrument}`, (name) => {
      expect(instrumentOf(name, undefined)).toBe(instrument === 'none' ? null : instrument);
    });
  }

  it('a name that singers have too gives way to the sound, any other does not', () => {
    expect([instrumentOf('Alto', sound('voice.alto')), instrumentOf('Alto', sound('strings.viola')), instrumentOf('Bass', sound('voice.bass'))]).toEqual([null, 'viola', null]);
    expect(instrumentOf('Violino I', sound('keyboard.piano'))).toBe('violin');
  });

  it('where the name says nothing, sound, then the abbreviation, then the MIDI program decide', () => {
    expect(instrumentOf('Part 1', sound('strings.cello'))).toBe('cello');
    expect(instrumentOf('Part 1', listed('<part-abbreviation>Vla.</part-abbreviation>'))).toBe('viola');
    expect(instrumentOf('Part 1', listed('<midi-instrument id="I"><midi-program>44</midi-program></midi-instrument>'))).toBe('double-bass');
  });
});
