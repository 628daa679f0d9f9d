import type { ReactNode } from 'react';

/** Two strokes as quotation marks are written: something was said here that one has not read. */
export function TalkSign({ x, y, measure, scale = 1 }: { x: number; y: number; measure: number; scale?: number }): ReactNode {
  return <path className="unread" data-unread={measure} transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${scale})`} d="M.3-.2Q.5.5-.1 1.1M1.2-.2Q1.4.5.8 1.1" />;
}
