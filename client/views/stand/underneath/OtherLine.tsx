import { memo, type ReactNode } from 'react';
import type { ShownMark } from '../../../../core/engraving/marks/placeMarks.ts';
import type { EngravedSystem } from '../../../../core/engraving/geometry.ts';
import { words } from '../../../words/words.ts';
import { PaperSystem } from '../paper/PaperSystem.tsx';
import { sameProps } from '../sameProps.ts';

/** The same measures of another part, smaller, under mine. */
export const OtherLine = memo(function OtherLine({ name, drawing, marks }: { name: string; drawing: EngravedSystem | null; marks: readonly ShownMark[] }): ReactNode {
  return (
    <div className="other-line" role="group" aria-label={name}>
      <span>{drawing ? name : words.view.comes(name)}</span>
      {drawing ? <PaperSystem drawing={drawing} number="" marks={marks} /> : null}
    </div>
  );
}, sameProps);
