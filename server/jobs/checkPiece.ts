import { deserialize, serialize } from 'node:v8';
import { muteOf } from '../../core/agreement/heard.ts';
import type { Mute } from '../../core/agreement/state.ts';
import type { PieceFinding } from '../../core/agreement/wire/piece.ts';
import type { Finding } from '../../core/check/finding.ts';
import { wholePiece, type PieceVoice } from '../../core/check/wholePiece.ts';
import { measureName } from '../../core/check/words.ts';

/** A part of the piece, and what its section has put to rest. */
export interface PieceOrder extends PieceVoice {
  mutes: Record<string, Mute>;
}

export interface PieceAnswer {
  id: string;
  findings: PieceFinding[];
}

/** A part made ready for the worker: one at a time, so that no whole symphony is copied in one breath. */
export const packed = (order: PieceOrder): Uint8Array => serialize(order);

function told(finding: Finding, { part, mutes }: PieceOrder): PieceFinding {
  const { rule, text, severity, measure, seats } = finding;
  const mute = muteOf(finding, mutes);
  return { rule, text, severity, measure, where: measureName(part.measures[measure - 1]!), seats, rested: mute ? { by: mute.muted.name, reason: mute.reason } : null };
}

/** Reads part after part; `onReading` hears the index of each before it is read. */
export function checkPiece(parts: readonly Uint8Array[], onReading: (part: number) => void): PieceAnswer[] {
  const orders = parts.map((part) => deserialize(part) as PieceOrder);
  const answers: PieceAnswer[] = [];
  const readNext = (): void => {
    if (answers.length < orders.length) onReading(answers.length);
  };
  readNext();
  for (const { id, findings } of wholePiece(orders)) {
    const order = orders[answers.length]!;
    answers.push({ id, findings: findings.map((finding) => told(finding, order)) });
    readNext();
  }
  return answers;
}
