import type { Edit } from './edits.ts';
import { inner, type Item, type MeasureText } from './textOfPart.ts';

/** Ways to write the same music down otherwise: no mark may be lost by them. */

const lengthOf = (items: readonly Item[]): number => items.reduce((sum, { kind, text }) => sum + (kind === 'note' && !/<chord|<grace/.test(text) ? Number(inner(text, 'duration')) : 0), 0);
const isOneVoice = ({ items }: MeasureText): boolean => items.every(({ kind }) => kind !== 'backup' && kind !== 'forward');

export const joinMeasures: Edit = ({ measures }, at) => {
  const [one, two] = [measures[at]!, measures[at + 1]];
  if (!two || !isOneVoice(one)) return false;
  one.items = [...one.items, ...two.items].filter(({ kind }) => kind !== 'barline');
  measures.splice(at + 1, 1);
  return true;
};

function halves(item: Item, first: number): [Item, Item] {
  const length = Number(inner(item.text, 'duration'));
  const [stop, start] = [/<tie type="stop"\s*\/>/.exec(item.text)?.[0] ?? '', /<tie type="start"\s*\/>/.exec(item.text)?.[0] ?? ''];
  const bare = item.text.replace(/<tie type="[^>]*\/>/g, '');
  const part = (duration: number, ties: string) => bare.replace(/<duration>[^<]*<\/duration>/, `<duration>${duration}</duration>${ties}`);
  return [
    { ...item, text: part(first, `${stop}<tie type="start"/>`) },
    { ...item, text: /<rest/.test(item.text) ? part(length - first, '') : part(length - first, `<tie type="stop"/>${start}`), origin: null },
  ];
}

export const splitMeasure: Edit = ({ measures }, at, chance) => {
  const measure = measures[at]!;
  const whole = lengthOf(measure.items);
  if (!isOneVoice(measure) || whole < 2) return false;
  const cut = 1 + chance.below(whole - 1);
  const sides: [Item[], Item[]] = [[], []];
  let [time, last] = [0, 0];
  for (const item of measure.items) {
    const isChord = /<chord/.test(item.text);
    const from = isChord ? last : time;
    const length = item.kind === 'note' && !/<grace/.test(item.text) ? Number(inner(item.text, 'duration')) : 0;
    if (from < cut && from + length > cut) {
      const [a, b] = halves(item, cut - from);
      sides[0].push(a);
      sides[1].push(b);
    } else sides[from < cut ? 0 : 1].push(item);
    if (item.kind !== 'note') continue;
    last = from;
    if (!isChord) time += length;
  }
  measures.splice(at, 1, { open: measure.open, items: sides[0] }, { open: measure.open, items: sides[1] });
  return true;
};

export const renumber: Edit = ({ measures }, _, chance) => {
  const first = chance.below(200);
  measures.forEach((measure, i) => (measure.open = measure.open.replace(/number="[^"]*"/, `number="${first + i}"`)));
  return true;
};

function swapVoices(items: Item[]): Item[] {
  const backs = items.filter(({ kind }) => kind === 'backup' || kind === 'forward');
  const at = items.findIndex(({ kind }) => kind === 'backup');
  if (backs.length !== 1 || at < 0) return items;
  const [one, two] = [items.slice(0, at), items.slice(at + 1)];
  const length = lengthOf(one);
  if (length !== Number(inner(items[at]!.text, 'duration')) || lengthOf(two) !== length) return items;
  const opening = one.filter(({ kind }) => kind === 'attributes');
  return [...opening, ...two, items[at]!, ...one.filter(({ kind }) => kind !== 'attributes')];
}

/** Another program wrote it: other divisions, voices, order of voices, ids; beams, stems, layout and printed fingerings gone. */
export const reExport: Edit = (part, _, chance) => {
  const [finer, voice] = [1 + chance.below(5), 1 + chance.below(8)];
  part.head = part.head.replace(/(<part id="|<score-part id=")([^"]*)"/g, '$1re-$2"');
  for (const measure of part.measures) {
    measure.items = swapVoices(measure.items);
    for (const item of measure.items) {
      if (item.kind === 'else') item.text = item.text.replace(/<print[\s\S]*?(\/>|<\/print>)/g, '');
      item.text = item.text
        .replace(/<(divisions|duration)>\s*([\d.]+)\s*<\/\1>/g, (__, tag: string, value: string) => `<${tag}>${Number(value) * finer}</${tag}>`)
        .replace(/<voice>\s*(\d+)\s*<\/voice>/g, (__, value: string) => `<voice>${Number(value) + voice}</voice>`)
        .replace(/<beam[\s\S]*?<\/beam>|<stem[\s\S]*?<\/stem>|<technical>[\s\S]*?<\/technical>/g, '')
        .replace(/<note [^>]*>/g, '<note>');
    }
  }
  return true;
};
