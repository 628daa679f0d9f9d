import type { ReactNode } from 'react';
import type { Command } from '../../../tools/keys.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import type { OpenRange } from '../openMeasures.ts';
import { measureName } from '../sentence.ts';
import { openBeside } from './goingRound.ts';

type Asked = (command: Command) => void;

function Beside({ desk, range, command, label, onCommand }: { desk: Desk; range: OpenRange | undefined; command: Command; label(measure: string): string; onCommand: Asked }): ReactNode {
  if (!range) return <span className="beside-none" />;
  const name = measureName(desk, range.from);
  return (
    <button type="button" className="open-beside" aria-label={label(name)} onClick={() => onCommand(command)}>
      {name}
    </button>
  );
}

/** The open measures to the left and right of the sentence, by their numbers. */
export function OpenBeside({ desk, which, onCommand }: { desk: Desk; which: 'before' | 'after'; onCommand: Asked }): ReactNode {
  const before = which === 'before';
  return <Beside desk={desk} range={openBeside(desk)[which]} command={{ do: before ? 'openBefore' : 'openAfter' }} label={before ? words.touch.openBefore : words.touch.openAfter} onCommand={onCommand} />;
}

/** What one does with a phone in the hand: open the measure, hear, say something, see one's part; marking is there when it is asked for. */
export function PhoneMoves({ desk, marking, onMarking, onCommand }: { desk: Desk; marking: boolean; onMarking(): void; onCommand: Asked }): ReactNode {
  const { touch, hearing, tools } = words;
  const closed = desk.caret.open === null;
  const mine = desk.caret.seat !== 'all' && desk.caret.open === null;
  return (
    <div className="phone-moves">
      <button type="button" onClick={() => (closed ? onCommand({ do: 'openHere' }) : onCommand({ do: 'leave' }))}>
        {closed ? tools.open : tools.close}
      </button>
      <button type="button" onClick={() => onCommand({ do: 'hear' })}>
        {desk.hearing.state === 'ready' ? touch.hear : hearing.stop}
      </button>
      <button type="button" onClick={() => onCommand({ do: 'say' })}>
        {touch.say}
      </button>
      <button type="button" aria-pressed={mine} onClick={() => onCommand({ do: 'myPart' })}>
        {touch.myPart}
      </button>
      <button type="button" aria-pressed={marking} onClick={onMarking}>
        {touch.mark}
      </button>
    </div>
  );
}
