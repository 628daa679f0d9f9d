import type { Severity } from '../../../core/check/finding.ts';
import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count, day, listed } from './german.ts';

const clock = (at: Date): string => at.toLocaleTimeString('de-DE', { hour: '2-digit', minute: '2-digit' });

const counts: Record<Severity, (n: number) => string> = {
  cannotPlay: (n) => `${n} nicht spielbar`,
  collides: (n) => `${n} im Weg`,
  worthALook: (n) => `${n} der Beachtung wert`,
};

/** A look through the whole piece. */
export const piece = {
  title: (work) => `Das ganze Stück: ${work}`,
  what: 'Liest jede Stimme neben allen anderen, mit den Einträgen, wie sie jetzt stehen. Sie können inzwischen mit allem anderen weitermachen.',
  look: 'Das ganze Stück durchsehen',
  again: 'Noch einmal durchsehen',
  join: 'Auch darauf warten',
  stop: 'Nicht weiter durchsehen',
  stopped: 'Sie warten nicht mehr darauf. Geändert wurde nichts.',
  turn: 'Das Stück wartet, bis es an der Reihe ist.',
  reading: (name, part, of) => `${name} wird gelesen: Stimme ${part} von ${of}.`,
  elsewhere: 'Jemand anders im Haus hat darum gebeten.',
  picture: (done, of) => `${capital(count(done, 'Stimme', 'Stimmen', 'eine'))} von ${of} gelesen`,
  found: (watch, parts) => (watch ? `${capital(count(watch, 'Stelle', 'Stellen', 'eine'))} zu beachten in ${parts === 1 ? 'einer Stimme' : count(parts, '', 'Stimmen')}.` : 'In keiner Stimme ist etwas zu beachten.'),
  at: (at, now = new Date()) => `Durchgesehen ${new Date(at).toDateString() === now.toDateString() ? '' : `am ${day(at, now)} `}um ${clock(new Date(at))} Uhr.`,
  before: (names) => `Das ist von vor einer Änderung in ${listed(names)}. Sehen Sie es noch einmal durch.`,
  counts,
  rested: (n) => `${n} zur Ruhe gelegt`,
  nothing: 'nichts zu beachten',
  comes: 'Was hier gefunden wurde, wird geholt.',
  onStand: (where) => `${capital(where)}, auf dem Notenpult`,
  restedBy: (who, reason) => `Von ${who} zur Ruhe gelegt: ${reason}`,
  more: (n) => `${n} weitere zeigen`,
  list: (part) => `Zu beachten in ${part}`,
} satisfies Words['piece'];
