import type { ReactNode } from 'react';
import type { Command } from '../../tools/keys.ts';
import { capsOf } from '../../tools/sheet/rows.ts';
import { LedgeMove } from '../../ui/ledgeParts.tsx';
import { words } from '../../words/words.ts';
import { slipsHere } from './commands.ts';
import { isPrincipal, type Desk } from './desk.ts';

/** The key, the word in full, and as it stands on the ledge. */
type Move = readonly [cap: string, word: string, short: string, command: Command];

/** What one can do here, by key or by touch: what Enter does comes first. */
const both = (word: string) => [word, word] as const;

function movesOf(desk: Desk): Move[] {
  const { tools } = words;
  if (desk.offers.asked) {
    return [
      ['Enter', words.offers.take, tools.short.take, { do: 'enter' }],
      ['a', words.compare.lay.a, words.compare.short.a, { do: 'setAside' }],
      ['b', words.compare.lay.b, words.compare.short.b, { do: 'takeBack' }],
      ['Esc', ...both(tools.close), { do: 'leave' }],
    ];
  }
  if (desk.elsewhere.found) {
    return [
      ['Enter', ...both(tools.elsewhere), { do: 'enter' }],
      ['Esc', ...both(tools.close), { do: 'leave' }],
    ];
  }
  if (desk.pencil.draft.length) {
    return [
      ['Enter', ...both(desk.pencil.held === 'ink' ? tools.inkIn : tools.lay), { do: 'enter' }],
      ['z', ...both(tools.takeBack), { do: 'undo' }],
      ['p', ...both(tools.pencil), { do: 'pencil' }],
    ];
  }
  const open = desk.caret.open !== null;
  const first: Move[] = !open ? [['Enter', ...both(tools.open), { do: 'enter' }]] : slipsHere(desk).slip && isPrincipal(desk) ? [['Enter', ...both(tools.inkIn), { do: 'enter' }]] : [];
  const asking: Move[] = [
    ['f', ...both(tools.fingerings), { do: 'fingerings' }],
    ['v', tools.shareOut, tools.short.shareOut, { do: 'shareOut' }],
    ['e', tools.hair, tools.short.hair, { do: 'hair' }],
    ['y', tools.beside, tools.short.beside, { do: 'beside' }],
  ];
  const next: Move = ['n', tools.nextOpen, tools.short.open, { do: 'nextOpen' }];
  const going: Move[] = [
    next,
    ['w', tools.nextWatch, tools.short.watch, { do: 'nextFinding' }],
    ['g', ...both(tools.goTo), { do: 'goTo' }],
  ];
  const again: Move = [capsOf(['Shift+y']), words.keys.says.elsewhere, tools.short.elsewhere, { do: 'elsewhere' }];
  const passage = desk.caret.at !== desk.caret.from ? [again] : [];
  const reach: Move = ['', ...both(words.touch.passage), { do: 'passage' }];
  const waits: Move[] = desk.waits.waits.length ? [[capsOf(['Shift+n']), words.waits.count(desk.waits.waits.length), `${desk.waits.waits.length} ${tools.short.waits}`, { do: 'waits' }]] : [];
  const say: Move = ['s', tools.say, tools.short.say, { do: 'say' }];
  // What can be asked about a passage stands there once one is open; before that, the ways to one.
  const rest: Move[] = open ? [next, ...asking, reach, say, ...passage, ['Esc', ...both(tools.close), { do: 'leave' }]] : [reach, asking[0]!, ...passage, ...waits, ...going, say, ['?', ...both(tools.keys), { do: 'keys' }]];
  return [...first, ...rest];
}

/** `few`: the two large words of the run-through alone. `phone`: to open and to close have words of their own below. */
export function StandMoves({ desk, few, phone, onCommand }: { desk: Desk; few: boolean; phone: boolean; onCommand(command: Command): void }): ReactNode {
  const below = phone ? [words.tools.open, words.tools.close] : [];
  const moves = movesOf(desk).filter(([, word]) => !below.includes(word));
  return (
    <div className="moves">
      {(few ? moves.slice(0, 2) : moves).map(([cap, word, short, command], i) => (
        <LedgeMove key={cap} cap={cap} word={word} short={short} on={(i === 0 && desk.pencil.draft.length > 0) || (command.do === 'passage' && desk.caret.reaching)} big={desk.caret.open !== null && i < 2} onPress={() => onCommand(command)} />
      ))}
    </div>
  );
}
