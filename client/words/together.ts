import { count } from './english.ts';

/** The run-through from one open measure to the next. */
export const run = {
  at: (measure: string, at: number, of: number) => `Measure ${measure}, open measure ${at} of ${of}.`,
  leads: (slip: string, plus: number, minus: number) => `${slip} leads, ${plus} for, ${minus} against.`,
  lies: (slip: string, plus: number, minus: number) => `${slip} lies here, ${plus} for, ${minus} against.`,
  inkOrOn: 'Enter inks it in, n goes on.',
  voteOrOn: '+ is for it, − against, n goes on.',
  inked: (slip: string, marks: number) => `${slip} is inked in, ${count(marks, 'mark').toLowerCase()}.`,
  still: (slips: string) => `${slips} still here: a sets aside.`,
  goOn: (left: number) => `n opens the next; ${count(left, 'measure').toLowerCase()} still open.`,
  last: 'No other measure is open.',
  end: (met: number, decided: number, open: number) => `${count(met, 'open measure')} gone through: ${decided} decided, ${open} still open. ${open ? 'n begins again.' : 'The run-through is done.'}`,
};

const INTERVALS = ['at the same pitch', 'a semitone', 'a tone', 'a minor third', 'a major third', 'a fourth', 'a tritone', 'a fifth', 'a minor sixth', 'a major sixth', 'a minor seventh', 'a major seventh', 'an octave'];
const interval = (by: number): string => `${INTERVALS[Math.abs(by)] ?? `${Math.abs(by)} semitones`} ${by > 0 ? 'higher' : 'lower'}`;

/** Marks copied to where the same figure is played again. */
export const elsewhere = {
  title: 'The same figure elsewhere in this part',
  passageFirst: 'Take a passage in hand first: Shift and an arrow. One note alone is no figure.',
  nothingThere: 'Nothing is marked in this passage yet. Mark it here, then the marks can go where it comes again.',
  nowhere: 'This figure is not played anywhere else in this part. A shorter passage may be.',
  likeness: (likeness: string, by: number) => (likeness === 'same' ? 'the same notes' : likeness === 'transposed' ? `the same, ${interval(by)}` : by === 0 ? 'the same steps, other semitones' : `the same steps, ${interval(by)}`),
  stays: (n: number) => `${count(n, 'fingering sign').toLowerCase()} ${n === 1 ? 'stays' : 'stay'} behind: not playable there`,
  stands: 'marked so already',
  lay: (n: number) => (n === 1 ? 'pencil the marks in there' : `pencil the marks in at ${count(n, 'place').toLowerCase()}`),
  noneChosen: 'Every place is left out. Keep one, or leave the list with Esc.',
  laid: (marks: number, places: number) => `${count(marks, 'mark')} pencilled in at ${count(places, 'place').toLowerCase()}. Enter lays them as a slip, z takes them all back.`,
  already: 'The figure is marked so there already.',
  behind: (n: number) => `${count(n, 'fingering sign')} stayed behind: not playable there.`,
};

/** Names in what is said. */
export const named = {
  hint: '@ and a name: that person is told',
  people: 'Who is meant',
};

/** What waits for one. */
export const waits = {
  title: 'What waits for you',
  nothing: 'Nothing waits for you here.',
  nothingAnywhere: 'Nothing waits for you.',
  fetched: 'What waits for you is being looked up.',
  count: (n: number) => (n === 1 ? 'one thing waits for you' : `${n} things wait for you`),
  kinds: { named: 'You are named', vote: 'Your vote', talk: 'Talk on your slips', watch: 'To watch on your seat', decided: 'Decided since you were here' },
  vote: (slip: string, who: string) => `${slip} by ${who} wants your vote.`,
  named: (who: string, where: string, text: string) => `${who}, ${where}: “${text}”`,
  talk: (slip: string, who: string, text: string) => `${who} on your ${slip}: “${text}”`,
  watch: (where: string, text: string) => `${where}: ${text}`,
  adopted: (slip: string, who: string) => `${slip} was inked in by ${who}.`,
  setAside: (slip: string, who: string) => `${slip} was set aside by ${who}.`,
  withdrawn: (slip: string, who: string) => `${slip} was taken back by ${who}.`,
  go: 'Enter goes there, Esc leaves the list.',
  inPart: (work: string, part: string) => `${work}, ${part}`,
};

/** One sentence in the ledge when something happens that concerns one. */
export const notices = {
  named: (who: string, where: string) => `${who} names you, ${where}. Shift n shows what waits for you.`,
  laid: (slip: string, who: string) => `${who} lays ${slip} in a measure you wrote in. Shift n shows what waits for you.`,
  adopted: (slip: string, who: string) => `Your ${slip} is inked in by ${who}.`,
  setAside: (slip: string, who: string) => `Your ${slip} is set aside by ${who}.`,
  on: 'The ledge says when you are named, or something of yours is decided.',
  off: 'The ledge no longer says when something happens. Shift s turns it on again.',
};

/** Letters by e-mail. */
export const letters = {
  title: 'Letters by e-mail',
  what: (minutes: number) => `One letter, at most every ${minutes} minutes, when somebody names you, a slip waits for your vote before a rehearsal, or something of yours is decided. Only you see the address.`,
  none: 'This library sends no letters. The librarian can set that up.',
  address: 'E-mail address',
  keep: 'send me letters',
  forget: 'no more letters',
  kept: (address: string) => `Letters go to ${address}. Each says how to stop them.`,
  forgotten: 'No more letters; the address is forgotten.',
};
