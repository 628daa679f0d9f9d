import type { ReactNode } from 'react';
import type { CarriedMark } from '../../../core/agreement/carried.ts';
import type { Settled } from '../../../core/agreement/wire/http.ts';
import { markWords, seatWords } from '../../../core/music/markWords.ts';
import { capital } from '../../words/capital.ts';
import { words } from '../../words/words.ts';

interface Props {
  mark: CarriedMark;
  /** The note it stood on, and where. */
  note: string;
  where: string;
  settled: Settled | undefined;
  isHere: boolean;
  onTake(): void;
  onPut: (() => void) | null;
  onLeave: (() => void) | null;
  onAgain: (() => void) | null;
}

/** What a mark says, in words. */
export const markSaid = ({ mark, seats }: CarriedMark): string => [capital(markWords(mark.value, undefined, words.marks)), seats === 'all' ? '' : seatWords(seats, words.marks)].filter(Boolean).join(', ');

/** A mark that did not go along: what it was, why, and what may become of it. */
export function LostMarkLine({ mark, note, where, settled, isHere, onTake, onPut, onLeave, onAgain }: Props): ReactNode {
  const became = settled && (settled.how === 'put' ? words.changed.wasPut : words.changed.wasLeft)(settled.name);
  return (
    <li className={[isHere && 'here', settled && 'settled'].filter(Boolean).join(' ')}>
      <button type="button" className="what" aria-pressed={isHere} onClick={onTake}>
        <b>{words.changed.stood(markSaid(mark), note, where)}</b> <span>{[mark.isInk ? words.changed.ink : words.changed.slip, became ?? words.changed.why[mark.why]].join(' · ')}</span>
      </button>
      {settled ? (
        onAgain && <button type="button" onClick={onAgain}>{words.changed.again}</button>
      ) : (
        <span className="does">
          {onPut ? <button type="button" onClick={onPut}>{words.changed.put}</button> : null}
          {onLeave ? <button type="button" onClick={onLeave}>{words.changed.leaveOut}</button> : null}
        </span>
      )}
    </li>
  );
}
