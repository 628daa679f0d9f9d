import createVerovioModule from 'verovio/wasm';
import { enableLog, enableLogToBuffer, LOG_WARNING, VerovioToolkit } from 'verovio/esm';

/** What another program made of a file: its warnings, and how many signs of each kind it has. */
export interface Outside {
  warnings: string[];
  signs: Record<string, number>;
}

/** Figures, words, slurs, and signs over a note by their names as the program writes them. */
const SIGNS: [name: string, pattern: RegExp][] = [
  ['fing', /<fing\b/g], ['dir', /<dir\b/g], ['slur', /<slur\b/g], ['upbow', /artic="upbow"/g], ['dnbow', /artic="dnbow"/g], ['harm', /artic="harm"/g], ['change', /glyph\.name="stringsChangeBowDirection"/g],
];

/** An independent reader of MusicXML and MEI. A toolkit of its own, so that no option of the program under test is on it. */
export async function outsideReader(): Promise<(text: string) => Outside> {
  const module = await createVerovioModule();
  enableLog(LOG_WARNING, module);
  enableLogToBuffer(true, module);
  const toolkit = new VerovioToolkit(module);
  toolkit.setOptions({ breaks: 'none' });
  return (text) => {
    if (!toolkit.loadData(text)) throw new Error(`Not read: ${toolkit.getLog()}`);
    // Names it gives to elements are other ones each time.
    const warnings = toolkit.getLog().split('\n').filter(Boolean).map((line) => line.replace(/'[a-z0-9]+'/g, "'…'")).sort();
    const mei = toolkit.getMEI();
    return { warnings, signs: Object.fromEntries(SIGNS.map(([name, pattern]) => [name, mei.match(pattern)?.length ?? 0])) };
  };
}

/** What `after` has more of than `before`, sign by sign; those that are as many are left out. */
export function moreOf(before: Outside['signs'], after: Outside['signs']): Record<string, number> {
  return Object.fromEntries(Object.keys(after).map((name) => [name, after[name]! - before[name]!] as const).filter(([, count]) => count !== 0));
}
