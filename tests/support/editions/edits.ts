import type { Chance } from '../chance.ts';
import { inner, type Item, type MeasureText, type PartText } from './textOfPart.ts';

/** An edit changes the text in place near measure `at`; false where that measure does not allow it. */
export type Edit = (part: PartText, at: number, chance: Chance) => boolean;

const STEPS = ['A', 'B', 'C', 'D', 'E', 'F', 'G'];
const numberOf = (text: string, tag: string): number => Number(inner(text, tag) ?? 0);
const withDuration = (text: string, duration: number): string => text.replace(/<duration>[^<]*<\/duration>/, `<duration>${duration}</duration>`);
const otherPitch = (text: string, chance: Chance): string => text.replace(/<step>\s*([A-G])\s*<\/step>/, (_, step: string) => `<step>${chance.pick(STEPS.filter((one) => one !== step))}</step>`);
const isPlain = ({ kind, text }: Item): boolean => kind === 'note' && /<pitch>/.test(text) && !/<chord|<grace|<tie |<cue|print-object="no"/.test(text);

/** Plain notes that no chord note follows, by their place among the items. */
function single({ items }: MeasureText): number[] {
  const notes = items.map((item, i) => ({ item, i })).filter(({ item }) => item.kind === 'note');
  return notes.filter(({ item }, k) => isPlain(item) && !/<chord/.test(notes[k + 1]?.item.text ?? '')).map(({ i }) => i);
}

const hasDivisions = ({ items }: MeasureText): boolean => items.some(({ text }) => text.includes('<divisions>'));

export const insertMeasures: Edit = (part, at, chance) => {
  const source = part.measures[at]!;
  if (at > 0 && hasDivisions(source)) return false;
  const isVerbatim = chance.happens(0.3);
  const fresh = Array.from({ length: 1 + chance.below(3) }, (): MeasureText => ({
    open: source.open,
    items: source.items
      .filter(({ kind }) => kind !== 'attributes' && kind !== 'barline' && kind !== 'else')
      .map(({ kind, text }) => ({ kind, text: (isVerbatim ? text : otherPitch(text, chance)).replace(/<tie(d)? [^>]*\/>/g, ''), origin: null })),
  }));
  part.measures.splice(at + 1, 0, ...fresh);
  return true;
};

export const deleteMeasures: Edit = (part, at, chance) => {
  const gone = part.measures.slice(at, at + 1 + chance.below(3));
  const next = part.measures[at + gone.length];
  if (!next || part.measures.length < 6) return false;
  next.items.unshift(...gone.flatMap(({ items }) => items.filter(({ kind }) => kind === 'attributes')));
  part.measures.splice(at, gone.length);
  return true;
};

export const changePitches: Edit = ({ measures }, at, chance) => {
  const { items } = measures[at]!;
  const notes = items.filter(isPlain);
  for (let count = 1 + chance.below(3); count > 0 && notes.length; count -= 1) {
    const note = chance.pick(notes);
    note.text = otherPitch(note.text, chance);
    note.origin = null;
    notes.splice(notes.indexOf(note), 1);
  }
  return items.some(isPlain);
};

export const changeLength: Edit = ({ measures }, at, chance) => {
  const measure = measures[at]!;
  const notes = single(measure).filter((i) => numberOf(measure.items[i]!.text, 'duration') % 2 === 0);
  if (!notes.length) return false;
  const i = chance.pick(notes);
  const { text } = measure.items[i]!;
  const half = withDuration(text, numberOf(text, 'duration') / 2).replace(/<notations>[\s\S]*?<\/notations>/g, '');
  const second = chance.happens(0.5) ? half : half.replace(/<pitch>[\s\S]*?<\/pitch>/, '<rest/>');
  measure.items.splice(i, 1, { kind: 'note', text: half, origin: null }, { kind: 'note', text: second, origin: null });
  return true;
};

export const swapLengths: Edit = ({ measures }, at, chance) => {
  const measure = measures[at]!;
  const all = single(measure);
  const pairs = all.slice(1).flatMap((i, k): [Item, Item][] => (i - all[k]! <= 2 && measure.items.slice(all[k], i).every(({ kind }, d) => d === 0 || kind === 'else') ? [[measure.items[all[k]!]!, measure.items[i]!]] : []));
  const fits = pairs.filter(([a, b]) => numberOf(a.text, 'duration') !== numberOf(b.text, 'duration') && inner(a.text, 'voice') === inner(b.text, 'voice'));
  if (!fits.length) return false;
  const [a, b] = chance.pick(fits);
  const [first, second] = [numberOf(a.text, 'duration'), numberOf(b.text, 'duration')];
  Object.assign(a, { text: withDuration(a.text, second), origin: null });
  Object.assign(b, { text: withDuration(b.text, first), origin: null });
  return true;
};
