import { distanceBetween, most, type Profile } from './profile.ts';

export interface Standing {
  /** y of the first staff line of each system, from the top of the music, in staff spaces. */
  tops: number[];
  /** Height the music needs as it stands closest. */
  needed: number;
}

/** A system to be put on a page: what it covers, and from its first staff line to its last. */
export interface Stacked {
  profile: Profile;
  staff: number;
}

/** How much further apart than need be lines may be drawn to fill a page. Staff spaces; chosen, not measured. */
const LOOSEST = 4;

/**
 * Where systems stand on a page `height` high: as close as they may, and the room that is left shared between them, up to a limit, unless the page is
 * the last. Example: one system stands with its highest sign at the top.
 */
export function standOnPage(systems: readonly Stacked[], height: number, room: { gap: number; apart: number }, last: boolean): Standing {
  const first = systems[0];
  const foot = systems.at(-1);
  if (!first || !foot) return { tops: [], needed: 0 };
  const tops = [most(first.profile.up)];
  for (let i = 1; i < systems.length; i += 1) tops.push(tops[i - 1]! + systems[i - 1]!.staff + distanceBetween(systems[i - 1]!.profile, systems[i]!.profile, room));
  const needed = tops.at(-1)! + foot.staff + most(foot.profile.down);
  const spare = Math.max(0, height - needed);
  const each = systems.length > 1 ? Math.min(LOOSEST, spare / (systems.length - 1)) : 0;
  const given = last ? Math.min(each, 1) : each;
  return { tops: tops.map((top, i) => top + i * given), needed };
}
