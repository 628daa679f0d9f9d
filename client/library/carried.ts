import { inForce } from '../../core/agreement/inForce.ts';
import { seatsOf } from '../../core/agreement/seating.ts';
import type { CarriedView, PartView } from '../../core/agreement/wire/http.ts';
import type { CarriedMark } from '../../core/agreement/carried.ts';
import { type Mark, slotOf } from '../../core/music/mark.ts';
import type { Seats } from '../../core/music/seat.ts';
import { newId } from '../agreement/newId.ts';
import { getJson, getText, Refused, sendJson } from './http.ts';
import { operate } from './shelf.ts';

/** A part beside the edition it had before. `carried` is null where there was none. */
export interface TwoEditions {
  view: PartView;
  carried: CarriedView | null;
}

const beside = (revision: number | null): string => (revision === null ? '' : `?revision=${revision}`);

export async function fetchTwoEditions(part: string, revision: number | null): Promise<TwoEditions> {
  const none = (fault: unknown): null => {
    if (fault instanceof Refused && fault.status === 404) return null;
    throw fault;
  };
  const [view, carried] = await Promise.all([getJson<PartView>(`/parts/${part}`), getJson<CarriedView>(`/parts/${part}/carried${beside(revision)}`).catch(none)]);
  return { view, carried };
}

/** The engraver's texts of both. */
export async function fetchTwoTexts(part: string, revision: number | null): Promise<{ before: string; after: string }> {
  const [before, after] = await Promise.all([getText(`/parts/${part}/carried/engraving${beside(revision)}`), getText(`/parts/${part}/engraving`)]);
  return { before, after };
}

export const marksInForce = ({ state, section }: PartView) => inForce(state, seatsOf(section));

export const settle = (part: string, revision: number, key: string, how: 'put' | 'leftOut' | null) => sendJson('POST', `/parts/${part}/carried`, { revision, key, how });

/** Writes a mark on a note: inked in where `asInk` and one may, else as a slip. Gives whether it is ink now. */
async function write({ id: part, roles }: PartView, content: { measure: number; seats: Seats; why: string; mark: Mark }, asInk: boolean): Promise<boolean> {
  const id = newId();
  const { measure, seats, why, mark } = content;
  await operate(part, 'propose', { id, from: measure, to: measure, seats, why, marks: [mark] });
  const isInked = asInk && roles.includes('principal');
  if (isInked) await operate(part, 'adopt', { proposal: id, revision: 1 });
  return isInked;
}

/** Writes a mark that did not go along on a note of the new edition. */
export const putOn = (view: PartView, { mark, seats, proposal, isInk }: CarriedMark, note: string, measure: number): Promise<boolean> =>
  write(view, { measure, seats, why: view.state.proposals[proposal]!.why, mark: { note, value: mark.value } }, isInk);

/** Rubs out a mark that went along though the slurs round it are others. */
export function rubOut(view: PartView, { mark: { note, value }, seats, proposal, maybe }: CarriedMark): Promise<boolean> {
  const after = value.kind === 'change' ? { after: value.after } : {};
  return write(view, { measure: maybe!.measure, seats, why: view.state.proposals[proposal]!.why, mark: { note, value: { kind: 'none', slot: slotOf(value), ...after } } }, true);
}
