import { Checkbox } from '@base-ui/react/checkbox';
import type { ReactNode } from 'react';

interface Props {
  children: ReactNode;
  name?: string;
  checked?: boolean;
  /** How it stands at first, where a form keeps it until it is sent. */
  first?: boolean;
  onTurn?(on: boolean): void;
}

/** A word that holds or not: ticked with the pencil. */
export function Tick({ children, name, checked, first, onTurn }: Props): ReactNode {
  return (
    <label className="tick">
      <Checkbox.Root className="tick-mark" name={name} checked={checked} defaultChecked={first} onCheckedChange={onTurn}>
        <Checkbox.Indicator render={<svg viewBox="0 0 16 16" aria-hidden="true" />}>
          <path d="M2 8.5L6.5 13L14.5 1.5" />
        </Checkbox.Indicator>
      </Checkbox.Root>{' '}
      {children}
    </label>
  );
}
