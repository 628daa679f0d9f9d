import { parseArgs } from 'node:util';
import { BadInput, type Command } from './command.ts';

export interface Arguments {
  file: string;
  options: Record<string, string>;
}

/** Reads FILE and `--name value` options. Throws BadInput for anything else, with the usage. */
export function readArguments(command: Pick<Command, 'name' | 'usage'>, args: string[], names: readonly string[]): Arguments {
  const usage = `Usage: bowline ${command.name} ${command.usage}`;
  try {
    const { values, positionals } = parseArgs({ args, options: Object.fromEntries(names.map((name) => [name, { type: 'string' as const }])), allowPositionals: true, strict: true });
    const [file, ...more] = positionals;
    if (file === undefined) throw new BadInput('Name the file.', usage);
    if (more.length) throw new BadInput(`One file at a time; "${more[0]}" is one too many.`, usage);
    const options: Record<string, string> = {};
    for (const [name, value] of Object.entries(values)) if (typeof value === 'string') options[name] = value;
    return { file, options };
  } catch (error) {
    if (error instanceof BadInput) throw error;
    if (error instanceof TypeError) throw new BadInput(error.message, usage);
    throw error;
  }
}

/** An option that has to be given. */
export function required(command: Pick<Command, 'name' | 'usage'>, options: Record<string, string>, name: string): string {
  const value = options[name];
  if (value === undefined || value === '') throw new BadInput(`--${name} is missing.`, `Usage: bowline ${command.name} ${command.usage}`);
  return value;
}
