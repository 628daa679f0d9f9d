import { count } from './english.ts';

const marks = (n: number): string => count(n, 'mark').toLowerCase();
const slips = (n: number): string => count(n, 'slip').toLowerCase();

/** Marks put by from season to season, and the place where all of them stand. */
export const archive = {
  middle: 'marks put by, season after season',
  link: 'The archive: marks of earlier seasons',
  where: (sets: number) => (sets ? `${count(sets, 'set')} of marks in the archive.` : 'Nothing is put by yet.'),
  sub: 'Esc: back to the shelf',
  none: 'In the Folder, a work’s marks are put by under ensemble, conductor and season. They then stand here, and are offered when the work is laid on the shelf again.',
  under: (season: string, conductor: string, ensemble: string) => `${season}, under ${conductor}, ${ensemble}`,
  keptBy: (who: string, day: string) => `put by ${who}, ${day}`,
  part: (name: string, n: number) => `${name}: ${marks(n)}`,
  all: 'take the whole archive along',
  takeIn: 'take an archive in',
  reading: 'The archive is being read and proved.',
  takenIn: (added: number, known: number) => `${count(added, 'set')} of marks taken in${known ? `; ${known} were here already` : ''}.`,
};

/** What a work brings from earlier seasons, and takes along to later ones. */
export const reuse = {
  title: (work: string) => `${work} from season to season`,
  fetched: 'The archive is being looked through.',
  nothing: 'The archive has no marks for this work.',
  offer: (when: string, conductor: string) => `Bowings from ${when} under ${conductor}`,
  byMusic: (title: string) => `the same music, there called ${title}`,
  asSlips: 'lay them as slips',
  asInk: 'ink them in',
  working: 'The marks are being laid note by note.',
  brought: (part: string, laid: number, inked: number, left: number) =>
    `${part}: ${laid ? `${slips(laid)} laid${inked ? `, ${inked} inked in` : ''}` : 'nothing laid'}${left ? `; ${marks(left)} left out, their music is not here` : ''}.`,
  nothingBrought: 'No part of this work has the same music.',
  putBy: 'Put these marks by',
  ensemble: 'Ensemble',
  conductor: 'Conductor',
  season: 'Season',
  put: 'put by',
  kept: (when: string) => `The marks are put by as ${when}. They will be offered when this work is laid on the shelf again.`,
  travel: (part: string) => `Carry the bows of ${part} to whoever plays the same`,
  travelLook: 'look where it is played',
  travelNone: 'Nobody else plays this music, or all are bowed alike already.',
  passage: (section: string, measures: string, n: number) => `${section}, ${measures}: ${marks(n)}`,
  likeness: { unison: 'the same notes', rhythm: 'the same rhythm' },
  send: (n: number) => (n === 1 ? 'lay the slip with its principal' : `lay ${slips(n)} with their principals`),
  misprints: 'Wrong notes of the edition',
  misprintsNone: 'Nobody has found a wrong note. On the stand, an open measure has a line for it.',
  misprint: (part: string, measure: string, says: string, should: string) => `${part}, ${measure}: says ${says}, should say ${should}`,
  foundBy: (who: string, day: string) => `${who}, ${day}`,
  putRight: 'put right in the edition',
  list: 'the list',
  erase: 'To erase before it goes back',
  earlier: 'Earlier states',
};

/** A wrong note of the edition, written down at its measure. */
export const misprint = {
  title: 'A wrong note in the edition',
  says: 'It says',
  should: 'It should say',
  write: 'write it down',
  written: (measure: string) => `The wrong note in measure ${measure} is on the librarian’s list.`,
};

/** Earlier states of a part, what differs between two, and the way back. */
export const revisions = {
  middle: (work: string) => `${work}, state by state`,
  fetched: 'The states of the part are being fetched.',
  first: 'the part as it came',
  kinds: { inked: 'inked in', restored: 'gone back to earlier marks', stage: 'moved on', edition: 'a corrected edition laid over' },
  in: (measures: string, more: number) => `${more || measures.includes(',') ? 'measures' : 'measure'} ${measures}${more ? ` and ${more} more` : ''}`,
  list: 'All states',
  picture: (n: number) => `${count(n, 'state')} from left to right; the two that are compared stand in brackets.`,
  before: 'before',
  after: 'after',
  choose: (what: string, which: string) => `${what}: ${which}`,
  sum: (changes: number, measures: number) => (changes ? `${count(changes, 'mark')} ${changes === 1 ? 'differs' : 'differ'}, in ${count(measures, 'measure').toLowerCase()}.` : 'Nothing differs.'),
  sub: 'arrows: after · Shift and arrows: before · Ctrl P: change slips on paper · Esc: to the stand',
  none: 'Between these two states no mark differs.',
  added: (what: string, seats: string | null) => `new: ${what}${seats ? `, ${seats}` : ''}`,
  rubbedOut: (what: string, seats: string | null) => `gone: ${what}${seats ? `, ${seats}` : ''}`,
  changed: (before: string, after: string, seats: string | null) => `${after} instead of ${before}${seats ? `, ${seats}` : ''}`,
  back: (state: string) => `Go back to the marks of: ${state}`,
  why: 'Why',
  goBack: 'go back',
  gone: 'These marks stand again. What stood instead is set aside and stays readable.',
  onlyPrincipal: 'Only the principal goes back to earlier marks.',
  print: 'change slips on paper',
  slips: (part: string) => `Change slips for ${part}`,
};
