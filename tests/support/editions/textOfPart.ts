/** A note of the text, by its count in the text it came from; null for one that was written or changed since. */
export interface Item {
  kind: 'note' | 'backup' | 'forward' | 'attributes' | 'barline' | 'else';
  text: string;
  origin: number | null;
}

export interface MeasureText {
  open: string;
  items: Item[];
}

/** One part of a score as text in pieces, to be edited as a copyist would, knowing which note is which. */
export interface PartText {
  head: string;
  measures: MeasureText[];
}

const PIECE = /<(note|backup|forward|attributes|barline)(?=[\s>])[\s\S]*?<\/\1>/g;

function itemsOf(content: string, next: () => number): Item[] {
  const items: Item[] = [];
  let end = 0;
  for (const match of content.matchAll(PIECE)) {
    if (match.index > end) items.push({ kind: 'else', text: content.slice(end, match.index), origin: null });
    const kind = match[1] as Item['kind'];
    items.push({ kind, text: match[0], origin: kind === 'note' ? next() : null });
    end = match.index + match[0].length;
  }
  items.push({ kind: 'else', text: content.slice(end), origin: null });
  return items;
}

/** The part with this id of a partwise score. */
export function textOfPart(score: string, id: string): PartText {
  const entry = new RegExp(`<score-part id="${id}"[\\s\\S]*?</score-part>`).exec(score)![0];
  const body = new RegExp(`<part id="${id}"[^>]*>([\\s\\S]*?)</part>`).exec(score)![1]!;
  let count = 0;
  const measures = [...body.matchAll(/(<measure[^>]*?)(?:\/>|>([\s\S]*?)<\/measure>)/g)].map((match) => ({ open: `${match[1]}>`, items: itemsOf(match[2] ?? '', () => count++) }));
  return { head: `<score-partwise version="4.0"><part-list>${entry}</part-list><part id="${id}">`, measures };
}

export const written = ({ head, measures }: PartText): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${head}\n${measures.map(({ open, items }) => `${open}${items.map(({ text }) => text).join('')}</measure>`).join('\n')}\n</part></score-partwise>\n`;

export const copied = ({ head, measures }: PartText): PartText => ({ head, measures: measures.map(({ open, items }) => ({ open, items: items.map((item) => ({ ...item })) })) });

export const inner = (text: string, tag: string): string | undefined => new RegExp(`<${tag}[^>]*>\\s*([^<]*?)\\s*</${tag}>`).exec(text)?.[1];
