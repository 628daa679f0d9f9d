import { useEffect, useRef, type ReactNode } from 'react';
import { words } from '../words/words.ts';

const KINDS = /\.(musicxml|xml|mxl|mei)$/i;

/** Chooses a score file, or takes one that is dropped anywhere on the page. */
export function ScoreDrop({ word, cap, dropping, onFile, onWrong }: { word: string; cap?: string; dropping: boolean; onFile(file: File): void; onWrong(): void }): ReactNode {
  const input = useRef<HTMLInputElement>(null);
  const take = useRef<(file: File | undefined) => void>(() => {});
  useEffect(() => {
    take.current = (file) => (file && KINDS.test(file.name) ? onFile(file) : file && onWrong());
  });
  useEffect(() => {
    if (!dropping) return;
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      take.current(event.dataTransfer?.files[0]);
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
        ref={input} type="file" className="offstage" tabIndex={-1} accept=".musicxml,.xml,.mxl,.mei" aria-label={word}
        onChange={(event) => {
          take.current(event.target.files?.[0]);
          event.target.value = '';
        }}
      />
    </span>
  );
}
