import type { MouseEvent, ReactNode } from 'react';
import { addressOf, go, type Place } from '../router.ts';

/** A link to a place; it opens here, or in a tab of its own where the reader asks the browser for one. */
export function PlaceLink({ to, children, ...rest }: { to: Place; children: ReactNode; className?: string; 'aria-label'?: string }): ReactNode {
  const follow = (event: MouseEvent) => {
    if (event.metaKey || event.ctrlKey || event.shiftKey) return;
    event.preventDefault();
    event.stopPropagation();
    go(to);
  };
  return (
    <a href={addressOf(to)} onClick={follow} {...rest}>
      {children}
    </a>
  );
}
