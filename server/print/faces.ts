import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';

const { resolve } = createRequire(import.meta.url);
const besley = (cut: string) => resolve(`@expo-google-fonts/besley/${cut}/Besley_${cut}.ttf`);
const alegreya = (cut: string) => resolve(`@expo-google-fonts/alegreya-sans/${cut}/AlegreyaSans_${cut}.ttf`);

/** The text faces of a printed page by the name its SVG calls them; each is a family of its own, so that no reader has to guess a weight. */
const FILES = {
  'Besley Regular': besley('400Regular'),
  'Besley Medium': besley('500Medium'),
  'Besley Medium Italic': besley('500Medium_Italic'),
  'Besley Bold': besley('700Bold'),
  'Besley ExtraBold': besley('800ExtraBold'),
  'Alegreya Sans': alegreya('400Regular'),
  'Alegreya Sans Italic': alegreya('400Regular_Italic'),
  'Alegreya Sans Bold': alegreya('700Bold'),
} as const;

export type Face = keyof typeof FILES;

export const FACES = Object.keys(FILES) as Face[];

const read = new Map<Face, Buffer>();
const open = new Map<Face, Font>();

/** The file of a face. */
export const bytesOf = (face: Face): Buffer => read.get(face) ?? read.set(face, readFileSync(FILES[face])).get(face)!;

/** A face, opened. */
export const opened = (face: Face): Font => open.get(face) ?? open.set(face, create(bytesOf(face))).get(face)!;

export const isFace = (name: string): name is Face => name in FILES;

/** Width of a line of text in the unit of `size`. */
export function widthOf(text: string, face: Face, size: number): number {
  const font = opened(face);
  return (font.layout(text).advanceWidth / font.unitsPerEm) * size;
}
