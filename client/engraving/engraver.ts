import createVerovioModule from 'verovio/wasm';
import { enableLog, LOG_ERROR, VerovioToolkit } from 'verovio/esm';
import type { EngravedSystem } from './geometry.ts';
import type { Layout, SystemRange } from './messages.ts';
import { readGeometry } from './readGeometry.ts';
import { countRests } from './rests.ts';
import { systemRanges } from './systemRanges.ts';
import { embeddedFont, tidy } from './tidy.ts';

const FIXED = {
  // One system a page: no page is ever high enough for two.
  pageHeight: 100,
  adjustPageHeight: true,
  condense: 'none',
  header: 'none',
  footer: 'none',
  svgViewBox: true,
  svgRemoveXlink: true,
  scale: 100,
  pageMarginLeft: 0,
  pageMarginRight: 0,
  pageMarginTop: 0,
  pageMarginBottom: 0,
  font: 'Leipzig',
  mnumInterval: 0,
  xmlIdSeed: 7,
  svgAdditionalAttribute: ['fing@startid', 'slur@startid'],
  staffLineWidth: 0.2,
  barLineWidth: 0.34,
  stemWidth: 0.24,
  hairpinThickness: 0.26,
  hairpinSize: 2.6,
  dynamDist: 2.4,
  slurMidpointThickness: 0.5,
  slurEndpointThickness: 0.16,
  spacingNonLinear: 0.6,
} as const;

const ready = createVerovioModule().then((module) => {
  enableLog(LOG_ERROR, module);
  return new VerovioToolkit(module);
});

/** The name of the part stands in the running head. */
const withoutNames = (text: string) => text.replace(/<(part-name|part-abbreviation)\b[^>]*>[\s\S]*?<\/\1>/g, '<$1/>');

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
      return { drawing: { ...tidy(svg, (id) => noteIds.has(id)), geometry: readGeometry(svg, spans) }, font: embeddedFont(svg) };
    },
  };
}
