import { erasures } from '../../core/agreement/erasures.ts';
import type { Revision } from '../../core/agreement/revisions.ts';
import type { AgreementState, PartFacts } from '../../core/agreement/state.ts';
import type { ErratumView } from '../../core/archive/erratum.ts';
import { markWords } from '../../core/music/markWords.ts';
import type { Part } from '../../core/music/part.ts';
import { pitchesOf, sheet } from './sheet.ts';

/** What has to be erased from hired material, a line a mark and desk. */
export function erasuresAsCsv(state: AgreementState, facts: PartFacts, part: Part, revisions: readonly Revision[]): string {
  const pitchOf = pitchesOf(part);
  const stages = revisions.flatMap(({ seq, stage }) => (stage === null ? [] : [{ seq, stage }]));
  const rows = erasures(state, facts, stages).map(({ measure, desk, note, one }) => ({ measure: String(measure), 'printed number': part.measures[measure - 1]?.number ?? '', desk: desk === null ? '' : String(desk), note: pitchOf(note), what: markWords(one.mark.value), standing: one.superseded ? 'replaced, still on the paper' : 'holds' }));
  return sheet(rows, ['measure', 'printed number', 'desk', 'note', 'what', 'standing']);
}

/** Wrong notes of the editions, apart from all bowings. */
export function errataAsCsv(errata: readonly ErratumView[]): string {
  const rows = errata.map(({ part, edition, measure, number, says, should, by, at, settled }) => ({ part, measure: String(measure), 'printed number': number, says, 'should say': should, edition, by, at: at.slice(0, 10), 'put right': settled?.slice(0, 10) ?? '' }));
  return sheet(rows, ['part', 'measure', 'printed number', 'says', 'should say', 'edition', 'by', 'at', 'put right']);
}
