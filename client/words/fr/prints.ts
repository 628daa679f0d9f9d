import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './french.ts';

const copies = (n: number): string => count(n, 'exemplaire', 'exemplaires');

/** Les exemplaires imprimés, ou sortis en nombre. */
export const prints = {
  title: (work) => `Exemplaires pour les pupitres : ${work}`,
  what: 'Des pages prêtes à imprimer, ou des fichiers pour un autre programme, pour autant de pupitres que vous cochez. Ils arrivent ensemble dans un zip.',
  part: (part) => `exemplaires de ${part}`,
  section: 'un pour tous',
  desks: (n) => `un par pupitre (${n})`,
  seats: (n) => `un par place (${n})`,
  desk: (desk) => `pupitre ${desk} seul`,
  seat: (seat) => `${seat} seul`,
  form: 'sous forme de',
  forms: { pdf: 'pages à imprimer, PDF', musicxml: 'MusicXML', mxl: 'MusicXML compressé', mei: 'MEI', svg: 'pages en images, SVG' },
  paper: 'papier',
  papers: { a4: 'A4', b4: 'B4', '9x12': '9 × 12 pouces', '10x13': '10 × 13 pouces' },
  margins: 'marges',
  edges: { narrow: 'étroites, pour le plus de musique', usual: 'habituelles', wide: 'larges, pour écrire', bound: 'plus larges au pli' },
  staff: 'portée',
  millimetres: (mm) => `${String(mm).replace('.', ',')} mm`,
  marks: 'signes',
  marked: { agreed: 'comme convenu', none: 'aucun : un exemplaire vierge' },
  fingerings: 'doigtés',
  figures: { all: 'tous', sparse: 'où la main se déplace', none: 'aucun' },
  make: (n) => (n ? `Faire ${copies(n)}` : 'Cochez d’abord une partie'),
  making: (n, of) => `${capital(copies(n))} sur ${of}.`,
  picture: (n, of) => `${n} exemplaires sur ${of} faits`,
  stop: 'Ne plus en faire',
  stopped: 'On ne fait plus d’exemplaires ; aucun n’a été gardé.',
  made: (n, file) => `${capital(copies(n))} dans ${file}. « Page turns.txt » y dit où l’on tourne en hâte.`,
  packed: (n, file) => `${capital(copies(n))} dans ${file}.`,
} satisfies Words['prints'];
