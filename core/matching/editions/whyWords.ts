import type { WhyNotCarried } from './carryMarks.ts';

/** Why a mark was not carried, in players' words. */
export const WHY_NOT_CARRIED: Record<WhyNotCarried, string> = {
  gone: 'The note is not in the new edition.',
  changed: 'The note is another one in the new edition.',
  beside: 'The note is the same, the music right beside it is not.',
  repeated: 'The same music stands here more than once, and it cannot be known which one is gone or new.',
  unison: 'Two voices have this note, and the new edition names its voices otherwise.',
  tied: 'The note was tied to one before; now the two are one note.',
  slur: 'The note is the same, the printed slurs on it are not.',
  unknown: 'The old edition has no such note.',
};
