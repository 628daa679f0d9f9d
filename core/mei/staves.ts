import { childrenNamed, child, descend, type XmlElement } from '../musicxml/element.ts';
import { wordsOf } from './shown.ts';
import { define, nothingStands, type Standing } from './standing.ts';

/** A staff of the score, which this reader takes as a part. */
export interface Staff {
  /** As the score numbers it. */
  n: string;
  name: string;
  abbreviation: string;
  /** General MIDI program from 1; null where none is said. */
  program: number | null;
  standing: Standing;
}

/** General MIDI's bowed strings. */
const CALLED: Record<number, string> = { 41: 'Violin', 42: 'Viola', 43: 'Violoncello', 44: 'Double Bass' };

function programOf(definition: XmlElement): number | null {
  const instrument = child(definition, 'instrDef');
  const number = Number(instrument?.attributes['midi.instrnum'] ?? NaN);
  return Number.isInteger(number) ? number + 1 : null;
}

const labelOf = (element: XmlElement, text: string): string => {
  const label = child(element, 'label');
  return (label ? wordsOf(label, text) : '') || (element.attributes.label ?? '');
};

interface Found {
  definition: XmlElement;
  /** Label of the innermost group, where the staff has none of its own and is alone in it. */
  grouped: string;
}

function staffDefs(element: XmlElement, text: string, grouped = ''): Found[] {
  return element.children.flatMap((inside) => {
    if (inside.name === 'staffDef') return [{ definition: inside, grouped }];
    if (inside.name !== 'staffGrp') return [];
    const found = staffDefs(inside, text);
    const label = labelOf(inside, text);
    return found.length === 1 && !found[0]!.grouped ? [{ ...found[0]!, grouped: label }] : found;
  });
}

/** Instruments named in the header, for scores whose staves carry no label. */
function performers(root: XmlElement, text: string): string[] {
  const [work] = childrenNamed(descend(root, 'meiHead', 'workList') ?? root, 'work');
  const list = work && (descend(work, 'perfMedium', 'perfResList') ?? descend(work, 'expressionList', 'expression', 'perfMedium', 'perfResList'));
  return list ? childrenNamed(list, 'perfRes').map((one) => wordsOf(one, text)) : [];
}

/** The staves of a score in order, each with its name and what stands on it at the beginning. `text` is the document. */
export function stavesOf(root: XmlElement, scoreDef: XmlElement, text: string): Staff[] {
  const found = staffDefs(scoreDef, text);
  const named = performers(root, text);
  return found.map(({ definition, grouped }, i) => {
    const standing = nothingStands();
    define(standing, scoreDef);
    define(standing, definition);
    const program = programOf(definition);
    const abbreviated = child(definition, 'labelAbbr');
    return {
      n: definition.attributes.n ?? String(i + 1),
      name: labelOf(definition, text) || grouped || (named.length === found.length ? named[i]! : '') || (program === null ? '' : (CALLED[program] ?? '')) || `Staff ${i + 1}`,
      abbreviation: (abbreviated ? wordsOf(abbreviated, text) : '') || (definition.attributes['label.abbr'] ?? ''),
      program,
      standing,
    };
  });
}
