import type { MarkTable } from './markTable.ts';

/** Marks in English. */
export const MARKS_IN_ENGLISH: MarkTable = {
  nothing: {
    finger: 'no finger',
    string: 'no string',
    reach: 'no extension or contraction',
    harmonic: 'no harmonic',
    bow: 'no bow sign',
    change: 'no bow change',
    retake: 'no retake',
    hooked: 'not hooked',
    slur: 'slur as printed',
    text: 'no words',
  },
  finger: (finger) => (finger === 0 ? 'open string' : finger === 'thumb' ? 'thumb' : `finger ${finger}`),
  substitution: (first, then) => `${first}, then ${then} on the same note`,
  string: (numeral) => `string ${numeral}`,
  reach: { extension: 'extension', contraction: 'contraction' },
  harmonic: { natural: 'harmonic', artificial: 'artificial harmonic' },
  bow: { up: 'up-bow', down: 'down-bow' },
  changeAtOnce: 'bow change as the note begins',
  changeAfter: (beats, many) => `bow change ${beats} ${many ? 'beats' : 'beat'} into the note`,
  noChange: (change) => `no ${change}`,
  retake: 'retake',
  hooked: 'hooked',
  slur: { split: 'new slur from this note', join: 'slur goes on to the next note' },
  text: (text) => `“${text}”`,
  everyone: 'the whole section',
  seat: (desk, outside) => `desk ${desk} ${outside ? 'outside' : 'inside'}`,
};
