import type { ReactNode } from 'react';
import type { Command } from '../../tools/keys.ts';
import { LedgeMove } from '../../ui/ledgeParts.tsx';
import { words } from '../../words/words.ts';
import { slipsHere } from './commands.ts';
import { isPrincipal, type Desk } from './desk.ts';

type Move = readonly [cap: string, word: string, command: Command];

/** What one can do here, by key or by touch: what Enter does comes first. */
function movesOf(desk: Desk): Move[] {
  const { tools } = words;
  if (desk.pencil.draft.length) {
    return [
      ['Enter', desk.pencil.held === 'ink' ? tools.inkIn : tools.lay, { do: 'enter' }],
      ['z', tools.takeBack, { do: 'undo' }],
      ['p', tools.pencil, { do: 'pencil' }],
    ];
  }
  const open = desk.caret.open !== null;
  const first: Move[] = !open ? [['Enter', tools.open, { do: 'enter' }]] : slipsHere(desk).slip && isPrincipal(desk) ? [['Enter', tools.inkIn, { do: 'enter' }]] : [];
  const rest: Move[] = [
    ['n', tools.nextOpen, { do: 'nextOpen' }],
    ['w', tools.nextWatch, { do: 'nextFinding' }],
    ['g', tools.goTo, { do: 'goTo' }],
    ['s', tools.say, { do: 'say' }],
    open ? ['Esc', tools.close, { do: 'leave' }] : ['?', tools.keys, { do: 'keys' }],
  ];
  return [...first, ...rest];
}

export function StandMoves({ desk, onCommand }: { desk: Desk; onCommand(command: Command): void }): ReactNode {
  return (
    <div className="moves">
      {movesOf(desk).map(([cap, word, command], i) => (
        <LedgeMove key={cap} cap={cap} word={word} on={i === 0 && desk.pencil.draft.length > 0} onPress={() => onCommand(command)} />
      ))}
    </div>
  );
}
