import { useCallback, type ReactNode } from 'react';
import { STAGES } from '../../../core/agreement/state.ts';
import type { Me } from '../../../core/agreement/wire/http.ts';
import { troubleText } from '../../library/http.ts';
import { correctScore, layScore, operate } from '../../library/shelf.ts';
import { go } from '../../router.ts';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { ScoreDrop } from '../../ui/ScoreDrop.tsx';
import { words } from '../../words/words.ts';
import type { Act } from '../shelf/NewProgramme.tsx';
import type { Cell } from './cells.ts';

interface Props {
  me: Me;
  programme: string;
  cell: Cell | null;
  /** May say how far the part has come. */
  leads: boolean;
  act: Act;
  say(sentence: string | null): void;
}

/** What can be done to the part in hand, and how a score comes into the folder. */
export function FolderTools({ me, programme, cell, leads, act, say }: Props): ReactNode {
  const wrong = useCallback(() => say(words.score.wrongKind), [say]);
  const lay = (file: File) => {
    say(`${words.score.reading(file.name)} ${words.score.readingSub}`);
    void act(async () => {
      const { work } = await layScore(programme, file).catch((fault: unknown) => {
        throw new Error(words.score.notLaid(file.name) + troubleText(fault));
      });
      return words.score.laid(work.title, work.parts.length);
    });
  };
  const correct = (file: File) => {
    say(words.score.reading(file.name));
    void act(async () => {
      const { notes } = await correctScore(cell!.work.id, file).catch((fault: unknown) => {
        throw new Error(words.score.notLaid(file.name) + troubleText(fault));
      });
      return words.score.corrected(notes.kept, notes.added, notes.removed);
    });
  };
  const part = cell?.part;
  const stage = part ? STAGES.indexOf(part.stage) : 0;
  const next = STAGES[stage + 1];
  const before = STAGES[stage - 1];
  return (
    <div className="word-row">
      {part ? <LedgeWord word={words.folder.openIt} cap="Enter" onPress={() => go({ at: 'stand', part: part.id, measure: null })} /> : null}
      {part && part.revision > 1 ? <LedgeWord word={words.changed.open} onPress={() => go({ at: 'changed', part: part.id, revision: null })} /> : null}
      {part && me.librarian ? <LedgeWord word={part.locked ? words.folder.unlock : words.folder.lock} onPress={() => void act(async () => void (await operate(part.id, part.locked ? 'unlock' : 'lock', {})))} /> : null}
      {part && leads && before ? <LedgeWord word={words.folder.moveBack} cap={words.stages[before]} onPress={() => void act(async () => void (await operate(part.id, 'moveOn', { stage: before })))} /> : null}
      {part && leads && next ? <LedgeWord word={words.folder.moveOn} cap={words.stages[next]} onPress={() => void act(async () => void (await operate(part.id, 'moveOn', { stage: next })))} /> : null}
      {me.librarian && cell ? <ScoreDrop word={words.score.correct} dropping={false} onFile={correct} onWrong={wrong} /> : null}
      {me.librarian ? <ScoreDrop word={words.score.lay} dropping onFile={lay} onWrong={wrong} /> : null}
    </div>
  );
}
