import type { Seats } from '../../../core/music/seat.ts';

/** What is being written on the ledge, with the words so far kept by the field itself. */
export type LineState =
  | { kind: 'why'; ink: boolean; seats: Seats; text: string }
  | { kind: 'words' }
  | { kind: 'goTo' }
  | { kind: 'command' }
  | { kind: 'say'; measure: number; proposal: string | null }
  | { kind: 'aside'; proposal: string }
  | { kind: 'mute'; rule: string; place: string; fingerprint: string };
