import createVerovioModule from 'verovio/wasm';
import { enableLog, LOG_ERROR, VerovioToolkit } from 'verovio/esm';
import type { FromEngraver, SystemRange, ToEngraver } from './messages.ts';
import { readGeometry } from './readGeometry.ts';
import { embeddedFont, tidy } from './tidy.ts';

const port = globalThis as unknown as { postMessage(message: FromEngraver): void; onmessage: ((event: MessageEvent<ToEngraver>) => void) | null };

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
let noteIds = new Set<string>();

/** The name of the part stands in the running head. */
const withoutNames = (text: string) => text.replace(/<(part-name|part-abbreviation)\b[^>]*>[\s\S]*?<\/\1>/g, '<$1/>');

function ranges(toolkit: VerovioToolkit, text: string): SystemRange[] {
  const systems: SystemRange[] = Array.from({ length: toolkit.getPageCount() }, () => ({ first: 0, last: 0 }));
  for (const ordinal of [...text.matchAll(/<measure\b[^>]*\bid="m(\d+)"/g)].map(([, digits]) => Number(digits))) {
    const system = systems[toolkit.getPageWithElement(`m${ordinal}`) - 1];
    if (!system) continue;
    system.first ||= ordinal;
    system.last = ordinal;
  }
  return systems;
}

async function answer(message: ToEngraver): Promise<FromEngraver> {
  const toolkit = await ready;
  if (message.kind === 'lay') {
    toolkit.setOptions({ ...FIXED, pageWidth: Math.round(message.width * 18), spacingLinear: message.spacing, ...(message.oneLine ? { breaks: 'encoded', minLastJustification: 0 } : { breaks: 'auto', minLastJustification: 0.4 }) });
    if (!toolkit.loadData(withoutNames(message.text))) return { kind: 'failed', job: message.job, why: toolkit.getLog() };
    noteIds = new Set([...message.text.matchAll(/<note\b[^>]*\bid="([^"]+)"/g)].map(([, id]) => id!));
    return { kind: 'laid', job: message.job, systems: ranges(toolkit, message.text) };
  }
  const svg = toolkit.renderToSVG(message.system + 1);
  const drawing = { ...tidy(svg, (id) => noteIds.has(id)), geometry: readGeometry(svg) };
  return { kind: 'drawn', job: message.job, system: message.system, drawing, font: embeddedFont(svg) };
}

port.onmessage = ({ data }) => {
  answer(data)
    .catch((fault: unknown): FromEngraver => ({ kind: 'failed', job: data.job, why: String(fault) }))
    .then((reply) => port.postMessage(reply));
};
