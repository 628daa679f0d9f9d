import { parseArgs } from 'node:util';
import { BadInput, type Command } from './command.ts';

export interface Arguments {
  file: string;
  options: Record<string, string>;
}

function parsed(command: Pick<Command, 'name' | 'usage'>, args: string[], names: readonly string[]): { positionals: string[]; options: Record<string, string> } {
  try {
    const { values, positionals } = parseArgs({ args, options: Object.fromEntries(names.map((name) => [name, { type: 'string' as const }])), allowPositionals: true, strict: true });
    return { positionals, options: Object.fromEntries(Object.entries(values).filter((entry): entry is [string, string] => typeof entry[1] === 'string')) };
  } catch (error) {
    if (error instanceof TypeError) throw new BadInput(error.message, usageOf(command));
    throw error;
  }
}

const usageOf = ({ name, usage }: Pick<Command, 'name' | 'usage'>): string => `Usage: bowline ${name} ${usage}`;

/** Reads FILE and `--name value` options. Throws BadInput for anything else, with the usage. */
export function readArguments(command: Pick<Command, 'name' | 'usage'>, args: string[], names: readonly string[]): Arguments {
  const { positionals, options } = parsed(command, args, names);
  const [file, ...more] = positionals;
  if (file === undefined) throw new BadInput('Name the file.', usageOf(command));
  if (more.length) throw new BadInput(`One file at a time; "${more[0]}" is one too many.`, usageOf(command));
  return { file, options };
}

/** The same for a command that is told what to do by words. */
export function readWords(command: Pick<Command, 'name' | 'usage'>, args: string[], names: readonly string[]): { words: string[]; options: Record<string, string> } {
  const { positionals, options } = parsed(command, args, names);
  return { words: positionals, options };
}

/** The same for a command that reads two files. */
export function readTwoFiles(command: Pick<Command, 'name' | 'usage'>, args: string[], names: readonly string[]): { files: [string, string]; options: Record<string, string> } {
  const { positionals, options } = parsed(command, args, names);
  const [first, second, ...more] = positionals;
  if (first === undefined || second === undefined || more.length) throw new BadInput('Name two files, the old edition and the new one.', usageOf(command));
  return { files: [first, second], options };
}

/** An option that has to be given. */
export function required(command: Pick<Command, 'name' | 'usage'>, options: Record<string, string>, name: string): string {
  const value = options[name];
  if (value === undefined || value === '') throw new BadInput(`--${name} is missing.`, usageOf(command));
  return value;
}
