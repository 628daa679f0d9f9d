import { startTransition, useEffect, useState } from 'react';
import { EMPTY, engraving, type EngravingSnapshot, type EngravingStore } from './engraving.ts';
import { takeEngraver } from './worker.ts';

function addMusicFont(base64: string): void {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  document.fonts.add(new FontFace('Leipzig', bytes));
}

/**
 * The engraving of one part, laid out anew whenever its text or the width changes. Without a text there is no engraver.
 * The beginning is shown as it comes; what is drawn after that gives way to a key that is pressed meanwhile.
 */
export function useEngraving(text: string | null, width: number, spacing: number, oneLine = false): { store: EngravingStore | null; engraved: EngravingSnapshot } {
  const [store, setStore] = useState<EngravingStore | null>(null);
  const [engraved, setEngraved] = useState(EMPTY);
  const wanted = text !== null;
  useEffect(() => {
    if (!wanted) return;
    const opened = engraving(takeEngraver(), addMusicFont);
    setStore(opened);
    const stop = opened.subscribe(() => {
      const now = opened.getSnapshot();
      if (now.whole) startTransition(() => setEngraved(now));
      else setEngraved(now);
    });
    return () => {
      stop();
      setStore(null);
      setEngraved(EMPTY);
      opened.close();
    };
  }, [wanted]);
  useEffect(() => {
    if (store && text && width > 0) store.lay(text, width, spacing, oneLine);
  }, [store, text, width, spacing, oneLine]);
  return { store, engraved };
}
