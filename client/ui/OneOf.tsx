import { Radio } from '@base-ui/react/radio';
import { RadioGroup } from '@base-ui/react/radio-group';
import type { ReactNode } from 'react';
import type { Option } from './Choice.tsx';

interface Props {
  label: string;
  options: readonly Option[];
  name?: string;
  /** How it stands at first; a form keeps it until it is sent. */
  first: string;
  disabled?: boolean;
}

/** One of a few words that all stand there; arrows walk them. */
export function OneOf({ label, options, name, first, disabled = false }: Props): ReactNode {
  return (
    <RadioGroup aria-label={label} name={name} defaultValue={first} disabled={disabled} className="one-of">
      {options.map(({ value, word }) => (
        <label key={value} className="tick">
          <Radio.Root value={value} className="one-mark">
            <Radio.Indicator className="one-dot" />
          </Radio.Root>{' '}
          {word}
        </label>
      ))}
    </RadioGroup>
  );
}
