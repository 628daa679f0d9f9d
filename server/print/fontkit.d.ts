declare module 'fontkit' {
  export interface GlyphPath {
    toSVG(): string;
  }
  export interface Glyph {
    id: number;
    path: GlyphPath;
    advanceWidth: number;
  }
  export interface Font {
    unitsPerEm: number;
    layout(text: string): { glyphs: Glyph[]; advanceWidth: number };
    glyphForCodePoint(code: number): Glyph;
    createSubset(): { includeGlyph(glyph: number | Glyph): number; encode(): Uint8Array };
  }
  export function create(bytes: Uint8Array): Font;
}
