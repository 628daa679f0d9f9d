import { useLayoutEffect } from 'react';

const quoted = (text: string): string => `"${text.replace(/["\\\n<]/g, ' ')}"`;

/** At the foot of every printed sheet: whose part it is, of what, and the page. A sheet of its own, since the page may hold no style elements. */
export function Sheets({ part, work }: { part: string; work: string }): null {
  useLayoutEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { @bottom-left { padding-left: 8mm; content: ${quoted(`${part} · ${work}`)}; font: 9pt 'Alegreya Sans', sans-serif; } @bottom-right { content: counter(page) ' / ' counter(pages); font: 9pt 'Alegreya Sans', sans-serif; } }`);
    document.adoptedStyleSheets.push(sheet);
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [part, work]);
  return null;
}
