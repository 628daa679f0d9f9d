import { layOut, type LaidOut } from './engraver.ts';
import { fingerprint, keepDrawing, keepLayout, keptDrawing, keptLayout } from './kept.ts';
import type { FromEngraver, Layout, ToEngraver } from './messages.ts';
import { beginningOf } from './passage.ts';

const port = globalThis as unknown as { postMessage(message: FromEngraver): void; onmessage: ((event: MessageEvent<ToEngraver>) => void) | null; location: Location };

/** The first lines of a long part are laid out and shown before the whole of it is. Measures; chosen, not measured. */
const BEGINNING = 48;
/** Lines drawn of the beginning: more than a screen. */
const SHOWN_FIRST = 8;

let latest = 0;
let layout: Layout | null = null;
let name = '';
let laid: LaidOut | null = null;

/** What is kept is known by what it was made from and by this very program, whose file name changes with what is in it. */
const nameOf = ({ text, width, spacing, oneLine }: Layout) => `${port.location.pathname} ${fingerprint(text)} ${text.length} ${width} ${spacing} ${oneLine ? 'line' : ''}`;

function draw(job: number, system: number, from: LaidOut): void {
  const drawn = from.draw(system);
  port.postMessage({ kind: 'drawn', job, system, ...drawn });
  void keepDrawing(name, system, drawn.drawing, drawn.font);
}

async function lay(job: number, wanted: Layout): Promise<void> {
  layout = wanted;
  name = nameOf(wanted);
  laid = null;
  const kept = await keptLayout(name);
  if (kept) return port.postMessage({ kind: 'laid', job, systems: kept.systems, whole: true });
  const beginning = wanted.oneLine ? null : beginningOf(wanted.text, BEGINNING);
  if (beginning) {
    const first = await layOut({ ...wanted, text: beginning });
    // Lines are filled from the front, so that all but the last stand as they will in the whole part.
    const systems = first.systems.slice(0, -1).slice(0, SHOWN_FIRST);
    port.postMessage({ kind: 'laid', job, systems, whole: false });
    for (const system of systems.keys()) draw(job, system, first);
    // Asked for another layout meanwhile? That is heard between two pieces of work only.
    await new Promise((resolve) => setTimeout(resolve));
    if (job !== latest) return;
  }
  laid = await layOut(wanted);
  port.postMessage({ kind: 'laid', job, systems: laid.systems, whole: true });
  void keepLayout(name, { systems: laid.systems });
}

async function answer(message: ToEngraver): Promise<void> {
  if (message.job !== latest) return;
  if (message.kind === 'lay') return lay(message.job, message);
  const kept = laid ? undefined : await keptDrawing(name, message.system);
  if (kept) return port.postMessage({ kind: 'drawn', job: message.job, system: message.system, ...kept });
  laid ??= await layOut(layout!);
  draw(message.job, message.system, laid);
}

let queue = Promise.resolve();
port.onmessage = ({ data }) => {
  if (data.kind === 'lay') latest = data.job;
  queue = queue.then(() => answer(data)).catch((fault: unknown) => port.postMessage({ kind: 'failed', job: data.job, why: String(fault) }));
};
