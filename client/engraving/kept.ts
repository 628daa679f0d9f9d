import { clear, createStore, del, get, getMany, set, update, type UseStore } from 'idb-keyval';
import type { EngravedSystem } from '../../core/engraving/geometry.ts';
import type { SystemRange } from '../../core/engraving/systemRanges.ts';

/** Layouts kept on this device; one of a long part is some twenty megabytes. Chosen, not measured. */
const KEPT = 6;
let opened: UseStore | undefined;
const store = (): UseStore => (opened ??= createStore('bowline-engraving', 'layouts'));
const NAMES = 'names';

export interface KeptLayout {
  systems: SystemRange[];
}

/** A fingerprint of a text, 53 bits: enough to tell the parts of one library apart, and quick. */
export function fingerprint(text: string): string {
  let [a, b] = [0xdeadbeef, 0x41c6ce57];
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 2654435761);
    b = Math.imul(b ^ code, 1597334677);
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909);
  return (4294967296 * (2097151 & b) + (a >>> 0)).toString(36);
}

/** Without room or without leave to keep anything, everything is simply engraved again. */
async function tried<T>(act: () => Promise<T>): Promise<T | undefined> {
  try {
    return await act();
  } catch {
    return undefined;
  }
}

const drawingKey = (name: string, system: number) => `${name} ${system}`;

export const keptLayout = (name: string): Promise<KeptLayout | undefined> => tried(async () => get<KeptLayout>(name, store()));

export const keptDrawing = (name: string, system: number): Promise<{ drawing: EngravedSystem; font: string | null } | undefined> =>
  tried(async () => {
    const [drawing, font] = await getMany<unknown>([drawingKey(name, system), 'font'], store());
    return drawing ? { drawing: drawing as EngravedSystem, font: (font as string | undefined) ?? null } : undefined;
  });

/** Keeps one drawn system; the font inside it is the same for all. */
export const keepDrawing = (name: string, system: number, drawing: EngravedSystem, font: string | null): Promise<unknown> =>
  tried(async () => {
    await set(drawingKey(name, system), drawing, store());
    if (font) await set('font', font, store());
  });

/** Keeps where the systems begin, and puts the layouts longest not asked for away. */
export const keepLayout = (name: string, layout: KeptLayout): Promise<unknown> =>
  tried(async () => {
    await set(name, layout, store());
    let old: string[] = [];
    await update<string[]>(NAMES, (names = []) => {
      const all = [name, ...names.filter((one) => one !== name)];
      old = all.slice(KEPT);
      return all.slice(0, KEPT);
    }, store());
    for (const one of old) {
      const systems = (await get<KeptLayout>(one, store()))?.systems.length ?? 0;
      await del(one, store());
      for (let i = 0; i < systems; i += 1) await del(drawingKey(one, i), store());
    }
  });

/** Nothing engraved stays on this device: whoever could see it has left. */
export const forgetLayouts = (): Promise<unknown> => tried(() => clear(store()));
