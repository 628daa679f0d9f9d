import type { Words } from '../en.ts';

/** What the section's rules can refuse. Who may do a thing, and how it was decided, is not named: those words come in English. */
export const refusals = {
  NOT_YOUR_ROLE: 'Non écrit : dans ce pupitre, cela revient à d’autres. Demandez au chef de pupitre ou au bibliothécaire.',
  NOT_YOURS: 'Non écrit : seul {owner} peut le changer. Proposez quelque chose vous-même.',
  NOT_YOUR_COMMENT: 'Non écrit : seul celui qui l’a dit, ou le chef de pupitre, peut le régler. Répondez plutôt.',
  UNKNOWN_PROPOSAL: 'Non écrit : cette collette n’est pas dans cette partie. Chargez de nouveau la partie.',
  UNKNOWN_COMMENT: 'Non écrit : ce mot n’est pas dans cette partie. Chargez de nouveau la partie.',
  UNKNOWN_NOTE: 'Non écrit : la partie n’a pas cette note dans les mesures {from} à {to}. Chargez de nouveau la partie.',
  UNKNOWN_MEASURE: 'Non écrit : la mesure {measure} est hors de cette partie ou de cette collette.',
  UNKNOWN_SEAT: 'Non écrit : le pupitre n’a pas de place {seat}.',
  UNKNOWN_MUTE: 'Non écrit : cette remarque n’est pas au repos.',
  ALREADY_THERE: 'Non écrit : c’est déjà là.',
  ALREADY_DECIDED: 'Non écrit : le sort de cette collette était réglé avant que votre ligne arrive.',
  REVISED: 'Non écrit : la collette a été récrite avant que votre ligne arrive. Regardez-la de nouveau.',
  ALREADY_RESOLVED: 'Non écrit : ce mot est déjà réglé.',
  SAME_SLOT_TWICE: 'Non écrit : deux indications du même genre sur une note de la mesure {measure}. Gardez-en une.',
  NOTHING_TO_CHANGE: 'Non écrit : rien ne changerait.',
  LOCKED: 'Non écrit : la partie est arrêtée pour l’impression. Demandez au bibliothécaire de la rouvrir.',
  OLD_PROGRAM: 'Cette page est plus ancienne que la bibliothèque. Chargez-la de nouveau ; ce qui n’est pas parti est gardé.',
  BAD_INPUT: 'Non écrit : {detail}',
  TOO_MUCH: 'Non écrit : trop de lignes à la fois. Attendez un moment.',
} satisfies Words['refusals'];
