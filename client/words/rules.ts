import type { Severity } from '../../core/check/finding.ts';

const severities: Record<Severity, string> = { cannotPlay: 'cannot be played', collides: 'collides', worthALook: 'worth a look' };
const weights: Record<Severity, string> = {
  cannotPlay: 'Cannot be played as it is marked: pointed out first.',
  collides: 'Two players or two signs get in each other’s way.',
  worthALook: 'Worth a look: a player would want to know. Put it to rest where it is meant.',
};
const families: Record<string, string> = { fingering: 'Fingers', bow: 'The bow', desk: 'At the desk', section: 'The section', parts: 'The part', notation: 'Signs on the page' };

/** Keys of core/SOURCES.md as a reader is told of them. */
const sources: Record<string, string> = {
  'musicxml-4': 'W3C Music Notation Community Group, MusicXML 4.0, 2021',
  davidoff: 'K. Davidoff, Violoncell-Schule, 1888',
  simandl: 'F. Simandl, New Method for the Double Bass; fingers from memory',
  tnua: 'TNUA violin fingering data set: ten professionals, 2021',
  hoffmann: 'R. Hoffmann, Bow length',
  stringsection: 'stringsection.co.uk, on free bowing, 2012',
  zlotbox: 'zlotbox.com, on free bowing',
  green: 'E. Green, Orchestral Bowings and Routines, 1957; from memory',
  thart: 'J. ’t Hart, on when a glide is heard as a glide, 1976; from memory',
  martens: 'F. Martens, Violin Mastery, 1919',
  'common-practice': 'Common practice, no source',
  'from-memory': 'From memory, not checked again',
  chosen: 'Numbers chosen, not measured; a section may set its own',
};

/** Texts of the pages about the rules. */
export const rules = {
  middle: 'what the spectacles look for',
  where: (rules: number) => `${rules} rules. Follow one to read why.`,
  sub: 'Tab and Enter: to a rule',
  one: 'One of the rules.',
  oneSub: 'Where it does not fit your music, put the finding to rest on the stand.',
  weight: 'How much it weighs',
  says: 'What it says',
  source: 'Where it comes from',
  all: 'all rules',
  why: 'more of this rule',
  severities,
  weights,
  families,
  sources,
};
