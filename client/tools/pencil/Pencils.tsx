import { Radio } from '@base-ui/react/radio';
import { RadioGroup } from '@base-ui/react/radio-group';
import type { ReactNode } from 'react';
import { words } from '../../words/words.ts';
import type { Held } from './reducer.ts';

function Picture({ held }: { held: Held }): ReactNode {
  const nib = held === 'ink';
  return (
    <svg viewBox="0 0 64 12" aria-hidden="true" className={held}>
      <path className="shaft" d="M2 2H46V10H2Z" />
      <path className="wood" d="M46 2L58 6L46 10Z" />
      <path className="lead" d={`M54 4.6L${nib ? 63 : 60} 6L54 7.4Z`} />
      {nib ? <path className="slit" d="M46 6H56" /> : null}
    </svg>
  );
}

/** The pencils on the ledge, one in hand. */
export function Pencils({ held, all, onHold }: { held: Held; all: readonly Held[]; onHold(held: Held): void }): ReactNode {
  return (
    <RadioGroup className="pencils" aria-label={words.pencils.label} value={held} onValueChange={onHold}>
      {all.map((one) => (
        <Radio.Root key={one} value={one} nativeButton render={<button type="button" />} onMouseDown={(event) => event.preventDefault()}>
          <Picture held={one} />
          {words.pencils[one]}
        </Radio.Root>
      ))}
    </RadioGroup>
  );
}
