import type { PaperName } from '../../core/print/paper.ts';
import type { Fingerings } from '../../core/print/fingerings.ts';
import type { MarginsName } from '../../core/print/margins.ts';
import { count } from './english.ts';

const paper: Record<PaperName, string> = { a4: 'A4', b4: 'B4', '9x12': '9 × 12 inches', '10x13': '10 × 13 inches' };
const edges: Record<MarginsName, string> = { narrow: 'narrow, for the most music', usual: 'usual', wide: 'wide, to write in', bound: 'wider at the fold' };
const fingerings: Record<Fingerings, string> = { all: 'all', sparse: 'where the hand moves', none: 'none' };

/** Words of the copies that are printed or taken out many at a time. */
export const prints = {
  title: (work: string) => `Copies for the stands: ${work}`,
  what: 'Pages ready to print, or files for another program, for as many desks as you tick. They come together as one zip.',
  part: (part: string) => `copies of ${part}`,
  section: 'one for everybody',
  desks: (n: number) => `one for each desk (${n})`,
  seats: (n: number) => `one for each player (${n})`,
  desk: (desk: string) => `desk ${desk} alone`,
  seat: (seat: string) => `${seat} alone`,
  form: 'as',
  forms: { pdf: 'pages to print, PDF', musicxml: 'MusicXML', mxl: 'MusicXML, packed', mei: 'MEI', svg: 'pages as pictures, SVG' },
  paper: 'paper',
  papers: paper,
  margins: 'margins',
  edges,
  staff: 'staff',
  millimetres: (mm: number) => `${mm} mm`,
  marks: 'marks',
  marked: { agreed: 'as agreed', none: 'none: a clean copy' },
  fingerings: 'fingerings',
  figures: fingerings,
  make: (n: number) => (n ? `Make ${count(n, 'copy', 'copies').toLowerCase()}` : 'Tick a part first'),
  making: (n: number, of: number) => `${count(n, 'copy', 'copies')} of ${of} made.`,
  picture: (n: number, of: number) => `${n} of ${of} copies made`,
  stop: 'Stop making copies',
  stopped: 'No more copies are made, and none was kept.',
  made: (n: number, file: string) => `${count(n, 'copy', 'copies')} lie in ${file}. “Page turns.txt” in it says where a page is turned in a hurry.`,
  packed: (n: number, file: string) => `${count(n, 'copy', 'copies')} lie in ${file}.`,
};
