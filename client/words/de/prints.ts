import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './german.ts';

const copies = (n: number): string => count(n, 'Exemplar', 'Exemplare', 'ein');

/** Exemplare, die gedruckt oder zu vielen ausgegeben werden. */
export const prints = {
  title: (work) => `Exemplare für die Pulte: ${work}`,
  what: 'Druckfertige Seiten oder Dateien für ein anderes Programm, für so viele Pulte, wie Sie ankreuzen. Sie kommen zusammen in einer Zip-Datei.',
  part: (part) => `Exemplare von ${part}`,
  section: 'eines für alle',
  desks: (n) => `eines für jedes Pult (${n})`,
  seats: (n) => `eines für jeden Platz (${n})`,
  desk: (desk) => `nur Pult ${desk}`,
  seat: (seat) => `nur ${seat}`,
  form: 'als',
  forms: { pdf: 'Seiten zum Drucken, PDF', musicxml: 'MusicXML', mxl: 'MusicXML, gepackt', mei: 'MEI', svg: 'Seiten als Bilder, SVG' },
  paper: 'Papier',
  papers: { a4: 'A4', b4: 'B4', '9x12': '9 × 12 Zoll', '10x13': '10 × 13 Zoll' },
  margins: 'Rand',
  edges: { narrow: 'schmal, für möglichst viel Musik', usual: 'üblich', wide: 'breit, zum Hineinschreiben', bound: 'am Falz breiter' },
  staff: 'Notensystem',
  millimetres: (mm) => `${String(mm).replace('.', ',')} mm`,
  marks: 'Zeichen',
  marked: { agreed: 'wie vereinbart', none: 'keine: ein sauberes Exemplar' },
  fingerings: 'Fingersätze',
  figures: { all: 'alle', sparse: 'wo die Hand sich bewegt', none: 'keine' },
  make: (n) => (n ? `${capital(copies(n))} machen` : 'Erst eine Stimme ankreuzen'),
  making: (n, of) => `${capital(copies(n))} von ${of} fertig.`,
  picture: (n, of) => `${n} von ${of} Exemplaren fertig`,
  stop: 'Keine weiteren machen',
  stopped: 'Es werden keine Exemplare mehr gemacht; behalten wurde keines.',
  made: (n, file) => `${capital(copies(n))} in ${file}. Darin sagt „Page turns.txt“, wo eilig geblättert wird.`,
  packed: (n, file) => `${capital(copies(n))} in ${file}.`,
} satisfies Words['prints'];
