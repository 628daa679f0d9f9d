import { words } from '../../words/words.ts';
import { COMMANDS, GROUPS, type CommandRow, type LineName } from '../keys.ts';

export interface SheetRow {
  name: string;
  /** As printed on the keys, modifiers once: "Shift 1 2 3 4". */
  caps: string;
  says: string;
}

const named = (key: string): string => (words.keys.caps as Readonly<Record<string, string>>)[key] ?? (key === '-' ? '−' : key);
const parts = (pressed: string): [string, string] => {
  const [, modifiers = '', key = ''] = /^((?:\w+\+)*)(.+)$/.exec(pressed) ?? [];
  return [modifiers.split('+').filter(Boolean).map(named).join(' '), named(key)];
};

/** Keys as they are printed. Keys with the same modifiers share them. Example: `capsOf(['Shift+1', 'Shift+2'])` is "Shift 1 2". */
export function capsOf(keys: readonly string[]): string {
  const byModifiers = new Map<string, string[]>();
  for (const [modifiers, key] of keys.map(parts)) {
    const before = byModifiers.get(modifiers) ?? [];
    if (!before.includes(key)) byModifiers.set(modifiers, [...before, key]);
  }
  return [...byModifiers].map(([modifiers, found]) => [modifiers, ...found].filter(Boolean).join(' ')).join(', ');
}

const lineOf = (row: CommandRow): LineName | null => ('line' in row ? row.line : null);

/** Every key there is, group by group: what is printed on the sheet. */
export function sheetOf(): { title: string; rows: SheetRow[] }[] {
  return GROUPS.map((group) => {
    const inGroup = COMMANDS.filter((row) => row.group === group);
    const heads = inGroup.filter((row, i) => lineOf(row) === null || inGroup.findIndex((other) => lineOf(other) === lineOf(row)) === i);
    const rows = heads.map((head): SheetRow => {
      const line = lineOf(head);
      const members = line === null ? [head] : inGroup.filter((other) => lineOf(other) === line);
      return { name: line ?? head.name, caps: capsOf(members.flatMap(({ keys }) => [...keys])), says: line === null ? words.keys.says[head.name] : words.keys.lines[line] };
    });
    return { title: words.keys.groups[group], rows };
  });
}
