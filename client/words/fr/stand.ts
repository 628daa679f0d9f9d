import { capital } from '../capital.ts';
import type { Words } from '../en.ts';
import { comma, count, day } from './french.ts';

const ROMAN = ['½', 'I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII', 'IX', 'X', 'XI', 'XII', 'XIII', 'XIV', 'XV', 'XVI', 'XVII', 'XVIII', 'XIX', 'XX', 'XXI', 'XXII', 'XXIII', 'XXIV'];
const ZONES: Readonly<Record<string, string>> = { comfortable: 'à l’aise', stretched: 'étendu', exceptional: 'exceptionnel' };

const marks = (n: number): string => count(n, 'indication', 'indications', 'une');

/** Signs that can be written. */
export const signs = {
  label: 'Signes',
  finger: (n) => (n === '0' ? 'corde à vide' : n === 'thumb' ? 'pouce' : `${n}${n === '1' ? 'er' : 'e'} doigt`),
  string: (roman) => `corde ${roman}`,
  down: 'tiré',
  up: 'poussé',
  change: 'changement d’archet',
  reach: 'main : extension, contraction, aucune',
  harmonic: 'harmonique',
  retake: 'reprise d’archet',
  hooked: 'dans le même coup d’archet',
  split: 'couper la liaison',
  join: 'joindre la liaison',
  substitution: 'le doigt suivant prend le relais sur la note',
  words: 'mots',
  rub: 'gommer',
  undo: 'reprendre',
  more: 'autres signes',
  short: { undo: 'reprendre', rub: 'gommer', more: 'plus' },
} satisfies Words['signs'];

/** Sentences on the stand. */
export const stand = {
  draft: (n, where) => `${capital(marks(n))} au crayon, ${where}.`,
  nothingOpen: 'Aucune mesure n’est ouverte. Tapez un signe pour proposer quelque chose.',
  nothingToWatch: 'Rien à surveiller.',
  noNote: 'Aucune note en main. Touchez une note, ou appuyez sur une flèche.',
  noSlip: 'Pas de collette ici. Tapez des signes, puis Entrée en pose une.',
  nowVote: (slip) => `${slip} est ouvert. À vous de voter.`,
  nothingToTakeBack: 'Rien à reprendre.',
  measureGone: (said) => `Cette partie n’a pas de mesure ${said}. Tapez un numéro imprimé ou une lettre de repère.`,
  lifted: 'La partie est arrêtée pour l’impression. Le bibliothécaire peut la rouvrir.',
  done: 'Aucune mesure ouverte, rien à surveiller.',
  seatOf: (what) => `Montré : ${what}`,
  onlySection: 'Vous n’êtes pas de ce pupitre : vous pouvez lire, non noter.',
  onlyPrincipal: 'Seul le chef de pupitre fixe à l’encre. Votez avec + et −, ou dites un mot avec s.',
  changeFirst: 'Il n’y a pas de changement d’archet au crayon à déplacer sur cette note. c en écrit un.',
  historyOn: 'Ce qui a été écarté ou remplacé est montré barré. i le cache.',
  historyOff: 'Ce qui a été écarté est de nouveau caché.',
  nothingHere: 'Rien à gommer sur cette note, ni au crayon ni à l’encre.',
  laid: (n) => `Sous la partie pour que le pupitre le voie : ${marks(n)}.`,
  inked: (n) => `À l’encre : ${marks(n)}.`,
  notYours: 'Cette collette est à quelqu’un d’autre. Votez contre, ou posez la vôtre.',
} satisfies Words['stand'];

/** The line to write on. */
export const line = {
  why: 'Pourquoi, en une phrase',
  whyHint: 'Une phrase que le pupitre lira',
  words: 'Mots au-dessus de la note',
  goTo: 'Aller à la mesure',
  say: (where) => `Dire un mot sur ${where}`,
  aside: (slip) => `Pourquoi ${slip} est écartée`,
  mute: 'Pourquoi il n’y a rien à surveiller ici',
  lay: 'poser la collette',
  ink: 'fixer à l’encre',
  write: 'écrire',
  go: 'aller',
  speak: 'le dire',
  put: 'écarter',
  rest: 'mettre au repos',
  leave: 'laisser',
} satisfies Words['line'];

