import type { ReactNode } from 'react';

/** Five lines at their true size, until the notes arrive. */
export function EmptyStaff({ width, words }: { width: number; words?: string }): ReactNode {
  return (
    <svg className="music empty" viewBox={`0 -6.2 ${width} 15.8`} style={{ width: `calc(${width} * var(--sp))`, height: 'calc(15.8 * var(--sp))' }} aria-hidden={words ? undefined : true}>
      <path className="stafflines" d={[0, 1, 2, 3, 4].map((line) => `M0 ${line}H${width}`).join('')} />
      {words ? (
        <text className="invitation" x={width / 2} y="2.9" textAnchor="middle">
          {words}
        </text>
      ) : null}
    </svg>
  );
}
