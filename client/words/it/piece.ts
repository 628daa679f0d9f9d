import type { Severity } from '../../../core/check/finding.ts';
import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count, day, listed } from './italian.ts';

const clock = (at: Date): string => at.toLocaleTimeString('it-IT', { hour: '2-digit', minute: '2-digit' });

const counts: Record<Severity, (n: number) => string> = {
  cannotPlay: (n) => (n === 1 ? '1 non si può suonare' : `${n} non si possono suonare`),
  collides: (n) => (n === 1 ? '1 si scontra' : `${n} si scontrano`),
  worthALook: (n) => `${n} da guardare`,
};

/** A look through the whole piece. */
export const piece = {
  title: (work) => `Il pezzo intero: ${work}`,
  what: 'Legge ogni parte accanto a tutte le altre, con i segni come stanno ora. Nel frattempo può continuare con altro.',
  look: 'Scorrere il pezzo intero',
  again: 'Scorrerlo di nuovo',
  join: 'Aspettarlo anche qui',
  stop: 'Smettere di scorrere',
  stopped: 'Non lo aspetta più. Nulla è cambiato.',
  turn: 'Il pezzo aspetta il suo turno.',
  reading: (name, part, of) => `Si legge ${name}: parte ${part} di ${of}.`,
  elsewhere: 'Qualcun altro della casa lo ha chiesto.',
  picture: (done, of) => `${capital(count(done, 'parte letta', 'parti lette', 'una'))} su ${of}`,
  found: (watch, parts) => (watch ? `${capital(count(watch, 'punto', 'punti'))} a cui badare in ${count(parts, 'parte', 'parti', 'una')}.` : 'Nulla a cui badare in nessuna parte.'),
  at: (at, now = new Date()) => `Scorso ${new Date(at).toDateString() === now.toDateString() ? '' : `il ${day(at, now)} `}alle ${clock(new Date(at))}.`,
  before: (names) => `È di prima di un cambiamento in ${listed(names)}. Lo scorra di nuovo.`,
  counts,
  rested: (n) => `${n} a riposo`,
  nothing: 'nulla a cui badare',
  comes: 'Si va a prendere ciò che qui è stato trovato.',
  onStand: (where) => `${capital(where)}, sul leggio`,
  restedBy: (who, reason) => `Messo a riposo da ${who}: ${reason}`,
  more: (n) => `Mostrarne altri ${n}`,
  list: (part) => `A cui badare in ${part}`,
} satisfies Words['piece'];
