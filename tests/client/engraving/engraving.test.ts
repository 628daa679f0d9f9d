import { describe, expect, it } from 'vitest';
import { engraving } from '../../../client/engraving/engraving.ts';
import type { FromEngraver, ToEngraver } from '../../../client/engraving/messages.ts';
import type { EngravedSystem } from '../../../core/engraving/geometry.ts';

const DRAWING: EngravedSystem = { inner: '', geometry: { width: 1, height: 1, top: 0, bottom: 1, measures: [], notes: {}, near: [], high: [], low: [] } };

/** Stands for the worker: what it is asked is kept, and it answers when told to. */
class Asked {
  readonly messages: ToEngraver[] = [];
  onmessage: ((event: MessageEvent<FromEngraver>) => void) | null = null;
  postMessage(message: ToEngraver): void {
    this.messages.push(message);
  }
  answer(data: FromEngraver): void {
    this.onmessage!({ data } as MessageEvent<FromEngraver>);
  }
}

/** Two lines laid out and drawn at a width of 100. */
function drawn() {
  const worker = new Asked();
  const store = engraving(worker as unknown as Worker, () => undefined);
  store.lay('part', 100, 0.5);
  worker.answer({ kind: 'laid', job: 1, systems: [{ first: 1, last: 4 }, { first: 5, last: 8 }], whole: true });
  for (const system of [0, 1]) worker.answer({ kind: 'drawn', job: 1, system, drawing: DRAWING, font: null });
  return { worker, store };
}

describe('one part engraved by a worker', () => {
  it('keeps all that is drawn where it is laid as it was before anything else came, and hears no more of what was asked between', () => {
    const { worker, store } = drawn();
    store.lay('part', 40, 0.4);
    store.lay('part', 100, 0.5);
    expect(worker.messages.filter(({ kind }) => kind === 'lay')).toHaveLength(2);
    worker.answer({ kind: 'laid', job: 2, systems: [{ first: 1, last: 1 }], whole: false });
    expect(store.getSnapshot().systems.map(({ last, drawing }) => [last, drawing])).toEqual([[4, DRAWING], [8, DRAWING]]);
  });

  it('is laid out anew for another width, and for the same one when something else was shown between', () => {
    const { worker, store } = drawn();
    store.lay('part', 40, 0.4);
    worker.answer({ kind: 'laid', job: 2, systems: [{ first: 1, last: 1 }, { first: 2, last: 2 }], whole: true });
    expect(store.getSnapshot().systems.map(({ drawing }) => drawing)).toEqual([null, null]);
    store.lay('part', 100, 0.5);
    expect(worker.messages.at(-1)).toEqual({ kind: 'lay', job: 3, text: 'part', width: 100, spacing: 0.5, oneLine: false });
  });
});
