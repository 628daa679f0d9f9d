import type { CSSProperties, ReactNode } from 'react';
import { words } from '../../words/words.ts';
import type { Desk } from './desk.ts';
import { laidUnder, type OtherLine } from './otherLines.ts';
import { measureName } from './sentence.ts';

/** Room to draw a stretch of another line under this one's, with its measures told. `reach` and `width`: the stretch on this line, and this line, staff spaces. */
export function UnderOther({ desk, reach, width, other, children }: { desk: Desk; reach: { x0: number; x1: number }; width: number; other: OtherLine; children: ReactNode }): ReactNode {
  const { at, scale } = laidUnder(reach, width, other);
  const shifted = { '--sp': `calc(var(--outer) * ${scale.toFixed(4)})`, marginLeft: `calc(var(--outer) * ${(at - other.reach.x0 * scale).toFixed(2)})`, '--x0': other.reach.x0 };
  return (
    <div className="under-other">
      <div style={shifted as CSSProperties}>
        <p>{words.inMeasures(measureName(desk, other.from), measureName(desk, other.to))}</p>
        {children}
      </div>
    </div>
  );
}
