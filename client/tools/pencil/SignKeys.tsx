import { Toolbar } from '@base-ui/react/toolbar';
import type { ReactNode } from 'react';
import type { Stroke } from '../../../core/engraving/marks/figures.ts';
import { SignPicture } from '../../drawing/Pencil.tsx';
import { LedgeKey } from '../../ui/ledgeParts.tsx';
import { words } from '../../words/words.ts';
import type { Command } from '../keys.ts';

type Row = readonly [stroke: Stroke, label: string, cap: string, command: Command];

const finger = (n: 0 | 1 | 2 | 3 | 4): Row => [String(n) as Stroke, words.signs.finger(String(n)), String(n), { do: 'mark', sign: 'finger', finger: n }];
const string = (roman: Stroke, n: 1 | 2 | 3 | 4): Row => [roman, words.signs.string(roman), `Shift ${n}`, { do: 'mark', sign: 'string', string: n }];

const first = (): readonly (readonly Row[])[] => [
  [finger(0), finger(1), finger(2), finger(3), finger(4)],
  [string('I', 1), string('II', 2), string('III', 3), string('IV', 4)],
  [
    ['down', words.signs.down, 'd', { do: 'mark', sign: 'bow', bow: 'down' }],
    ['up', words.signs.up, 'u', { do: 'mark', sign: 'bow', bow: 'up' }],
    ['change', words.signs.change, 'c', { do: 'mark', sign: 'change' }],
    ['extension', words.signs.reach, 'x', { do: 'mark', sign: 'reach' }],
  ],
];

const rest = (): readonly Row[] => [
  ['thumb', words.signs.finger('thumb'), 't', { do: 'mark', sign: 'finger', finger: 'thumb' }],
  ['harmonic', words.signs.harmonic, 'h', { do: 'mark', sign: 'harmonic' }],
  ['retake', words.signs.retake, 'r', { do: 'mark', sign: 'retake' }],
  ['hooked', words.signs.hooked, 'o', { do: 'mark', sign: 'hooked' }],
  ['split', words.signs.split, 'k', { do: 'mark', sign: 'slur', slur: 'split' }],
  ['join', words.signs.join, 'j', { do: 'mark', sign: 'slur', slur: 'join' }],
];

function Written({ word, label, cap, onPress }: { word: string; label: string; cap: string; onPress(): void }): ReactNode {
  return (
    <LedgeKey label={label} cap={cap} onPress={onPress}>
      <span className="written" aria-hidden="true">
        {word}
      </span>
    </LedgeKey>
  );
}

/** Every sign that can be written, on the ledge: the common ones, or with `more` the rest. */
export function SignKeys({ more, onMore, onCommand, substituting }: { more: boolean; onMore(): void; onCommand(command: Command): void; substituting: boolean }): ReactNode {
  const rows = more ? [rest()] : first();
  return (
    <Toolbar.Root className="keys" aria-label={words.signs.label}>
      {rows.map((row, i) => (
        <span key={i} className="key-row">
          {row.map(([stroke, label, cap, command]) => (
            <LedgeKey key={stroke} label={label} cap={cap} onPress={() => onCommand(command)}>
              <SignPicture stroke={stroke} />
            </LedgeKey>
          ))}
        </span>
      ))}
      {more ? (
        <span className="key-row">
          <LedgeKey label={words.signs.substitution} cap="=" pressed={substituting} onPress={() => onCommand({ do: 'substitute' })}>
            <span className="written" aria-hidden="true">
              1–2
            </span>
          </LedgeKey>
          <Written word="abc" label={words.signs.words} cap="/" onPress={() => onCommand({ do: 'words' })} />
          <Written word={words.signs.short.undo} label={words.signs.undo} cap="z" onPress={() => onCommand({ do: 'undo' })} />
          <Written word={words.signs.short.rub} label={words.signs.rub} cap="Bksp" onPress={() => onCommand({ do: 'rub' })} />
        </span>
      ) : null}
      <LedgeKey label={words.signs.more} pressed={more} onPress={onMore}>
        <span className="written" aria-hidden="true">
          {more ? '1 2' : words.signs.short.more}
        </span>
      </LedgeKey>
    </Toolbar.Root>
  );
}
