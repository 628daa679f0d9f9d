import { Collapsible } from '@base-ui/react/collapsible';
import type { ReactNode } from 'react';

interface Props {
  /** What stands there folded. */
  word: ReactNode;
  children: ReactNode;
  className?: string;
  /** A name for what is folded, in the page's own data. */
  of?: string;
}

/** Something folded under its own line; it is not worked out before it is opened. */
export function Fold({ word, children, className = '', of }: Props): ReactNode {
  return (
    <Collapsible.Root className={`fold ${className}`} data-fold={of}>
      <Collapsible.Trigger className="fold-word">
        <svg viewBox="0 0 8 12" aria-hidden="true">
          <path d="M1 1L7 6L1 11Z" />
        </svg>
        <span>{word}</span>
      </Collapsible.Trigger>
      <Collapsible.Panel className="fold-inside">{children}</Collapsible.Panel>
    </Collapsible.Root>
  );
}
