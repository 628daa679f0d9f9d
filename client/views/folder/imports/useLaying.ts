import { useCallback, useState } from 'react';
import type { ImportView } from '../../../../core/agreement/wire/imports.ts';
import { troubleText } from '../../../library/http.ts';
import { addToWork, correctScore, layWork, leaveImport } from '../../../library/imports.ts';
import { words } from '../../../words/words.ts';
import { importSentence } from './importSentence.ts';
import { useImports } from './useImports.ts';

export interface Laying {
  views: readonly ImportView[];
  /** Several files were chosen; whether they are one work has still to be said. */
  held: readonly File[] | null;
  choose(files: readonly File[]): void;
  asOneWork(): void;
  asWorks(): void;
  letGo(): void;
  add(work: string, files: readonly File[]): void;
  correct(work: string, file: File): void;
  leave(view: ImportView): void;
}

/** Scores that are laid in a folder: chosen, sent, followed while the library reads them, stopped. */
export function useLaying(programme: string, allowed: boolean, say: (sentence: string | null) => void, renew: () => void): Laying {
  const [held, hold] = useState<readonly File[] | null>(null);
  const { views, follow, again } = useImports(allowed, (view) => {
    say(importSentence(view));
    if (view.step === 'done') renew();
  });
  const send = useCallback(
    async (files: readonly File[], post: () => Promise<ImportView>) => {
      const name = files.length === 1 ? files[0]!.name : words.imports.files(files.length);
      say(words.imports.sending(name));
      try {
        follow(await post());
      } catch (fault) {
        say(words.score.notLaid(name) + troubleText(fault));
      }
    },
    [say, follow],
  );
  const lay = (files: readonly File[]) => send(files, () => layWork(programme, files));
  return {
    views,
    held,
    choose(files) {
      if (files.length === 1) return void lay(files);
      hold(files);
      say(words.imports.oneOrMany(files.length));
    },
    asOneWork() {
      hold(null);
      if (held) void lay(held);
    },
    async asWorks() {
      hold(null);
      for (const file of held ?? []) await lay([file]);
    },
    letGo() {
      hold(null);
      say(null);
    },
    add: (work, files) => void send(files, () => addToWork(work, files)),
    correct: (work, file) => void send([file], () => correctScore(work, file)),
    leave: (view) => void leaveImport(view.id).then(again, (fault: unknown) => say(troubleText(fault))),
  };
}
