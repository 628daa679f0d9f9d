import { createRequire } from 'node:module';

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

export const MUSIC_FACE = 'Leipzig';

export const FACES = Object.keys(FILES) as Face[];

/** Where the file of a face lies. */
export const fileOf = (face: Face): string => FILES[face];
