import { forgetLayouts } from '../../engraving/kept.ts';
import { words } from '../../words/words.ts';
import { getJson, getText, Refused } from '../http.ts';
import { answers, type Answer } from './answers.ts';
import { reach } from './away.ts';
import { browserKept } from './browserKept.ts';
import { forgetOwner, owner } from './owner.ts';

const after = (ms: number, run: () => void): void => void setTimeout(run, ms);

/** Whether this window reaches the library. */
export const library = reach(() => getJson('/health'), after);

const kept = answers({
  storage: browserKept(),
  owner,
  // 502 and above: a proxy in between, or a library that is waking up or has its hands full.
  isAway: (fault) => fault instanceof Refused && (fault.status === 0 || fault.status >= 502),
  notKept: () => new Refused({ code: 'NOT_KEPT', text: words.anywhere.notKept }, 0),
  wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
  onAway: library.lost,
});
export const { note, recall, drop } = kept;

/** What this person's sign-in let them see leaves this browser. */
export async function forgetKept(): Promise<void> {
  forgetOwner();
  await Promise.all([drop(() => true), forgetLayouts()]);
}

/** A refusal because nobody is signed in means that what was kept is nobody's any more. */
async function ofWhoIsIn<T>(answer: Promise<Answer<T>>): Promise<Answer<T>> {
  return answer.catch(async (fault: unknown) => {
    if (fault instanceof Refused && fault.status === 401) await forgetKept();
    throw fault;
  });
}

export const askJson = <T>(path: string): Promise<Answer<T>> => ofWhoIsIn(kept.ask(path, () => getJson<T>(path)));
export const askText = (path: string): Promise<Answer<string>> => ofWhoIsIn(kept.ask(path, () => getText(path)));

/** The library's answer, or as it lay here last where it cannot be asked. */
export const keptJson = async <T>(path: string): Promise<T> => (await askJson<T>(path)).value;
export const keptText = async (path: string): Promise<string> => (await askText(path)).value;
