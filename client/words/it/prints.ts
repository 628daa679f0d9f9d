import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './italian.ts';

const copies = (n: number): string => count(n, 'copia', 'copie', 'una');

/** Le copie stampate, o date fuori in gran numero. */
export const prints = {
  title: (work) => `Copie per i leggii: ${work}`,
  what: 'Pagine pronte per la stampa, o file per un altro programma, per tutti i leggii che spunta. Arrivano insieme in uno zip.',
  part: (part) => `copie di ${part}`,
  section: 'una per tutti',
  desks: (n) => `una per leggio (${n})`,
  seats: (n) => `una per posto (${n})`,
  desk: (desk) => `solo leggio ${desk}`,
  seat: (seat) => `solo ${seat}`,
  form: 'come',
  forms: { pdf: 'pagine da stampare, PDF', musicxml: 'MusicXML', mxl: 'MusicXML compresso', mei: 'MEI', svg: 'pagine come immagini, SVG' },
  paper: 'carta',
  papers: { a4: 'A4', b4: 'B4', '9x12': '9 × 12 pollici', '10x13': '10 × 13 pollici' },
  margins: 'margini',
  edges: { narrow: 'stretti, per più musica', usual: 'consueti', wide: 'larghi, per scriverci', bound: 'più larghi alla piega' },
  staff: 'pentagramma',
  millimetres: (mm) => `${String(mm).replace('.', ',')} mm`,
  marks: 'segni',
  marked: { agreed: 'come concordato', none: 'nessuno: una copia pulita' },
  fingerings: 'diteggiature',
  figures: { all: 'tutte', sparse: 'dove la mano si sposta', none: 'nessuna' },
  make: (n) => (n ? `Fare ${copies(n)}` : 'Spunti prima una parte'),
  making: (n, of) => `${capital(copies(n))} su ${of}.`,
  picture: (n, of) => `${n} copie su ${of} fatte`,
  stop: 'Non farne altre',
  stopped: 'Non si fanno altre copie; nessuna è stata tenuta.',
  made: (n, file) => `${capital(copies(n))} in ${file}. «Page turns.txt» dice dove si gira in fretta.`,
  packed: (n, file) => `${capital(copies(n))} in ${file}.`,
} satisfies Words['prints'];
