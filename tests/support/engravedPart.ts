import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { createElement, type ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import { layOut } from '../../client/engraving/engraver.ts';
import type { EngravedSystem } from '../../core/engraving/geometry.ts';
import { PaperSystem } from '../../client/views/stand/paper/PaperSystem.tsx';
import type { Part } from '../../core/music/part.ts';
import { engravingDocument } from '../../core/musicxml/engravingDocument.ts';

const require = createRequire(import.meta.url);
const STYLES = join(import.meta.dirname, '../../client/ui/styles');
const FACES = ['@fontsource-variable/besley/wght.css', '@fontsource-variable/besley/wght-italic.css', '@fontsource/alegreya-sans/400.css', '@fontsource/alegreya-sans/400-italic.css', '@fontsource/alegreya-sans/500.css', '@fontsource/alegreya-sans/700.css'];

/** A face with its files inside, so that a page without a server has it. */
function faceText(name: string): string {
  const path = require.resolve(name);
  return readFileSync(path, 'utf8').replace(/url\(\.\/files\/([^)]+\.woff2)\)/g, (_, file: string) => `url(data:font/woff2;base64,${readFileSync(join(dirname(path), 'files', file)).toString('base64')})`);
}

let styles: string | undefined;
const stylesText = (): string => (styles ??= [...FACES.map(faceText), ...['tokens', 'page', 'music', 'stand'].map((name) => readFileSync(join(STYLES, `${name}.css`), 'utf8'))].join('\n'));

/** A part of a score engraved as on the stand, 100 staff spaces wide, without a browser. */
export async function engravePart(text: string, part: Part, width = 100): Promise<EngravedSystem[]> {
  const made = engravingDocument(text, part.id, part);
  if (!made.ok) throw new Error(made.fault.text);
  const laid = await layOut({ text: made.text, width, spacing: 0.5, oneLine: false });
  return laid.systems.map((_, i) => laid.draw(i).drawing);
}

/** The engraved systems with marks over them, as a page of its own. */
export function pageOf(systems: readonly EngravedSystem[], marks: readonly ShownMark[]): string {
  const rows: ReactNode[] = systems.map((drawing, i) =>
    createElement('div', { key: i, className: 'row', 'data-system': i }, createElement(PaperSystem, { drawing, number: '', marks: marks.filter(({ note }) => note in drawing.geometry.notes) })));
  return `<!doctype html><html data-light="day"><head><style>${stylesText()}
body { overflow: visible; } #root { display: block; padding: 24px 60px; } .row { width: 1000px; } .row svg { width: 100%; height: auto; }</style></head><body><div id="root">${renderToStaticMarkup(createElement('main', null, ...rows))}</div></body></html>`;
}
