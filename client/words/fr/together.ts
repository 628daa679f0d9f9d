import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { count } from './french.ts';

const marks = (n: number): string => count(n, 'indication', 'indications', 'une');

/** From one open measure to the next. */
export const run = {
  at: (measure, at, of) => `Mesure ${measure}, mesure ouverte ${at} sur ${of}.`,
  leads: (slip, plus, minus) => `${slip} est en tête, ${plus} pour, ${minus} contre.`,
  lies: (slip, plus, minus) => `${slip} est posée ici, ${plus} pour, ${minus} contre.`,
  inkOrOn: 'Entrée la fixe à l’encre, n continue.',
  voteOrOn: '+ est pour, − contre, n continue.',
  inked: (slip, n) => `${slip} est fixée à l’encre, ${marks(n)}.`,
  still: (slips) => `${slips} encore ici : a écarte.`,
  goOn: (left) => `n ouvre la suivante ; ${count(left, 'mesure', 'mesures', 'une')} encore à décider.`,
  last: 'Aucune autre mesure n’est ouverte.',
  end: (met, decided, open) => `${capital(count(met, 'mesure ouverte', 'mesures ouvertes', 'une'))} : parcours fini, ${decided} décidées, ${open} encore ouvertes. ${open ? 'n recommence.' : 'Tout est décidé.'}`,
} satisfies Words['run'];

const INTERVALS = ['à la même hauteur', 'un demi-ton', 'un ton', 'une tierce mineure', 'une tierce majeure', 'une quarte', 'un triton', 'une quinte', 'une sixte mineure', 'une sixte majeure', 'une septième mineure', 'une septième majeure', 'une octave'];
const interval = (by: number): string => `${INTERVALS[Math.abs(by)] ?? `${Math.abs(by)} demi-tons`} plus ${by > 0 ? 'haut' : 'bas'}`;

/** Marks to where the same figure comes again. */
export const elsewhere = {
  title: 'La même figure ailleurs dans cette partie',
  passageFirst: 'Prenez d’abord un passage en main : Maj et une flèche. Une note seule n’est pas une figure.',
  nothingThere: 'Rien n’est encore noté dans ce passage. Annotez-le ici, puis les indications pourront aller là où il revient.',
  nowhere: 'Cette figure ne revient pas dans cette partie. Un passage plus court, peut-être.',
  likeness: (likeness, by) => (likeness === 'same' ? 'les mêmes notes' : likeness === 'transposed' ? `les mêmes, ${interval(by)}` : by === 0 ? 'les mêmes degrés, d’autres demi-tons' : `les mêmes degrés, ${interval(by)}`),
  stays: (n) => `${count(n, 'signe de doigté', 'signes de doigté')} ${n === 1 ? 'reste' : 'restent'} : injouable là-bas`,
  stands: 'déjà noté ainsi',
  lay: (n) => (n === 1 ? 'y porter les indications au crayon' : `porter les indications au crayon à ${count(n, 'endroit')}`),
  noneChosen: 'Tous les endroits sont laissés de côté. Gardez-en un, ou quittez la liste avec Esc.',
  laid: (n, places) => `${capital(marks(n))} au crayon, à ${count(places, 'endroit')}. Entrée pose la collette, z reprend tout.`,
  already: 'La figure y est déjà notée ainsi.',
  behind: (n) => `${capital(count(n, 'signe de doigté', 'signes de doigté'))} ${n === 1 ? 'est resté' : 'sont restés'} : injouable là-bas.`,
} satisfies Words['elsewhere'];

/** Names in what is said. */
export const named = {
  hint: '@ et un nom : la personne en est avertie',
  people: 'De qui il s’agit',
} satisfies Words['named'];

/** What waits. */
export const waits = {
  title: 'Ce qui vous attend',
  nothing: 'Rien ne vous attend ici.',
  nothingAnywhere: 'Rien ne vous attend.',
  fetched: 'On regarde ce qui vous attend.',
  count: (n) => (n === 1 ? 'une chose vous attend' : `${n} choses vous attendent`),
  kinds: { named: 'On vous nomme', vote: 'Votre voix', talk: 'Propos sur vos collettes', watch: 'À surveiller à votre place', decided: 'Décidé depuis votre passage' },
  vote: (slip, who) => `${slip} de ${who} attend votre voix.`,
  named: (who, where, text) => `${who}, ${where} : « ${text} »`,
  talk: (slip, who, text) => `${who} sur votre ${slip} : « ${text} »`,
  watch: (where, text) => `${where} : ${text}`,
  adopted: (slip, who) => `${slip} a été fixée à l’encre par ${who}.`,
  setAside: (slip, who) => `${slip} a été écartée par ${who}.`,
  withdrawn: (slip, who) => `${slip} a été reprise par ${who}.`,
  go: 'Entrée y va, Esc quitte la liste.',
  inPart: (work, part) => `${work}, partie ${part}`,
} satisfies Words['waits'];

/** Sentences in the ledge. */
export const notices = {
  named: (who, where) => `${who} vous nomme, ${where}. Maj n montre ce qui vous attend.`,
  laid: (slip, who) => `${who} pose ${slip} dans une mesure où vous avez écrit. Maj n montre ce qui vous attend.`,
  adopted: (slip, who) => `Votre ${slip} est fixée à l’encre par ${who}.`,
  setAside: (slip, who) => `Votre ${slip} est écartée par ${who}.`,
  on: 'Le rebord dit quand on vous nomme, ou quand quelque chose de vous est décidé.',
  off: 'Le rebord ne dit plus ce qui arrive. Maj s le remet.',
} satisfies Words['notices'];

/** Letters by e-mail. */
export const letters = {
  title: 'Lettres par courriel',
  what: (minutes) => `Une lettre, au plus toutes les ${minutes} minutes, quand on vous nomme, qu’une collette attend votre voix avant une répétition, ou que quelque chose de vous est décidé. Vous seul voyez l’adresse.`,
  none: 'Cette bibliothèque n’envoie pas de lettres. Le bibliothécaire peut le prévoir.',
  address: 'Adresse électronique',
  keep: 'm’écrire',
  forget: 'plus de lettres',
  kept: (address) => `Les lettres vont à ${address}. Chacune dit comment les arrêter.`,
  forgotten: 'Plus de lettres ; l’adresse est oubliée.',
} satisfies Words['letters'];
