import type { Words } from '../en.ts';
import { comma } from './french.ts';

/** One's own hand. */
export const hand = {
  title: 'Votre main',
  what: 'Vous seul le voyez. Les doigtés cherchés pour vous placent plus loin ce que votre main n’atteint pas, le disent, et ne cachent rien.',
  reach: (percent) => `Écart : ${percent} % d’une main habituelle`,
  shortFourth: 'mon quatrième doigt est court',
  keep: 'la garder pour moi',
  forget: 'l’oublier',
  kept: 'Votre main est gardée, pour vous seul.',
  forgotten: 'Votre main est oubliée.',
  caution: 'Bowline compte des millimètres ; il ne connaît pas votre main. Arrêtez avant toute gêne et faites des pauses. En cas de douleur, d’engourdissement ou de perte de contrôle : arrêtez et consultez un médecin. Pour savoir comment jouer un passage, demandez à votre professeur.',
} satisfies Words['hand'];

/** What a section has settled. */
export const settled = {
  title: (section) => `Ce que ${section} a fixé`,
  what: 'Cela vaut pour chaque partie sur vos lutrins. Ce qu’il faut surveiller est relu dès que vous le gardez.',
  whoSets: 'Le chef de pupitre ou le bibliothécaire fixe cela. Dites-le à l’un d’eux si un nombre ne convient pas à votre jeu.',
  openStrings: 'Cordes à vide',
  open: { free: 'comme chacun l’aime', avoided: 'évitées sur les notes longues', wanted: 'voulues là où elles tombent bien' },
  bowLasts: 'Combien de temps dure un archet',
  bowWhat: 'Secondes jusqu’à ce qu’un archet entier soit épuisé, note tenue, à chaque nuance.',
  bowShare: (instrument, percent) => `Secondes jusqu’à ce qu’un archet entier soit épuisé, note tenue, comme au violon ; pour l’instrument ${instrument} Bowline en compte ${percent} %.`,
  secondsAt: (dynamic) => `secondes que dure un archet à ${dynamic}`,
  atOnce: 'Changer d’archet ensemble dans un passage décalé',
  strict: 'un musicien sur huit au plus : strict, pour les endroits doux et à découvert',
  ordinary: 'un musicien sur quatre au plus : ordinaire',
  ownShare: (percent) => `${comma(String(percent))} % des musiciens au plus, comme maintenant`,
  keep: 'garder ces valeurs',
  usual: 'revenir à l’habitude',
  kept: 'Gardé pour tout le pupitre. Ce qu’il faut surveiller est relu.',
  usualAgain: 'Les nombres habituels valent de nouveau pour tout le pupitre.',
} satisfies Words['settled'];
