import { checkPart } from '../../core/check/checkPart.ts';
import { sectionPicture } from '../../core/check/sectionPicture.ts';
import { RULES } from '../../core/check/registry.ts';
import type { Part } from '../../core/music/part.ts';
import type { FromChecker, ToChecker } from './messages.ts';

const port = globalThis as unknown as { postMessage(message: FromChecker): void; onmessage: ((event: MessageEvent<ToChecker>) => void) | null };

let part: Part | null = null;

port.postMessage({ kind: 'whys', whys: Object.fromEntries(RULES.map(({ id, why }) => [id, why])) });
port.onmessage = ({ data }) => {
  if (data.kind === 'part') {
    part = data.part;
    return;
  }
  if (!part) return;
  try {
    if (data.kind === 'check') port.postMessage({ kind: 'found', job: data.job, findings: checkPart({ ...data.input, part }) });
    else port.postMessage({ kind: 'drawn', job: data.job, passages: sectionPicture({ ...data.input, part }) });
  } catch (fault) {
    port.postMessage({ kind: 'failed', job: data.job, why: String(fault) });
  }
};
