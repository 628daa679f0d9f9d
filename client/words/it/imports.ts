import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './italian.ts';

/** Scores on their way into a folder. */
export const imports = {
  title: 'In arrivo nella cartella',
  files: (n) => `${n} file`,
  sending: (name) => `Si manda ${name} alla biblioteca.`,
  turn: (name) => `${name} aspetta il suo turno.`,
  unpacking: (name) => `Si apre ${name}.`,
  placing: (name) => `${name}: le parti si distribuiscono alle sezioni.`,
  aligning: (name) => `${name} si mette accanto alla vecchia partitura, così i segni restano sulle loro note.`,
  keeping: (name) => `${name} si mette nella cartella.`,
  picture: (done, of) => `${capital(count(done, 'passo', 'passi'))} su ${of}`,
  stop: 'Fermare',
  putAway: 'Mettere via',
  stopped: (name) => `${name}: fermato. Non ne è rimasto nulla.`,
  add: 'aggiungere parti a quest’opera',
  added: (title, parts) => `${title} ha ora ${count(parts, 'parte', 'parti', 'una')}.`,
  oneOrMany: (n) => `${capital(count(n, 'file', 'file'))}: sono un’opera sola (i suoi tempi o le sue parti), o ciascuno è un’opera?`,
  oneWork: 'un’opera',
  works: (n) => count(n, 'opera', 'opere', 'una'),
  none: 'lasciare',
  noneOf: (n) => `Nessuno dei ${n} file è stato messo nella cartella, perché non tutti si possono leggere.`,
  wouldLie: (parts) => (parts.length ? `si è potuto leggere: ${parts.join(', ')}` : 'non è stato letto'),
} satisfies Words['imports'];
