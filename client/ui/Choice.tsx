import { Select } from '@base-ui/react/select';
import type { ReactNode } from 'react';

export interface Option {
  value: string;
  word: string;
}

interface Props {
  label: string;
  options: readonly Option[];
  /** What is chosen now; `first` where a form keeps it until it is sent. */
  value?: string;
  first?: string;
  /** Under which a form finds it. */
  name?: string;
  onChoose?(value: string): void;
}

/** One word out of a list that unfolds under its line; letters find an entry, Esc leaves it as it was. */
export function Choice({ label, options, value, first, name, onChoose }: Props): ReactNode {
  return (
    <Select.Root items={options.map((option) => ({ value: option.value, label: option.word }))} value={value} defaultValue={first} name={name} modal={false} onValueChange={(chosen) => onChoose?.(chosen!)}>
      <Select.Label className="choice-label">{label}</Select.Label>
      <Select.Trigger className="choice">
        <Select.Value />
        <Select.Icon className="choice-fold" aria-hidden="true" render={<svg viewBox="0 0 12 8" />}>
          <path d="M1 1.5L6 6.5L11 1.5" />
        </Select.Icon>
      </Select.Trigger>
      <Select.Portal>
        <Select.Positioner className="choice-place" alignItemWithTrigger={false} sideOffset={2} collisionPadding={8}>
          <Select.Popup className="choice-list">
            <Select.List>
              {options.map((option) => (
                <Select.Item key={option.value} value={option.value} className="choice-entry">
                  <Select.ItemText>{option.word}</Select.ItemText>
                </Select.Item>
              ))}
            </Select.List>
          </Select.Popup>
        </Select.Positioner>
      </Select.Portal>
    </Select.Root>
  );
}
