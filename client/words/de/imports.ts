import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './german.ts';

/** Scores on their way into a folder. */
export const imports = {
  title: 'Unterwegs in die Mappe',
  files: (n) => `${n} Dateien`,
  sending: (name) => `${name} wird an die Bibliothek geschickt.`,
  turn: (name) => `${name} wartet, bis die Reihe daran ist.`,
  unpacking: (name) => `${name} wird ausgepackt.`,
  placing: (name) => `${name}: Die Stimmen werden für die Gruppen ausgelegt.`,
  aligning: (name) => `${name} wird neben die alte Partitur gelegt, damit die Einträge auf ihren Noten bleiben.`,
  keeping: (name) => `${name} wird in die Mappe gelegt.`,
  picture: (done, of) => `${capital(count(done, 'Schritt', 'Schritte'))} von ${of} getan`,
  stop: 'Anhalten',
  putAway: 'Weglegen',
  stopped: (name) => `${name}: angehalten. Nichts davon wurde behalten.`,
  add: 'Stimmen zu diesem Werk legen',
  added: (title, parts) => `${title} hat jetzt ${count(parts, 'Stimme', 'Stimmen', 'eine')}.`,
  oneOrMany: (n) => `${capital(count(n, 'Datei', 'Dateien', 'eine'))}: Sind sie ein Werk (seine Sätze oder seine Stimmen), oder ist jede ein eigenes Werk?`,
  oneWork: 'ein Werk',
  works: (n) => count(n, 'Werk', 'Werke'),
  none: 'lassen',
  noneOf: (n) => `Von den ${n} Dateien wurde keine in die Mappe gelegt, weil nicht alle gelesen werden können.`,
  wouldLie: (parts) => (parts.length ? `konnte gelesen werden: ${parts.join(', ')}` : 'wurde nicht gelesen'),
} satisfies Words['imports'];
