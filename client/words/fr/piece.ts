import type { Severity } from '../../../core/check/finding.ts';
import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count, day, listed } from './french.ts';

const clock = (at: Date): string => at.toLocaleTimeString('fr-FR', { hour: '2-digit', minute: '2-digit' });

const counts: Record<Severity, (n: number) => string> = {
  cannotPlay: (n) => `${n} injouable${n === 1 ? '' : 's'}`,
  collides: (n) => (n === 1 ? '1 se heurte' : `${n} se heurtent`),
  worthALook: (n) => `${n} à regarder`,
};

/** A look through the whole piece. */
export const piece = {
  title: (work) => `L’œuvre entière : ${work}`,
  what: 'Lit chaque partie à côté de toutes les autres, avec les indications telles qu’elles sont maintenant. Vous pouvez continuer autre chose entre-temps.',
  look: 'Parcourir l’œuvre entière',
  again: 'La parcourir de nouveau',
  join: 'L’attendre aussi',
  stop: 'Cesser de parcourir',
  stopped: 'Vous ne l’attendez plus. Rien n’a été changé.',
  turn: 'L’œuvre attend son tour.',
  reading: (name, part, of) => `Lecture de ${name} : partie ${part} sur ${of}.`,
  elsewhere: 'Quelqu’un d’autre de la maison l’a demandé.',
  picture: (done, of) => `${capital(count(done, 'partie lue', 'parties lues', 'une'))} sur ${of}`,
  found: (watch, parts) => (watch ? `${capital(count(watch, 'endroit'))} à surveiller dans ${count(parts, 'partie', 'parties', 'une')}.` : 'Rien à surveiller dans aucune partie.'),
  at: (at, now = new Date()) => `Parcourue ${new Date(at).toDateString() === now.toDateString() ? '' : `le ${day(at, now)} `}à ${clock(new Date(at))}.`,
  before: (names) => `Cela date d’avant un changement dans ${listed(names)}. Parcourez-la de nouveau.`,
  counts,
  rested: (n) => `${n} au repos`,
  nothing: 'rien à surveiller',
  comes: 'On va chercher ce qui a été trouvé ici.',
  onStand: (where) => `${capital(where)}, sur le lutrin`,
  restedBy: (who, reason) => `Mis au repos par ${who} : ${reason}`,
  more: (n) => `En montrer ${n} de plus`,
  list: (part) => `À surveiller dans ${part}`,
} satisfies Words['piece'];
