import createVerovioModule from 'verovio/wasm';
import { enableLog, LOG_ERROR, VerovioToolkit } from 'verovio/esm';
import { APPEARANCE, withoutNames } from '../../core/engraving/appearance.ts';
import type { EngravedSystem } from '../../core/engraving/geometry.ts';
import type { Layout } from './messages.ts';
import { outlined } from './outlines.ts';
import { readGeometry } from '../../core/engraving/readGeometry.ts';
import { countRests } from '../../core/engraving/rests.ts';
import { systemRanges, type SystemRange } from '../../core/engraving/systemRanges.ts';
import { embeddedFont, tidy } from '../../core/engraving/tidy.ts';

const FIXED = {
  ...APPEARANCE,
  // One system a page: no page is ever high enough for two.
  pageHeight: 100,
  adjustPageHeight: true,
} as const;

const ready = createVerovioModule().then((module) => {
  enableLog(LOG_ERROR, module);
  return new VerovioToolkit(module);
});

/** A part laid out by the engraving library. */
export interface LaidOut {
  systems: SystemRange[];
  draw(system: number): { drawing: EngravedSystem; font: string | null };
}

/** Lays out a text. Fails with the library's own words where it cannot be read. */
export async function layOut({ text: given, width, spacing, oneLine }: Layout): Promise<LaidOut> {
  const toolkit = await ready;
  const { text, spans } = oneLine ? { text: given, spans: new Map<number, number>() } : countRests(given);
  toolkit.setOptions({ ...FIXED, pageWidth: Math.round(width * 18), spacingLinear: spacing, ...(oneLine ? { breaks: 'encoded', minLastJustification: 0 } : { breaks: 'auto', minLastJustification: 0.4 }) });
  if (!toolkit.loadData(withoutNames(text))) throw new Error(toolkit.getLog());
  const noteIds = new Set([...text.matchAll(/<note\b[^>]*\bid="([^"]+)"/g)].map(([, id]) => id!));
  const measures = [...text.matchAll(/<measure\b[^>]*\bid="m(\d+)"/g)].map(([, digits]) => Number(digits));
  return {
    systems: systemRanges(measures, spans, toolkit.getPageCount(), (ordinal) => toolkit.getPageWithElement(`m${ordinal}`)),
    draw(system) {
      const svg = toolkit.renderToSVG(system + 1);
      const { inner, glyphs } = tidy(svg, (id) => noteIds.has(id));
      return { drawing: { inner: outlined(inner, glyphs), geometry: readGeometry(svg, spans) }, font: embeddedFont(svg) };
    },
  };
}
