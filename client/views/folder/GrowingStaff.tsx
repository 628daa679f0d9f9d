import type { ReactNode } from 'react';

/** A bar's width at most, and that of the whole, in staff spaces. */
const BAR = 5.5;
const WHOLE = 88;
const UNIT = 8;

/** A staff with a bar for each step, drawn as far as it is done; `over` lies over the bar that is being worked at, given its middle. Many steps have narrow bars. */
export function GrowingStaff({ done, of, label, over }: { done: number; of: number; label: string; over?(x: number): ReactNode }): ReactNode {
  const bar = Math.min(BAR, WHOLE / of);
  const width = of * bar + 0.8;
  const at = (step: number) => 0.4 + step * bar;
  return (
    <svg className="stage-staff growing-staff" viewBox={`0 -.2 ${width} 4.4`} width={width * UNIT} height={4.4 * UNIT} role="img" aria-label={label}>
      {Array.from({ length: of + 1 }, (_, step) => (
        <path key={step} className={step <= done ? 'bar' : 'yet'} d={step <= done ? `M${at(step)} 0V4` : `M${at(step)} 3.2V4`} />
      ))}
      {done ? <path className="stafflines" d={[0, 1, 2, 3, 4].map((line) => `M.4 ${line}H${at(done)}`).join('')} /> : null}
      <path className="ground" d={`M${at(done)} 4H${at(of)}`} />
      {over?.(at(done) + bar / 2)}
    </svg>
  );
}
