import { destination, pino } from 'pino';
import { scrub } from './scrub.ts';

export type Level = 'debug' | 'info' | 'warn' | 'error' | 'silent';
export type Fields = Readonly<Record<string, string | number | boolean | null | undefined>>;

/** What whoever runs the server can read afterwards: never a token, a cookie, an address of a person, or what somebody wrote. */
export interface Daybook {
  /** Something is amiss. `context` is what was thrown, if anything. */
  log(line: string, context?: unknown, fields?: Fields): void;
  /** Something happened as it should. */
  event(name: string, fields: Fields): void;
}

export interface DaybookOptions {
  level: Level;
  /** A person reads along: lines instead of JSON. */
  person: boolean;
  write(line: string): void;
}

const LONGEST_STACK = 4000;

/** One JSON line an event; for a person at a terminal a line with its time. */
export function createDaybook({ level, person, write }: DaybookOptions): Daybook {
  const json = pino({ level, base: { pid: process.pid }, timestamp: () => `,"time":"${new Date().toISOString()}"`, formatters: { level: (label) => ({ level: label }) } }, { write: (line: string) => write(scrub(line)) });
  if (!person) {
    return {
      log: (line, context, fields = {}) => json[context === undefined ? 'warn' : 'error']({ ...fields, ...told(context) }, line),
      event: (name, fields) => json.info(fields, name),
    };
  }
  const says = json.isLevelEnabled('error');
  const tells = json.isLevelEnabled('info');
  const line = (text: string, more: object) => write(scrub([new Date().toISOString(), text, ...Object.values(more).map(String)].join(' ')) + '\n');
  return {
    log: (text, context) => says && line(text, told(context)),
    event: (name, fields) => tells && line(name, Object.fromEntries(Object.entries(fields).map(([key, value]) => [key, `${key}=${String(value)}`]))),
  };
}

/** What was thrown, without what somebody had written: the database's client repeats in its message what it was given. */
function told(context: unknown): { error?: string; code?: string; stack?: string } {
  if (context === undefined) return {};
  if (!(context instanceof Error)) return { error: typeof context === 'string' ? context : `Thrown: ${typeof context}` };
  const { name, message, stack = '', code } = context as Error & { code?: unknown };
  const said = /^PrismaClient/.test(name) ? (message.trimEnd().split('\n').at(-1) ?? '') : message;
  const frames = stack.split('\n').filter((line) => /^\s+at /.test(line)).join('\n').slice(0, LONGEST_STACK);
  return { error: `${name}: ${said.slice(0, 500)}`, ...(typeof code === 'string' ? { code } : {}), stack: frames };
}

/** To standard error, where it mixes with nothing that was said to people. */
export function standardDaybook(level: Level | null): Daybook {
  const person = process.stderr.isTTY === true;
  const out = destination({ fd: 2, sync: true });
  return createDaybook({ level: level ?? (person ? 'warn' : 'info'), person, write: (line) => void out.write(line) });
}
