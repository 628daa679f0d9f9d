import { inForce } from '../../core/agreement/inForce.ts';
import type { CarriedView, PartView } from '../../core/agreement/wire/http.ts';
import type { CarriedMark } from '../../core/agreement/carried.ts';
import { newId } from '../agreement/newId.ts';
import { getJson, getText, Refused, sendJson } from './http.ts';
import { operate } from './shelf.ts';

/** A part beside the edition it had before. `carried` is null where there was none. */
export interface TwoEditions {
  view: PartView;
  carried: CarriedView | null;
}

export async function fetchTwoEditions(part: string): Promise<TwoEditions> {
  const none = (fault: unknown): null => {
    if (fault instanceof Refused && fault.status === 404) return null;
    throw fault;
  };
  const [view, carried] = await Promise.all([getJson<PartView>(`/parts/${part}`), getJson<CarriedView>(`/parts/${part}/carried`).catch(none)]);
  return { view, carried };
}

/** The engraver's texts of both. */
export async function fetchTwoTexts(part: string): Promise<{ before: string; after: string }> {
  const [before, after] = await Promise.all([getText(`/parts/${part}/carried/engraving`), getText(`/parts/${part}/engraving`)]);
  return { before, after };
}

export const marksInForce = ({ state, section }: PartView) => inForce(state, section?.seats.map(({ seat }) => seat) ?? []);

export const settle = (part: string, revision: number, key: string, how: 'put' | 'leftOut' | null) => sendJson('POST', `/parts/${part}/carried`, { revision, key, how });

/** Writes a mark that did not go along on a note: inked in where it was ink and one may, else as a slip. Gives whether it is ink now. */
export async function putOn({ id: part, state, roles }: PartView, { mark, seats, proposal, isInk }: CarriedMark, note: string, measure: number): Promise<boolean> {
  const id = newId();
  const { seats: _, ...bare } = mark;
  await operate(part, 'propose', { id, from: measure, to: measure, seats, why: state.proposals[proposal]!.why, marks: [{ ...bare, note }] });
  const isInked = isInk && roles.includes('principal');
  if (isInked) await operate(part, 'adopt', { proposal: id, revision: 1 });
  return isInked;
}
