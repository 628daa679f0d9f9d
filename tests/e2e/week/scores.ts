import { demoScore } from '../../../server/demo/score/writeScore.ts';
import { zipByHand } from '../../support/zipByHand.ts';

export interface ScoreFile {
  name: string;
  bytes: Buffer;
}

interface Line {
  name: string;
  clef: 'G' | 'C';
  /** Four quarters a measure, "D5 F#5 A5 D6"; a tilde before a note slurs it to the one before. */
  measures: string;
}

function noteXml(said: string, next: string | undefined): string {
  const [, slurred, step, sharp, octave] = /^(~?)([A-G])(#?)(\d)$/.exec(said)!;
  const [stop, start] = [slurred === '~', next?.startsWith('~') ?? false];
  // Each slur goes from one note to the next alone, so that two meeting on a note need two numbers.
  const slurs = `${stop ? '<slur type="stop" number="1"/>' : ''}${start && !stop ? '<slur type="start" number="1"/>' : ''}`;
  return `<note><pitch><step>${step}</step>${sharp ? '<alter>1</alter>' : ''}<octave>${octave}</octave></pitch><duration>1</duration><voice>1</voice><type>quarter</type>${slurs ? `<notations>${slurs}</notations>` : ''}</note>`;
}

/** An invented score in four quarters. */
function score(title: string, lines: readonly Line[]): string {
  const listed = lines.map(({ name }, i) => `<score-part id="P${i + 1}"><part-name>${name}</part-name></score-part>`).join('');
  const parts = lines.map(({ clef, measures }, i) => {
    const texts = measures.split('|').map((measure, m) => {
      const notes = measure.trim().split(/\s+/);
      const opening = `<attributes><divisions>1</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>${clef}</sign><line>${clef === 'G' ? 2 : 3}</line></clef></attributes>`;
      return `<measure number="${m + 1}">${m === 0 ? opening : ''}${notes.map((note, k) => noteXml(note, notes[k + 1])).join('')}</measure>`;
    });
    return `<part id="P${i + 1}">\n${texts.join('\n')}\n</part>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0"><work><work-title>${title}</work-title></work><identification><creator type="composer">R. Ostermoor</creator></identification><part-list>${listed}</part-list>${parts.join('\n')}</score-partwise>\n`;
}

const LANTERN_VIOLIN: Line = { name: 'Violin I', clef: 'G', measures: 'D5 ~E5 F5 G5 | A5 F5 D5 A4 | B4 ~C5 D5 E5 | F5 D5 B4 G4 | G5 ~A5 B5 G5 | C6 G5 E5 C5 | D5 F5 ~A5 D6 | C6 A5 F5 D5' };
const LANTERN_VIOLA: Line = { name: 'Viola', clef: 'C', measures: 'D4 F4 ~A4 F4 | F4 D4 A3 F3 | G3 A3 ~B3 C4 | D4 B3 G3 D3 | E4 G4 ~B4 G4 | G4 E4 C4 G3 | F4 A4 ~F4 D4 | E4 C4 A3 D3' };
const BELLS_VIOLIN: Line = { name: 'Violin', clef: 'G', measures: 'G4 G4 ~B4 D5 | G5 D5 B4 G4 | A4 ~C5 E5 A5 | F#5 D5 A4 F#4 | G5 ~F#5 E5 D5 | C5 B4 A4 G4' };
const BELLS_VIOLA: Line = { name: 'Viola', clef: 'C', measures: 'G3 B3 ~D4 G4 | D4 B3 G3 D3 | C4 E4 ~A4 E4 | A3 F#3 D3 A3 | B3 ~A3 G3 F#3 | E3 D3 C3 G3' };

/** The beginning of the demo's piece for first violins and violas alone, under another title. */
export function saltRoad(): string {
  const short = demoScore().replaceAll('Low Water', 'Salt Road').replace(/<measure number="37"[^]*?(?=<\/part>)/g, '');
  return ['P2', 'P4', 'P5'].reduce((text, id) => text.replace(new RegExp(`<score-part id="${id}">[^]*?</score-part>`), '').replace(new RegExp(`<part id="${id}">[^]*?</part>`), ''), short);
}

const file = (name: string, text: string): ScoreFile => ({ name, bytes: Buffer.from(text) });
const CONTAINER = '<?xml version="1.0"?><container><rootfiles><rootfile full-path="bells.musicxml" media-type="application/vnd.recordare.musicxml+xml"/></rootfiles></container>';

/** Three works as they come to a library: a whole score, one file a part, and a packed score whose violins nobody has numbered. */
export const WORKS: { title: string; files: ScoreFile[] }[] = [
  { title: 'Salt Road', files: [file('salt-road.musicxml', saltRoad())] },
  { title: 'Lantern Dance', files: [file('lantern-violin.xml', score('Lantern Dance', [LANTERN_VIOLIN])), file('lantern-viola.xml', score('Lantern Dance', [LANTERN_VIOLA]))] },
  { title: 'Harbour Bells', files: [{ name: 'bells.mxl', bytes: zipByHand([{ name: 'META-INF/container.xml', body: Buffer.from(CONTAINER) }, { name: 'bells.musicxml', body: Buffer.from(score('Harbour Bells', [BELLS_VIOLIN, BELLS_VIOLA])), deflate: true }]) }] },
];
