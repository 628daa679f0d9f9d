import svgpath from 'svgpath';

const USE = /<use\b([^>]*)\bhref="#([^"]+)"([^>]*?)(?:\/>|><\/use>)/g;
const PLACE = /\btransform="translate\((-?[\d.]+),\s*(-?[\d.]+)\)\s*scale\((-?[\d.]+),\s*(-?[\d.]+)\)"/;
const SHAPE = /^<path transform="scale\(1,\s*-1\)" d="([^"]+)"\s*\/>$/;

/**
 * The engraver's drawing with each music sign's outline where it stands, instead of a reference to it that is moved and scaled:
 * to a browser every such reference is a layer of its own to be sorted, thousands on a page. `glyphs`: the outlines by name, in the
 * font's units, y upward. One in another form has its outline inside a group of its own.
 */
export function outlined(inner: string, glyphs: Readonly<Record<string, string>>): string {
  return inner.replace(USE, (_, before: string, name: string, after: string) => {
    const place = PLACE.exec(`${before} ${after}`);
    const shape = SHAPE.exec(glyphs[name] ?? '');
    if (!place || !shape) return `<g ${`${before}${after}`.trim()}>${glyphs[name] ?? ''}</g>`;
    const [x, y, sx, sy] = place.slice(1).map(Number) as [number, number, number, number];
    return `<path class="ink" d="${svgpath(shape[1]!).scale(sx, -sy).translate(x, y).round(0)}"/>`;
  });
}