/** A slip and what becomes of it. */
export const slip = {
  for: 'pour',
  against: 'contre',
  notYet: 'pas encore',
  votes: (plus, minus, of) => `${plus} pour, ${minus} contre, ${Math.max(0, of - plus - minus)} pas encore`,
  label: (name, who) => `Collette ${name} de ${who}`,
  inkIn: 'fixer à l’encre',
  setAside: 'écarter',
  takeBack: 'reprendre',
  change: 'récrire',
  say: 'dire un mot',
  settle: 'régler',
  settled: (who) => `réglé par ${who}`,
  covers: (where) => `vaut pour ${where}`,
  noneOpen: 'Aucune collette ne pend sous cette mesure.',
  wouldWatch: 'À surveiller si elle est fixée à l’encre :',
  history: 'Ce qui s’est passé ici',
  adopted: (who, at) => `fixée à l’encre par ${who}, ${day(at)}`,
  aside: (who, at) => `écartée par ${who}, ${day(at)}`,
  withdrawn: (who, at) => `reprise par ${who}, ${day(at)}`,
  stands: (what, seats) => `${what}, ${seats}`,
  replaced: (who, at) => `remplacé par ${who}, ${day(at)}`,
  muted: (who) => `mis au repos par ${who}`,
  wake: 'surveiller de nouveau',
  rest: 'mettre au repos',
  watch: 'À surveiller',
  goesTo: 'propos',
  next: 'collette suivante',
} satisfies Words['slip'];

/** Fingerings under a passage. */
export const offers = {
  title: (where) => `Doigtés pour ${where}`,
  aim: 'Ce qui compte le plus ici',
  aims: { usual: 'comme la plupart joueraient', smoothest: 'la ligne la plus liée', secure: 'le plus sûr', 'one-colour': 'une seule couleur', brightest: 'clair et ouvert', 'smallest-stretch': 'le plus petit écart' },
  by: { engine: 'calculé', section: 'comme le pupitre l’a', print: 'comme imprimé' },
  label: (letter) => `Doigté ${letter}`,
  facts: (shifts, widest, heard, alone) =>
    [
      capital(count(shifts, 'démancher')),
      widest ? `plus grand écart ${widest.fingers.join('-')} : ${Math.round(widest.mm)} mm, ${ZONES[widest.zone] ?? widest.zone}` : 'aucun écart',
      heard || alone ? `glissements entendus : ${heard} dans le pupitre, ${alone} seul` : 'aucun glissement ne s’entend',
    ].join(' · '),
  picture: (name) => `${name}, la main dans le temps.`,
  position: (position) => (Number.isInteger(position) ? ROMAN[position]! : `${ROMAN[Math.floor(position)]!}½`),
  take: 'prendre au crayon',
  look: 'voir',
  steps: 'Note par note',
  costs: (cost, over) => `Ce qu’il coûte : ${comma(cost.toFixed(2))}, ${over > 0 ? `${comma(over.toFixed(2))} de plus que le moins coûteux de ceux-ci` : 'le moins coûteux de ceux-ci'}`,
  working: 'On cherche des doigtés. Toute touche continue ; Esc abandonne.',
  failed: 'Aucun doigté n’a pu être trouvé ici. Choisissez un autre passage, ou notez-le à la main ; vos indications sont gardées.',
  elsewhere: 'Rien de ce passage ne se joue dans cette ligne ; les flèches mènent plus loin.',
  taken: (letter, n) => `Le doigté ${letter} est au crayon : ${marks(n)}. Entrée le pose en collette, z le reprend.`,
} satisfies Words['offers'];
