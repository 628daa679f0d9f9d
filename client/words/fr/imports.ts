import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './french.ts';

/** Scores on their way into a folder. */
export const imports = {
  title: 'En route vers la pochette',
  files: (n) => `${n} fichiers`,
  sending: (name) => `Envoi de ${name} à la bibliothèque.`,
  turn: (name) => `${name} attend son tour.`,
  unpacking: (name) => `Ouverture de ${name}.`,
  placing: (name) => `${name} : les parties sont réparties entre les pupitres.`,
  aligning: (name) => `${name} est posé à côté de l’ancienne partition, pour que les indications restent sur leurs notes.`,
  keeping: (name) => `${name} est mis dans la pochette.`,
  picture: (done, of) => `${capital(count(done, 'étape', 'étapes', 'une'))} sur ${of}`,
  stop: 'Arrêter',
  putAway: 'Ranger',
  stopped: (name) => `${name} : arrêté. Rien n’en a été gardé.`,
  add: 'ajouter des parties à cette œuvre',
  added: (title, parts) => `${title} a maintenant ${count(parts, 'partie', 'parties', 'une')}.`,
  oneOrMany: (n) => `${capital(count(n, 'fichier'))} : est-ce une seule œuvre (ses mouvements ou ses parties), ou chacun est-il une œuvre ?`,
  oneWork: 'une œuvre',
  works: (n) => count(n, 'œuvre', 'œuvres', 'une'),
  none: 'laisser',
  noneOf: (n) => `Aucun des ${n} fichiers n’a été mis dans la pochette, car tous ne peuvent pas être lus.`,
  wouldLie: (parts) => (parts.length ? `a pu être lu : ${parts.join(', ')}` : 'n’a pas été lu'),
} satisfies Words['imports'];
