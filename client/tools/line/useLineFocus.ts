import { useEffect, type RefObject } from 'react';

/** The line takes the focus as it opens; who came to it by keyboard is back where they were when it closes. */
export function useLineFocus(field: RefObject<HTMLInputElement | null>): void {
  useEffect(() => {
    const before = document.activeElement;
    const back = before instanceof HTMLElement && before.matches(':focus-visible') ? before : null;
    field.current?.focus();
    return () => back?.focus();
  }, [field]);
}
