import type { ReactNode } from 'react';

const quoted = (text: string): string => `"${text.replace(/["\\\n<]/g, ' ')}"`;

/** At the foot of every printed sheet: whose part it is, of what, and the page. */
export function Sheets({ part, work }: { part: string; work: string }): ReactNode {
  return <style>{`@page { @bottom-left { padding-left: 8mm; content: ${quoted(`${part} · ${work}`)}; font: 9pt 'Alegreya Sans', sans-serif; } @bottom-right { content: counter(page) ' / ' counter(pages); font: 9pt 'Alegreya Sans', sans-serif; } }`}</style>;
}
