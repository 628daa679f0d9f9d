import type { Words } from '../en.ts';

/** Words for the finger. */
export const touch = {
  passage: 'passage',
  reach: 'Le passage commence à la note en main. Touchez sa dernière note.',
  openBefore: (measure) => `Mesure ouverte précédente : ${measure}`,
  openAfter: (measure) => `Mesure ouverte suivante : ${measure}`,
  hear: 'écouter',
  say: 'dire',
  myPart: 'ma partie',
  mark: 'écrire',
} satisfies Words['touch'];
