import type { ReactNode } from 'react';

/** The running head: what lies here, of what, and who is here. */
export function Head({ left, middle, right }: { left: ReactNode; middle: ReactNode; right?: ReactNode }): ReactNode {
  return (
    <header className="head">
      <h1>{left}</h1>
      <i>{middle}</i>
      <span>{right}</span>
    </header>
  );
}
