import type { Waiting } from '../../core/agreement/waiting/waitsFor.ts';
import type { Correspondent } from '../store/attention.ts';
import type { WaitingPart } from '../waiting/waitingOf.ts';
import { hasPassed } from './hasPassed.ts';
import { LETTER_WORDS } from './letterWords.ts';

export interface Letter {
  to: string;
  subject: string;
  text: string;
  /** Rows it tells of, by part. */
  told: Map<string, number>;
  /** It asks for votes before a rehearsal. */
  reminds: boolean;
}

const HOUR = 3_600_000;
/** Votes are asked for in the last days before a rehearsal, once a day. Chosen, not measured. */
const DAYS_BEFORE = 3;
const ASK_AGAIN = 20 * HOUR;

/** Whether a rehearsal's day is near and not yet over. `now`: milliseconds. */
function isNear(day: string | null, now: number): boolean {
  if (day === null) return false;
  const until = Date.parse(`${day}T23:59:59Z`) - now;
  return until >= 0 && until <= (DAYS_BEFORE + 1) * 24 * HOUR;
}

/** What there is to tell somebody now, as one letter; null where there is nothing. `minutes`: how often a letter may come; `address`: of the library. */
export function letterFor(to: Correspondent, parts: readonly WaitingPart[], now: Date, { minutes, address }: { minutes: number; address: string }): Letter | null {
  const says = LETTER_WORDS[to.language];
  const asks = to.remindedAt === null || hasPassed(ASK_AGAIN, to.remindedAt, now);
  let reminds = false;

  function sentenceOf(one: Waiting, { part, firstRehearsal }: WaitingPart): string | null {
    const name = (ordinal: number) => part.numbers[ordinal] ?? String(ordinal);
    const fresh = one.seq > (to.known.get(part.id) ?? 0);
    if (one.kind === 'named') return fresh ? says.named(one.who, name(one.measure), one.text) : null;
    const slip = `${name(one.from)}${one.letter}`;
    if (one.kind === 'decided') return fresh && one.mine && one.status !== 'withdrawn' ? says[one.status](slip, one.who) : null;
    if (one.kind !== 'vote' || !asks || !isNear(firstRehearsal, now.getTime())) return null;
    reminds = true;
    return says.vote(slip, one.who, new Date(`${firstRehearsal}T12:00:00Z`).toLocaleDateString(to.language === 'en' ? 'en-GB' : to.language, { day: 'numeric', month: 'long', timeZone: 'UTC' }));
  }

  const paragraphs = parts.flatMap((waiting) => {
    const { part } = waiting;
    const lines = part.waits.flatMap((one) => {
      const sentence = sentenceOf(one, waiting);
      return sentence === null ? [] : [`- ${sentence}\n  ${address}/stand/${part.id}?m=${one.measure}`];
    });
    return lines.length ? [{ head: says.part(part.work.title, part.name), lines }] : [];
  });
  const n = paragraphs.reduce((sum, { lines }) => sum + lines.length, 0);
  if (!n) return null;
  const text = [says.greeting(to.name), ...paragraphs.map(({ head, lines }) => [head, ...lines].join('\n')), says.stop(minutes, `${address}/shelf`)].join('\n\n');
  return { to: to.address, subject: says.subject(n), text: `${text}\n`, told: new Map(parts.map(({ part, head }) => [part.id, head])), reminds };
}
