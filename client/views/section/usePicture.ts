import { useEffect, useState } from 'react';
import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import type { CheckInput } from '../../../core/check/finding.ts';
import type { Checker } from '../../checking/checker.ts';

/** Who bows when, as the marks stand; null until it is known. */
export function usePicture(checker: Checker | null, input: Omit<CheckInput, 'part'>): SectionPassage[] | null {
  const [passages, setPassages] = useState<SectionPassage[] | null>(null);
  useEffect(() => {
    if (!checker) return;
    let current = true;
    checker.picture(input).then(
      (drawn) => current && setPassages(drawn),
      () => current && setPassages([]),
    );
    return () => {
      current = false;
    };
  }, [checker, input]);
  return passages;
}
