import { forgetPlaces } from '../ui/remembered.ts';
import { Refused } from './http.ts';
import { forgetKept } from './kept/library.ts';
import { signOut } from './shelf.ts';

/** Somebody left while the library could not hear of it. */
const KEY = 'bowline/leaving';

const leavers = new Set<() => void>();

/** `left` is called whenever somebody leaves, before anything of theirs is cleared away. */
export const onLeaving = (left: () => void): void => void leavers.add(left);

/** Whoever was here is gone from this browser: nothing of theirs is read by the next. */
export async function clearDesk(): Promise<void> {
  for (const left of leavers) left();
  forgetPlaces();
  localStorage.removeItem(KEY);
  await forgetKept();
}

/** Signs out here at once, and at the library now or as soon as it can be reached. */
export async function leave(): Promise<void> {
  await clearDesk();
  await signOut().catch((fault: unknown) => {
    if (fault instanceof Refused && fault.status === 0) localStorage.setItem(KEY, 'yes');
  });
}

/** Before the first screen: tells the library of one who left without a line. */
export async function finishLeaving(): Promise<void> {
  if (localStorage.getItem(KEY) === null) return;
  await signOut().then(() => localStorage.removeItem(KEY), () => undefined);
}
