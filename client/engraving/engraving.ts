import type { EngravedSystem } from '../../core/engraving/geometry.ts';
import type { SystemRange } from '../../core/engraving/systemRanges.ts';
import type { FromEngraver, Layout, ToEngraver } from './messages.ts';

/** What is engraved so far; a system without a drawing is five empty lines for now. */
export interface EngravingSnapshot {
  systems: readonly (SystemRange & { drawing: EngravedSystem | null })[];
  /** The measures of each system; the same list for as long as the part is laid out the same. */
  ranges: readonly SystemRange[];
  drawn: number;
  /** False while only the beginning is laid out. */
  whole: boolean;
  failed: string | null;
}

export interface EngravingStore {
  getSnapshot(): EngravingSnapshot;
  subscribe(changed: () => void): () => void;
  /** Lay the part out anew, `width` staff spaces wide. `spacing`: how far notes stand apart. `oneLine`: all of it in one system. */
  lay(text: string, width: number, spacing: number, oneLine?: boolean): void;
  /** The system now looked at: drawn first, then those after it. */
  near(system: number): void;
  close(): void;
}

/** Before anything is engraved. */
export const EMPTY: EngravingSnapshot = { systems: [], ranges: [], drawn: 0, whole: false, failed: null };

const isSame = (a: Layout, b: Layout): boolean => a.text === b.text && a.width === b.width && a.spacing === b.spacing && a.oneLine === b.oneLine;

/** A layout that takes the place of `before`; what is drawn of a system with the same measures stays. */
function laidOut(ranges: readonly SystemRange[], whole: boolean, before: EngravingSnapshot): EngravingSnapshot {
  const systems = ranges.map((range, i) => {
    const old = before.systems[i];
    return { ...range, drawing: old?.first === range.first && old.last === range.last ? old.drawing : null };
  });
  return { ...before, ranges, systems, whole, drawn: systems.filter(({ drawing }) => drawing).length, failed: null };
}

/** One worker that draws a part system by system. `worker` and `onFont` are given so that tests need no browser. */
export function engraving(worker: Worker, onFont: (base64: string) => void): EngravingStore {
  const listeners = new Set<() => void>();
  let snapshot = EMPTY;
  let job = 0;
  let wanted = 0;
  let shownJob = 0;
  let asked: Layout | null = null;
  let shown: Layout | null = null;
  let fontSeen = false;

  const show = (next: EngravingSnapshot) => {
    snapshot = next;
    for (const listener of listeners) listener();
  };
  const post = (message: ToEngraver) => worker.postMessage(message);
  const drawNext = () => {
    const open = snapshot.systems.map((system, index) => ({ system, index })).filter(({ system }) => !system.drawing);
    const next = open.find(({ index }) => index >= wanted) ?? open[0];
    if (next) post({ kind: 'draw', job, system: next.index });
  };

  worker.onmessage = ({ data }: MessageEvent<FromEngraver>) => {
    if (data.job !== job) return;
    if (data.kind === 'failed') return show({ ...snapshot, failed: data.why });
    if (data.kind === 'laid') show(laidOut(data.systems, data.whole, shownJob === job ? snapshot : EMPTY));
    else {
      const systems = snapshot.systems.map((system, index) => (index === data.system ? { ...system, drawing: data.drawing } : system));
      if (data.font && !fontSeen) {
        fontSeen = true;
        onFont(data.font);
      }
      show({ ...snapshot, systems, drawn: snapshot.drawn + 1 });
    }
    shownJob = job;
    shown = asked;
    // The beginning is drawn unasked.
    if (snapshot.whole) drawNext();
  };
  worker.onerror = (event) => show({ ...snapshot, failed: event.message });

  return {
    getSnapshot: () => snapshot,
    subscribe(changed) {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    lay(text, width, spacing, oneLine = false) {
      job += 1;
      asked = { text, width, spacing, oneLine };
      // Back at what is shown before anything else came of it, as when a tablet is turned and turned back: all of it is there.
      if (shown && isSame(shown, asked) && snapshot.whole && snapshot.drawn === snapshot.systems.length) shownJob = job;
      else post({ kind: 'lay', job, ...asked });
    },
    near(system) {
      wanted = system;
    },
    close: () => worker.terminate(),
  };
}
