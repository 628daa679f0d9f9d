import { memo, type ReactNode } from 'react';

/** The engraver's music signs, once in the page for all systems. */
export const Glyphs = memo(function Glyphs({ glyphs }: { glyphs: Readonly<Record<string, string>> }): ReactNode {
  return (
    <svg width="0" height="0" className="glyphs" aria-hidden="true">
      <defs>
        {Object.entries(glyphs).map(([id, shape]) => (
          <g key={id} id={id} dangerouslySetInnerHTML={{ __html: shape }} />
        ))}
      </defs>
    </svg>
  );
});
