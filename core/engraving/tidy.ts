const KEEP = /^(m\d+)$/;

/** Takes one balanced group out of the engraver's SVG. */
function cutGroup(svg: string, start: number): string {
  const tags = /<(\/?)g\b[^>]*?(\/?)>/g;
  tags.lastIndex = start;
  let depth = 0;
  for (let tag = tags.exec(svg); tag; tag = tags.exec(svg)) {
    if (tag[2]) continue;
    depth += tag[1] ? -1 : 1;
    if (depth === 0) return svg.slice(start, tags.lastIndex);
  }
  return svg.slice(start);
}

function withoutGroups(svg: string, opening: RegExp): string {
  const start = svg.search(opening);
  return start < 0 ? svg : withoutGroups(svg.replace(cutGroup(svg, start), ''), opening);
}

const HEIGHT = /(?: y="|translate\(-?[\d.]+, |points="-?[\d.]+,)(-?[\d.]+)/;
const LINES = /class="staff">(?:<path d="M[^"]*"[^>]*>)+/g;

/** Says of every printed word and dynamic whether it stands above or below the staff, since each gives way to its own side. */
function sideOfStaff(system: string): string {
  const heights = [...system.matchAll(LINES)].flatMap(([lines]) => [...lines.matchAll(/d="M-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y)));
  const middle = (Math.min(...heights) + Math.max(...heights)) / 2;
  return system.replace(/<g( id="[^"]*")? class="(dynam|hairpin|dir|tempo|reh|ending|pedal)([^"]*)"/g, (_, id: string | undefined, name: string, rest: string, at: number) => {
    const y = Number(HEIGHT.exec(system.slice(at, at + 600))?.[1] ?? 0);
    return `<g${id ?? ''} class="${name}${rest} ${y < middle ? 'high' : 'low'}"`;
  });
}

/**
 * The system's group alone, with our ids on notes and measures only, no style of the engraver's own, and glyphs under names
 * that are the same in every system, so that the page holds each once.
 */
export function tidy(svg: string, isNote: (id: string) => boolean): { inner: string; glyphs: Record<string, string> } {
  const glyphs: Record<string, string> = {};
  for (const [, id, body] of svg.matchAll(/<g id="([0-9A-F]{4,5})-\w+">([\s\S]*?)<\/g>/g)) glyphs[`g${id}`] = body!.trim();
  const start = svg.search(/<g [^>]*class="system/);
  const system = start < 0 ? '' : cutGroup(svg, start);
  const inner = withoutGroups(system, /<g [^>]*class="(?:label|labelAbbr|mNum)(?: [^"]*)?"[^>]*(?<!\/)>/)
    .replace(/<g [^>]*class="[^"]*Milestone[^"]*"[^>]*\/>/g, '')
    .replace(/ (?:xml:lang|style)="[^"]*"/g, '')
    .replace(/ id="([^"]*)"/g, (_, id: string) => (isNote(id) || KEEP.test(id) ? ` id="${id}"` : ''))
    .replace(/href="#([0-9A-F]{4,5})-\w+"/g, 'href="#g$1"')
    .replace(/([^<>\s])((?:<\/tspan>\s*)+)(?=<tspan)/g, '$1 $2')
    .replace(/>\s*\n\s*</g, '><');
  return { inner: sideOfStaff(inner), glyphs };
}

/** The music font that the engraver embeds for signs inside texts (a note in a tempo mark), as base64 of a woff2 file. */
export function embeddedFont(svg: string): string | null {
  return /font-woff2;charset=utf-8;base64,([A-Za-z0-9+/=]+)/.exec(svg)?.[1] ?? null;
}
