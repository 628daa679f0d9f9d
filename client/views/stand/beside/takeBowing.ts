import { carryBowing, WHY_LEFT, type Carried, type MarkedPart } from '../../../../core/matching/carryBowing.ts';
import type { Run } from '../../../../core/matching/run.ts';
import { words } from '../../../words/words.ts';
import { mayMark, type Desk } from '../desk.ts';
import { cutRun } from './cutRun.ts';

/** The bowing of a model on the wanted notes of `to`: run after run, a note carried once. */
export function carried(from: MarkedPart, to: MarkedPart, runs: readonly Run[], wanted: ReadonlySet<string>): Carried {
  const left = new Set(wanted);
  const all: Carried = { marks: [], left: [] };
  for (const run of runs) {
    const cut = cutRun(run, from.part, to.part, (note) => left.has(note));
    if (!cut) continue;
    for (const [, note] of cut.notes) left.delete(note);
    const one = carryBowing(from, to, cut);
    all.marks.push(...one.marks);
    all.left.push(...one.left);
  }
  return all;
}

/** Takes the bowing of another section, or of the same music elsewhere, into the pencil: for the wanted notes. `whose`: as the ledge names it. */
export function takeBowing(desk: Desk, from: MarkedPart, runs: readonly Run[], wanted: readonly string[], whose: string): void {
  if (desk.pencil.held !== 'alone' && !mayMark(desk)) return desk.say(words.stand.onlySection);
  if (desk.pencil.held !== 'alone' && desk.state.locked) return desk.say(words.stand.lifted);
  const { marks, left } = carried(from, { part: desk.view.part, marks: desk.inForce, seats: desk.seats }, runs, new Set(wanted));
  const reasons = [...new Set(left.map(({ why }) => why))].map((why) => WHY_LEFT[why]);
  const leftBehind = left.length ? words.beside.left(left.length, reasons.join(' ')) : '';
  if (marks.length) desk.write({ type: 'write', marks });
  desk.say([marks.length ? words.beside.taken(whose) : words.beside.sameAlready(whose), leftBehind].filter(Boolean).join(' '));
}
