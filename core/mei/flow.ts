import type { XmlElement } from '../musicxml/element.ts';
import { shown } from './shown.ts';

/** What a score is made of, in the order it is read. */
export type FlowStep = { kind: 'definition'; element: XmlElement } | { kind: 'measure'; element: XmlElement; ending: { number: string; first: boolean; last: boolean } | null };

function inside(element: XmlElement, ending: string | null, steps: FlowStep[]): void {
  const from = steps.length;
  for (const child of shown(element)) {
    if (child.name === 'section' || child.name === 'score') inside(child, ending, steps);
    else if (child.name === 'ending') inside(child, child.attributes.n ?? '1', steps);
    else if (child.name === 'scoreDef' || child.name === 'staffDef') steps.push({ kind: 'definition', element: child });
    else if (child.name === 'measure') steps.push({ kind: 'measure', element: child, ending: ending === null ? null : { number: /^[\d, ]+$/.test(ending) ? ending : '1', first: false, last: false } });
  }
  if (element.name !== 'ending') return;
  const own = steps.slice(from).flatMap((step) => (step.kind === 'measure' && step.ending ? [step.ending] : []));
  if (own.length) Object.assign(own[0]!, { first: true });
  if (own.length) Object.assign(own.at(-1)!, { last: true });
}

/** Definitions and measures of the scores given, endings marked. Expansions are not written out: the music is read as it is printed. */
export function flowOf(scores: readonly XmlElement[]): FlowStep[] {
  const steps: FlowStep[] = [];
  for (const score of scores) inside(score, null, steps);
  return steps;
}
