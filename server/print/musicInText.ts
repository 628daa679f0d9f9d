import { create, type Font } from 'fontkit';
import { type Face, isFace, widthOf } from './faces.ts';

/** What the engraver calls its music face inside texts. */
const MUSIC = 'Leipzig';

interface Run {
  text: string;
  size: number;
  music: boolean;
}

/** Pieces of a text with the size each is set in: sizes and the music face stand on the innermost span. */
function runsOf(content: string): Run[] {
  const spans: { size: number; music: boolean }[] = [{ size: 0, music: false }];
  const runs: Run[] = [];
  for (const [, closing, attributes, text] of content.matchAll(/<(\/?)tspan([^>]*)>([^<]*)/g)) {
    const around = spans.at(-1)!;
    if (closing) spans.pop();
    else spans.push({ size: Number(/font-size="([\d.]+)px"/.exec(attributes!)?.[1] ?? around.size), music: attributes!.includes(`"${MUSIC}"`) || around.music });
    if (text?.trim()) runs.push({ text, ...spans.at(-1)! });
  }
  return runs;
}

/** By the face itself, which its reader keeps. */
const opened = new WeakMap<Buffer, Font>();

function musicFont(face: Buffer): Font {
  return opened.get(face) ?? opened.set(face, create(face)).get(face)!;
}

/** A music sign as an outline at (x, y); its em is four staff spaces. */
function outline(font: Font, code: number, x: number, y: number, size: number): { drawn: string; width: number } {
  const glyph = font.glyphForCodePoint(code);
  const scale = size / font.unitsPerEm;
  return { drawn: `<path transform="translate(${x.toFixed(0)} ${y.toFixed(0)}) scale(${scale.toFixed(5)} ${(-scale).toFixed(5)})" d="${glyph.path.toSVG()}"/>`, width: glyph.advanceWidth * scale };
}

/**
 * Music signs inside texts (the note of a metronome mark) as outlines, and the words around them as texts of their own, since a PDF cannot embed
 * the engraver's packed music face. `musicFace`: that face, null where no text has a sign.
 */
export function musicInText(svg: string, musicFace: Buffer | null): string {
  if (!musicFace) return svg;
  const font = musicFont(musicFace);
  return svg.replace(/(<g[^>]* font-family="([^"]+)"[^>]*>\s*)<text x="(-?[\d.]+)" y="(-?[\d.]+)"([^>]*)>((?:(?!<\/text>)[\s\S])*?"Leipzig"[\s\S]*?)<\/text>/g, (_, group: string, family: string, left: string, base: string, own: string, content: string) => {
    const face: Face = isFace(family) ? family : 'Alegreya Sans';
    const runs = runsOf(content);
    const widthOfRun = ({ text, size, music }: Run) => (music ? [...text.trim()].reduce((sum, sign) => sum + outline(font, sign.codePointAt(0)!, 0, 0, size).width, 0) : widthOf(text, face, size));
    const whole = runs.reduce((sum, run) => sum + widthOfRun(run), 0);
    let x = Number(left) - (own.includes('"middle"') ? whole / 2 : own.includes('"end"') ? whole : 0);
    const y = Number(base);
    const pieces = runs.map((run) => {
      const from = x;
      x += widthOfRun(run);
      if (!run.music) return `<text x="${from.toFixed(0)}" y="${base}" font-size="${run.size}" xml:space="preserve">${run.text}</text>`;
      let at = from;
      return [...run.text.trim()].map((sign) => {
        const { drawn, width } = outline(font, sign.codePointAt(0)!, at, y, run.size);
        at += width;
        return drawn;
      }).join('');
    });
    return group + pieces.join('');
  });
}
