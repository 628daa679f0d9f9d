import { useEffect, useRef, type ReactNode } from 'react';
import { words } from '../words/words.ts';

const KINDS = /\.(musicxml|xml|mxl|mei)$/i;

/** Chooses score files, one or (`many`) several, or takes those that are dropped anywhere on the page. */
export function ScoreDrop({ word, cap, dropping, many = false, onFiles, onWrong }: { word: string; cap?: string; dropping: boolean; many?: boolean; onFiles(files: readonly File[]): void; onWrong(): void }): ReactNode {
  const input = useRef<HTMLInputElement>(null);
  const take = useRef<(files: readonly File[]) => void>(() => {});
  useEffect(() => {
    take.current = (files) => {
      if (files.length) (files.every(({ name }) => KINDS.test(name)) ? onFiles : onWrong)(files);
    };
  });
  useEffect(() => {
    if (!dropping) return;
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      take.current([...(event.dataTransfer?.files ?? [])]);
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  }, [dropping]);
  return (
    <span className="score-drop">
      <button type="button" className="ledge-word" onClick={() => input.current?.click()} title={words.score.drop}>
        <b>{word}</b>
        {cap ? <small aria-hidden="true">{cap}</small> : null}
      </button>
      <input
        ref={input} type="file" multiple={many} className="offstage" tabIndex={-1} accept=".musicxml,.xml,.mxl,.mei" aria-label={word}
        onChange={(event) => {
          take.current([...(event.target.files ?? [])]);
          event.target.value = '';
        }}
      />
    </span>
  );
}
