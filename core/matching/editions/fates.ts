import { type Apart } from './editionsApart.ts';
import type { HeldNote, Moment } from './musicRow.ts';
import { pairUnisons } from './unisons.ts';

/** Why a note of the old edition is not simply found again. The order is that of what is asked first. */
export type WhyLost = 'gone' | 'changed' | 'beside' | 'repeated' | 'unison' | 'tied';

export interface Fate {
  /** Note id in the new edition: the same note where `why` is null, else the likeliest place, null where there is none. */
  note: string | null;
  why: WhyLost | null;
}

/** Both neighbours lie beside the partner and say the same. */
function isBetweenTheSame({ before, after, partner, isSame }: Apart, at: number): boolean {
  return [-1, 1].every((step) => {
    const [old, now] = [at + step, partner[at]! + step];
    const isEnd = old < 0 || old >= before.length;
    return isEnd ? now < 0 || now >= after.length : isSame(old) && partner[old] === now;
  });
}

function whyOf(apart: Apart, at: number): WhyLost | null {
  if (apart.partner[at]! < 0) return 'gone';
  if (!apart.isSame(at)) return 'changed';
  if (!isBetweenTheSame(apart, at)) return 'beside';
  return apart.certain[at] ? null : 'repeated';
}

/** The note most like `held`: of its pitch, else as high among those that begin together. */
function likeliest(held: HeldNote, here: Moment, there: Moment): HeldNote | undefined {
  const pitch = held.head.midi;
  return there.notes.find(({ head }) => head.midi === pitch && head.grace === held.head.grace) ?? there.notes[Math.min(here.notes.indexOf(held), there.notes.length - 1)];
}

function tellHeld(held: HeldNote, partner: HeldNote | undefined, why: WhyLost | null, fates: Map<string, Fate>): void {
  fates.set(held.head.id, { note: partner?.head.id ?? null, why: partner ? why : (why ?? 'gone') });
  for (const { note, after } of held.tied) {
    const tied = partner?.tied.find((other) => other.after === after);
    fates.set(note.id, { note: tied?.note.id ?? partner?.head.id ?? null, why: tied ? why : (why ?? 'tied') });
  }
}

/**
 * What became of every note of an older edition in a newer one; rests are left out.
 * A note is the same (`why` null) only where it and all that begins with it say the same, the moments (or silences) before and after do too, and no other way
 * to lay the editions over each other is about as good (`align`). Anything else has its reason: its partner is then a suggestion.
 * Two equal notes that begin together are told apart by their voices where all other notes agree how voices are named.
 * Invariant: no two notes with `why` null share a partner, and partners have the same pitch and length.
 * Example: after a wrong pitch was corrected, that note is 'changed' and its two neighbours are 'beside'.
 */
export function fatesOf(apart: Apart): Map<string, Fate> {
  const fates = new Map<string, Fate>();
  const unisons = pairUnisons(apart);
  apart.before.forEach((here, at) => {
    const there = apart.after[apart.partner[at]!];
    const why = whyOf(apart, at);
    for (const held of here.notes) {
      if (!there) tellHeld(held, undefined, 'gone', fates);
      else if (why === 'changed') tellHeld(held, likeliest(held, here, there), why, fates);
      else {
        const { partner, isClear } = unisons(held, here, there);
        tellHeld(held, partner, why ?? (isClear ? null : 'unison'), fates);
      }
    }
  });
  return fates;
}
