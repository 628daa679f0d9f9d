import type { ReactNode } from 'react';

const BAR = 5.5;
const UNIT = 8;

/** A staff with a bar for each step, drawn as far as it is done; `over` lies over the bar that is being worked at, given its middle. */
export function GrowingStaff({ done, of, label, over }: { done: number; of: number; label: string; over?(x: number): ReactNode }): ReactNode {
  const width = of * BAR + 0.8;
  const at = (step: number) => 0.4 + step * BAR;
  return (
    <svg className="stage-staff growing-staff" viewBox={`0 -.2 ${width} 4.4`} width={width * UNIT} height={4.4 * UNIT} role="img" aria-label={label}>
      {Array.from({ length: of + 1 }, (_, step) => (
        <path key={step} className={step <= done ? 'bar' : 'yet'} d={step <= done ? `M${at(step)} 0V4` : `M${at(step)} 3.2V4`} />
      ))}
      {done ? <path className="stafflines" d={[0, 1, 2, 3, 4].map((line) => `M.4 ${line}H${at(done)}`).join('')} /> : null}
      <path className="ground" d={`M${at(done)} 4H${at(of)}`} />
      {over?.(at(done) + BAR / 2)}
    </svg>
  );
}
