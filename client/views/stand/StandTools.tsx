import { useState, type ReactNode } from 'react';
import { Pencils } from '../../tools/pencil/Pencils.tsx';
import { SignKeys } from '../../tools/pencil/SignKeys.tsx';
import type { Command } from '../../tools/keys.ts';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { words } from '../../words/words.ts';
import { isPrincipal, type Desk } from './desk.ts';

const MOVES: readonly (readonly [word: string, cap: string, command: Command])[] = [
  [words.tools.nextOpen, 'n', { do: 'nextOpen' }],
  [words.tools.nextWatch, 'w', { do: 'nextFinding' }],
  [words.tools.goTo, 'g', { do: 'goTo' }],
  [words.tools.say, 's', { do: 'say' }],
  [words.tools.keys, '?', { do: 'keys' }],
];

/** What lies on the stand's ledge: the signs, the pencils, and the words that move. */
export function StandTools({ desk, onCommand }: { desk: Desk; onCommand(command: Command): void }): ReactNode {
  const [more, setMore] = useState(false);
  const draft = desk.pencil.draft.length > 0;
  return (
    <>
      <SignKeys more={more} onMore={() => setMore(!more)} onCommand={onCommand} substituting={desk.pencil.substituting} />
      <Pencils held={desk.pencil.held} ink={isPrincipal(desk)} onHold={(held) => desk.write({ type: 'hold', held })} />
      <div className="moves">
        <LedgeWord word={draft ? words.tools.lay : words.tools.open} cap="Enter" on={draft} onPress={() => onCommand({ do: 'enter' })} />
        {MOVES.map(([word, cap, command]) => (
          <LedgeWord key={cap} word={word} cap={cap} onPress={() => onCommand(command)} />
        ))}
      </div>
    </>
  );
}
