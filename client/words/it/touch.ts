import type { Words } from '../en.ts';

/** Words for the finger. */
export const touch = {
  passage: 'passaggio',
  reach: "Il passaggio comincia alla nota in mano. Tocchi l'ultima nota.",
  openBefore: (measure) => `Battuta aperta precedente: ${measure}`,
  openAfter: (measure) => `Battuta aperta seguente: ${measure}`,
  hear: 'ascoltare',
  say: 'dire',
  myPart: 'la mia parte',
  mark: 'segnare',
} satisfies Words['touch'];
