import type { ReactNode } from 'react';
import { STAGES, type Stage } from '../../../core/agreement/state.ts';

const PITCH = 2.5;

/** A small staff that grows bar by bar to its final double bar: how far a part has come. */
export function StageStaff({ stage, label, small = false }: { stage: Stage; label: string; small?: boolean }): ReactNode {
  const reached = STAGES.indexOf(stage);
  const end = 0.4 + reached * PITCH + (reached === 5 ? 1 : 0);
  const unit = small ? 5 : 8;
  return (
    <svg className="stage-staff" viewBox="0 -.2 16 4.4" width={16 * unit} height={4.4 * unit} role="img" aria-label={label}>
      {STAGES.map((name, i) => {
        const x = 0.4 + i * PITCH;
        if (i > reached) return <path key={name} className="yet" d={`M${x} 3.2V4`} />;
        if (i < 5) return <path key={name} className={i === reached ? 'bar last' : 'bar'} d={`M${x} 0V4`} />;
        return <path key={name} className="double" d={`M${x} 0V4`} transform="translate(.75 0)" />;
      })}
      {reached === 5 ? <path className="bar" d={`M${0.4 + 5 * PITCH} 0V4`} /> : null}
      <path className="stafflines" d={[0, 1, 2, 3, 4].map((line) => `M.4 ${line}H${end}`).join('')} />
      <path className="ground" d={`M${end} 4H13.4`} />
    </svg>
  );
}
