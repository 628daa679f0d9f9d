import type { ReactNode } from 'react';
import { leave } from '../../library/leave.ts';
import { go } from '../../router.ts';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { nextLight } from '../../ui/light.ts';
import { words } from '../../words/words.ts';

/** Light on the paper, and leaving. */
export function ShelfTools(): ReactNode {
  const goOut = () => void leave().finally(() => go({ at: 'signIn', token: null }));
  return (
    <div className="word-row">
      <LedgeWord word={words.tools.light} onPress={nextLight} />
      <LedgeWord word={words.shelf.signOut} onPress={goOut} />
    </div>
  );
}
