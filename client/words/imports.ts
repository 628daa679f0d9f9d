import { count } from './english.ts';

/** Scores on their way into a folder. */
export const imports = {
  title: 'On the way into the folder',
  files: (n: number) => `${n} files`,
  sending: (name: string) => `Sending ${name} to the library.`,
  turn: (name: string) => `${name}: waits for its turn.`,
  unpacking: (name: string) => `${name} is being unpacked.`,
  placing: (name: string) => `${name}: the parts are laid out for the sections.`,
  aligning: (name: string) => `${name} is laid beside the old score, so that marks stay on their notes.`,
  keeping: (name: string) => `${name} is put in the folder.`,
  picture: (done: number, of: number) => `${count(done, 'step')} of ${of} done`,
  stop: 'Stop',
  putAway: 'Put away',
  stopped: (name: string) => `${name}: stopped. Nothing of it was kept.`,
  add: 'add parts to this work',
  added: (title: string, parts: number) => `${title} has ${count(parts, 'part').toLowerCase()} now.`,
  oneOrMany: (n: number) => `${count(n, 'file')}: are they one work (its movements or its parts), or is each a work of its own?`,
  oneWork: 'one work',
  works: (n: number) => `${count(n, 'work').toLowerCase()}`,
  none: 'leave it',
  noneOf: (n: number) => `None of the ${n} files was laid in the folder, because not all of them can be read.`,
  wouldLie: (parts: readonly string[]) => (parts.length ? `could be read: ${parts.join(', ')}` : 'was not read'),
};
