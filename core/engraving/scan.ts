/** One element of the engraver's SVG with the classes of its ancestors. */
export interface Scanned {
  tag: string;
  attributes: Record<string, string>;
  /** From the outermost to the innermost group around (and including) the element. */
  groups: readonly { class: string; id: string }[];
  /** Text right after the opening tag, with the spaces around its words; "" where there is none. */
  text: string;
}

const TAG = /<(\/?)([\w:]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>([^<]*)/g;
const ATTRIBUTE = /([\w:-]+)="([^"]*)"/g;

/** Walks the engraver's own SVG, which is regular: no comments, no CDATA, all attributes in double quotes. */
export function* scan(svg: string): Generator<Scanned> {
  const groups: { class: string; id: string }[] = [];
  for (const [, closing, tag, rest, empty, text] of svg.matchAll(TAG)) {
    if (closing) {
      if (tag === 'g') groups.pop();
      continue;
    }
    const attributes = Object.fromEntries([...rest!.matchAll(ATTRIBUTE)].map(([, name, value]) => [name!, value!]));
    if (tag === 'g') groups.push({ class: attributes.class ?? '', id: attributes.id ?? '' });
    yield { tag: tag!, attributes, groups: [...groups], text: text!.trim() ? text! : '' };
    if (tag === 'g' && empty) groups.pop();
  }
}
