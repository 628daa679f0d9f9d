import { sectionPicture } from '../../core/check/sectionPicture.ts';
import { RULES } from '../../core/check/registry.ts';
import { standingCheck, type StandingCheck } from '../../core/check/standing/standingCheck.ts';
import { isStringPart, type Part } from '../../core/music/part.ts';
import type { CheckInput, Finding } from '../../core/check/finding.ts';
import type { FromChecker, ToChecker } from './messages.ts';
import { received, type NamedSection } from './othersSent.ts';

const port = globalThis as unknown as { postMessage(message: FromChecker): void; onmessage: ((event: MessageEvent<ToChecker>) => void) | null };

let part: Part | null = null;
let others: readonly NamedSection[] = [];
/** Kept while only marks change. */
let kept: { key: string; check: StandingCheck } | null = null;

function findings(of: Part, { seats, settings, marks }: Omit<CheckInput, 'part'>): Finding[] {
  if (!isStringPart(of)) return [];
  const key = JSON.stringify([seats, settings]);
  if (kept?.key !== key) kept = { key, check: standingCheck({ part: of, seats, settings }) };
  return kept.check.findings(marks, others);
}

port.postMessage({ kind: 'whys', whys: Object.fromEntries(RULES.map(({ id, why }) => [id, why])) });
port.onmessage = ({ data }) => {
  if (data.kind === 'part') {
    [part, kept] = [data.part, null];
    return;
  }
  if (data.kind === 'others') {
    others = received(others, data.others);
    return;
  }
  if (!part) return;
  try {
    if (data.kind === 'check') port.postMessage({ kind: 'found', job: data.job, findings: findings(part, data.input) });
    else port.postMessage({ kind: 'drawn', job: data.job, passages: sectionPicture({ ...data.input, part }) });
  } catch (fault) {
    port.postMessage({ kind: 'failed', job: data.job, why: String(fault) });
  }
};
