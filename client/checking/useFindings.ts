import { useEffect, useRef, useState } from 'react';
import type { CheckInput, Finding } from '../../core/check/finding.ts';
import type { Part } from '../../core/music/part.ts';
import { checker, type Checker } from './checker.ts';
import type { NamedSection } from './othersSent.ts';

/** Chosen, not measured: long enough for the next key of a run of figures, so that nothing is checked while one writes. */
const PAUSE_MS = 300;

/** The checker of the part on the stand. */
export function useChecker(part: Part): Checker | null {
  const [open, setOpen] = useState<Checker | null>(null);
  useEffect(() => {
    const opened = checker(part);
    setOpen(opened);
    return () => {
      setOpen(null);
      opened.close();
    };
  }, [part]);
  return open;
}

/** Findings about these marks, a moment after the last change; what was found before stays until then. `others`: the other sections, once they are known. */
export function useFindings(open: Checker | null, input: Omit<CheckInput, 'part'>, others: readonly NamedSection[] | null = null): { findings: readonly Finding[]; stopped: boolean } {
  const [found, setFound] = useState<{ findings: readonly Finding[]; stopped: boolean }>({ findings: [], stopped: false });
  const round = useRef(0);
  useEffect(() => {
    if (open && others) open.beside(others);
  }, [open, others]);
  useEffect(() => {
    if (!open) return;
    round.current += 1;
    const mine = round.current;
    const timer = setTimeout(() => {
      open.check(input).then(
        (findings) => mine === round.current && setFound({ findings, stopped: false }),
        () => mine === round.current && setFound((before) => ({ ...before, stopped: true })),
      );
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [open, input, others]);
  return found;
}
