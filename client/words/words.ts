import { en, type Words } from './en.ts';

/** The words in use: read them where they are shown, so that another language takes hold. */
export let words: Words = en;

/** Another table from now on. */
export function speak(table: Words): void {
  words = table;
}
