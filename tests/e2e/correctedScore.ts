import type { PartView } from '../../core/agreement/wire/http.ts';
import { chance } from '../support/chance.ts';
import { insertMeasures } from '../support/editions/edits.ts';
import { textOfPart, written } from '../support/editions/textOfPart.ts';

const bodyOf = (text: string, id: string): string => new RegExp(`<part id="${id}"[^>]*>[\\s\\S]*?</part>`).exec(text)![0];

/** A publisher's corrected score: one note with an inked mark is another pitch, and in every part measures are put in before all other inked marks' measures but the first's. */
export function correctedScore(source: string, { part, state }: PartView): { text: string; changedNote: string; changedMeasure: number; putInAfter: number } {
  const standing = state.ink.filter(({ superseded }) => !superseded);
  const notes = part.measures.flatMap(({ notes: list }) => list);
  const marked = standing.map(({ mark }) => notes.findIndex(({ id }) => id === mark.note)).sort((a, b) => a - b);
  const measureOf = (index: number) => part.measures.find(({ notes: list }) => list.includes(notes[index]!))!.ordinal;
  const first = marked[0]!;
  const changedMeasure = measureOf(first);
  const putInAfter = measureOf(marked.find((index) => measureOf(index) > changedMeasure + 2) ?? first) - 1;
  const text = textOfPart(source, part.id);
  const item = text.measures.flatMap(({ items }) => items).find(({ origin }) => origin === first)!;
  item.text = item.text.replace(/<step>([A-G])<\/step>/, (_, step: string) => `<step>${step === 'A' ? 'B' : 'A'}</step>`);
  let corrected = source;
  for (const [, id] of source.matchAll(/<part id="([^"]*)"/g)) {
    const one = id === part.id ? text : textOfPart(source, id!);
    // The same chance in each: as many measures.
    insertMeasures(one, putInAfter - 1, chance(3));
    const open = /<part id="[^>]*>/.exec(bodyOf(source, id!))![0];
    const body = bodyOf(written(one), id!).replace(/<part id="[^>]*>/, open);
    corrected = corrected.replace(bodyOf(source, id!), () => body);
  }
  return { text: corrected, changedNote: notes[first]!.id, changedMeasure, putInAfter };
}
