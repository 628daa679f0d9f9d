import { useState, type ReactNode } from 'react';
import { Pencils } from '../../tools/pencil/Pencils.tsx';
import { SignKeys } from '../../tools/pencil/SignKeys.tsx';
import type { Command } from '../../tools/keys.ts';
import { pencilsOf, type Desk } from './desk.ts';

/** What lies on the stand's ledge: the signs and the pencils. */
export function StandTools({ desk, onCommand }: { desk: Desk; onCommand(command: Command): void }): ReactNode {
  const [more, setMore] = useState(false);
  return (
    <div className="tools">
      <SignKeys more={more} onMore={() => setMore(!more)} onCommand={onCommand} substituting={desk.pencil.substituting} />
      <Pencils held={desk.pencil.held} all={pencilsOf(desk)} onHold={(held) => desk.write({ type: 'hold', held })} />
    </div>
  );
}
