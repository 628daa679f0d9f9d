import type { Words } from '../en.ts';

/** Words for the finger. */
export const touch = {
  passage: 'Passage',
  reach: 'Die Passage beginnt bei der Note in der Hand. Tippen Sie auf die letzte Note.',
  openBefore: (measure) => `Offener Takt davor: ${measure}`,
  openAfter: (measure) => `Nächster offener Takt: ${measure}`,
  hear: 'hören',
  say: 'sagen',
  myPart: 'Stimme',
  mark: 'Zeichen',
} satisfies Words['touch'];
