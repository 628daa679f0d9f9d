import type { ReactNode } from 'react';
import { STAGES, type Stage } from '../../../core/agreement/state.ts';
import type { Me } from '../../../core/agreement/wire/http.ts';
import { operate } from '../../library/shelf.ts';
import { go } from '../../router.ts';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { words } from '../../words/words.ts';
import type { Act } from '../shelf/NewProgramme.tsx';
import type { Cell, PartOfWork } from './cells.ts';
import { LayTools } from './imports/LayTools.tsx';
import type { Laying } from './imports/useLaying.ts';

interface Props {
  me: Me;
  cell: Cell | null;
  laying: Laying;
  /** The parts of the work in hand of which this person may say how far they have come. */
  led: readonly PartOfWork[];
  act: Act;
  say(sentence: string | null): void;
}

/** What can be done to the part in hand, and how a score comes into the folder. */
export function FolderTools({ me, cell, led, laying, act, say }: Props): ReactNode {
  const part = cell?.part;
  const stage = part ? STAGES.indexOf(part.stage) : 0;
  const next = STAGES[stage + 1];
  const before = STAGES[stage - 1];
  const leads = led.some(({ id }) => id === part?.id);
  const together = led.filter((other) => other.stage === part?.stage);
  const allOn = (to: Stage) =>
    void act(async () => {
      for (const { id } of together) await operate(id, 'moveOn', { stage: to });
      return words.folder.movedOn(together.length, words.stages[to]);
    });
  if (laying.held) return <LayTools laying={laying} work={null} say={say} />;
  return (
    <div className="word-row">
      {part ? <LedgeWord word={words.folder.openIt} cap="Enter" onPress={() => go({ at: 'stand', part: part.id, measure: null })} /> : null}
      {part && part.revision > 1 ? <LedgeWord word={words.changed.open} onPress={() => go({ at: 'changed', part: part.id, revision: null })} /> : null}
      {part && me.librarian ? <LedgeWord word={part.locked ? words.folder.unlock : words.folder.lock} onPress={() => void act(async () => void (await operate(part.id, part.locked ? 'unlock' : 'lock', {})))} /> : null}
      {part && leads && before ? <LedgeWord word={words.folder.moveBack} cap={words.stages[before]} onPress={() => void act(async () => void (await operate(part.id, 'moveOn', { stage: before })))} /> : null}
      {part && leads && next ? <LedgeWord word={words.folder.moveOn} cap={words.stages[next]} onPress={() => void act(async () => void (await operate(part.id, 'moveOn', { stage: next })))} /> : null}
      {leads && next && together.length > 1 ? <LedgeWord word={words.folder.moveAllOn(together.length)} cap={words.stages[next]} onPress={() => allOn(next)} /> : null}
      {me.librarian ? <LayTools laying={laying} work={cell?.work.id ?? null} say={say} /> : null}
    </div>
  );
}
