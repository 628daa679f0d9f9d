import { en, type Words } from './en.ts';

/** The words in use. */
export const words: Words = en;
