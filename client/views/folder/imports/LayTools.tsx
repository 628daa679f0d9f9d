import { useCallback, type ReactNode } from 'react';
import { LedgeWord } from '../../../ui/ledgeParts.tsx';
import { ScoreDrop } from '../../../ui/ScoreDrop.tsx';
import { words } from '../../../words/words.ts';
import type { Laying } from './useLaying.ts';

/** How scores come into the folder. `work` is the one in hand. */
export function LayTools({ laying, work, say }: { laying: Laying; work: string | null; say(sentence: string): void }): ReactNode {
  const wrong = useCallback(() => say(words.score.wrongKind), [say]);
  if (laying.held) {
    return (
      <div className="word-row">
        <LedgeWord word={words.imports.oneWork} onPress={laying.asOneWork} />
        <LedgeWord word={words.imports.works(laying.held.length)} onPress={laying.asWorks} />
        <LedgeWord word={words.imports.none} onPress={laying.letGo} />
      </div>
    );
  }
  return (
    <>
      {work ? <ScoreDrop word={words.score.correct} dropping={false} onFiles={([file]) => laying.correct(work, file!)} onWrong={wrong} /> : null}
      {work ? <ScoreDrop word={words.imports.add} many dropping={false} onFiles={(files) => laying.add(work, files)} onWrong={wrong} /> : null}
      <ScoreDrop word={words.score.lay} many dropping onFiles={laying.choose} onWrong={wrong} />
    </>
  );
}
