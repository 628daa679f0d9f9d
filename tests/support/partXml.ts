import type { Note, Part } from '../../core/music/part.ts';
import { fraction, quarters } from '../../core/music/time.ts';

/** Divisions of a quarter in the text. */
const DIVISIONS = 24;
const TYPES: [quarters: number, type: string, dots: number][] = [[4, 'whole', 0], [3, 'half', 1], [2, 'half', 0], [1.5, 'quarter', 1], [1, 'quarter', 0], [0.75, 'eighth', 1], [0.5, 'eighth', 0], [0.25, '16th', 0]];

/** Where a note stands under the beams of its half measure. */
function beamOf(notes: readonly Note[], at: number): string {
  const beamed = (note: Note | undefined) => note !== undefined && !note.rest && quarters(note.duration) < 1;
  const half = (note: Note) => Math.floor(quarters(note.onset) / 2);
  const note = notes[at]!;
  if (!beamed(note)) return '';
  const before = beamed(notes[at - 1]) && half(notes[at - 1]!) === half(note);
  const after = beamed(notes[at + 1]) && half(notes[at + 1]!) === half(note);
  const beam = before ? (after ? 'continue' : 'end') : after ? 'begin' : '';
  return beam ? `<beam number="1">${beam}</beam>${quarters(note.duration) === 0.25 ? `<beam number="2">${beam}</beam>` : ''}` : '';
}

function noteXml(part: Part, notes: readonly Note[], at: number, voice: number): string {
  const note = notes[at]!;
  const [, type, dots] = TYPES.find(([length]) => length === quarters(note.duration)) ?? [0, 'quarter', 0];
  const slurs = part.slurs.flatMap(({ from, to }) => (from === note.id ? ['<slur type="start" number="1"/>'] : to === note.id ? ['<slur type="stop" number="1"/>'] : []));
  const ties = note.chord ? [] : note.ties;
  const technical = note.technical.map(({ name, value }) => `<${name}>${value ?? ''}</${name}>`).join('');
  const notations = [...slurs, ...ties.map((tie) => `<tied type="${tie}"/>`), technical && `<technical>${technical}</technical>`, note.articulations.length ? '<articulations><staccato/></articulations>' : '', note.ornaments.length ? '<ornaments><tremolo>3</tremolo></ornaments>' : ''].join('');
  const pitch = note.pitch ? `<pitch><step>${note.pitch.step}</step>${note.pitch.alter ? `<alter>${note.pitch.alter}</alter>` : ''}<octave>${note.pitch.octave}</octave></pitch>` : '<rest/>';
  return [
    `<note>${note.chord ? '<chord/>' : ''}${pitch}<duration>${fraction(note.duration).mul(DIVISIONS).toFraction()}</duration>`, ...ties.map((tie) => `<tie type="${tie}"/>`),
    `<voice>${voice + 1}</voice><type>${type}</type>${'<dot/>'.repeat(dots)}${note.chord ? '' : beamOf(notes.filter(({ chord }) => !chord), notes.filter(({ chord }) => !chord).indexOf(note))}`,
    notations ? `<notations>${notations}</notations>` : '', '</note>',
  ].join('');
}

/** A built part in four quarters as the text of a score of its own, with beams, slurs, ties and dynamics; grace notes are left out. */
export function partXml(part: Part, title = 'Invented'): string {
  let dynamic: string | null = null;
  const measures = part.measures.map(({ ordinal, notes, rehearsal }) => {
    const voices = [...new Set(notes.map(({ voice }) => voice))];
    const texts = voices.map((voice, v) => {
      const own = notes.filter((note) => note.voice === voice && !note.grace);
      return own.map((note, i) => {
        const louder = note.dynamic !== dynamic && note.dynamic !== null ? `<direction placement="below"><direction-type><dynamics><${note.dynamic}/></dynamics></direction-type></direction>` : '';
        dynamic = note.dynamic;
        return louder + noteXml(part, own, i, v);
      }).join('');
    });
    const attributes = ordinal === 1 ? `<attributes><divisions>${DIVISIONS}</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef></attributes>` : '';
    const letter = rehearsal ? `<direction placement="above"><direction-type><rehearsal>${rehearsal}</rehearsal></direction-type></direction>` : '';
    return `<measure number="${ordinal}">${attributes}${letter}${texts.join(`<backup><duration>${4 * DIVISIONS}</duration></backup>`)}</measure>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0"><work><work-title>${title}</work-title></work><part-list><score-part id="P1"><part-name>Violin I</part-name></score-part></part-list><part id="P1">\n${measures.join('\n')}\n</part></score-partwise>\n`;
}
