import { createRequire } from 'node:module';
import type { Verovio, VerovioToolkit } from 'verovio/esm';
import { APPEARANCE, withoutNames } from '../../core/engraving/appearance.ts';
import type { EngravedSystem } from '../../core/engraving/geometry.ts';
import { readGeometry } from '../../core/engraving/readGeometry.ts';
import type { Rested } from '../../core/engraving/rests.ts';
import { withoutStubs } from '../../core/engraving/stubs.ts';
import { systemRanges, type SystemRange } from '../../core/engraving/systemRanges.ts';
import { embeddedFont, tidy } from '../../core/engraving/tidy.ts';

/** Half staff spaces; a system is a page to the engraver, so that we put systems on sheets ourselves. */
const FIXED = { ...APPEARANCE, pageHeight: 100, adjustPageHeight: true } as const;
/** Linear spacing of notes: a little closer than on the stand, as parts are printed. Chosen, not measured. */
const SPACING = 0.44;

/** A last line that fills less than this share of the page is not stretched, as on the stand it is from 0.4. Chosen, not measured. */
const LAST_FILLED = 0.8;

/** A system with its music glyphs by id, to be put once into the page. */
export interface PrintedSystem extends EngravedSystem {
  glyphs: Record<string, string>;
}

export interface EngravedPart {
  systems: readonly SystemRange[];
  draw(system: number): PrintedSystem;
  /** The music face as a woff2 file, once anything was drawn that needs it. */
  musicFace(): Buffer | null;
}

export type Breaking =
  /** All on one line, as wide as its notes want. */
  | 'natural'
  /** Lines as the text says, each as wide as the page. */
  | 'encoded';

let opened: Promise<VerovioToolkit> | undefined;

/**
 * One toolkit a thread: it is some megabytes of program. It is required, not imported: what is imported goes through the loader that reads our
 * types, which takes ten seconds and a gigabyte over a script of seven million letters.
 */
const toolkit = (): Promise<VerovioToolkit> =>
  (opened ??= new Promise((resolve) => {
    const verovio = createRequire(import.meta.url)('verovio') as Verovio;
    verovio.module.onRuntimeInitialized = () => {
      verovio.enableLog(verovio.LOG_ERROR);
      resolve(new verovio.toolkit());
    };
  }));

/** A part's text as MEI, as the engraver writes it. Fails with the engraver's own words where it cannot read the text. */
export async function meiOf(text: string): Promise<string> {
  const engraver = await toolkit();
  engraver.setOptions({ ...FIXED, breaks: 'none' });
  if (!engraver.loadData(text)) throw new Error(engraver.getLog());
  return engraver.getMEI();
}

/** Engraves one part, `width` staff spaces wide. Fails with the engraver's own words where it cannot read the text. */
export async function engrave({ text, spans }: Rested, width: number, breaking: Breaking): Promise<EngravedPart> {
  const engraver = await toolkit();
  const breaks = breaking === 'natural' ? { breaks: 'none', noJustification: true } : { breaks: 'encoded', noJustification: false, minLastJustification: LAST_FILLED };
  engraver.setOptions({ ...FIXED, pageWidth: Math.round(width * 18), spacingLinear: SPACING, ...breaks });
  if (!engraver.loadData(withoutNames(text))) throw new Error(engraver.getLog());
  const noteIds = new Set([...text.matchAll(/<note\b[^>]*\bid="([^"]+)"/g)].map(([, id]) => id!));
  const measures = [...text.matchAll(/<measure\b[^>]*\bid="m(\d+)"/g)].map(([, digits]) => Number(digits));
  let face: string | null = null;
  return {
    systems: systemRanges(measures, spans, engraver.getPageCount(), (ordinal) => engraver.getPageWithElement(`m${ordinal}`)),
    draw(system) {
      const svg = engraver.renderToSVG(system + 1);
      face ??= embeddedFont(svg);
      const { inner, glyphs } = tidy(svg, (id) => noteIds.has(id));
      return { inner: withoutStubs(inner), glyphs, geometry: readGeometry(svg, spans) };
    },
    musicFace: () => (face ? Buffer.from(face, 'base64') : null),
  };
}
