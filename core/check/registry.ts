import changeInTremolo from './rules/bow/change-in-tremolo.ts';
import changePastNote from './rules/bow/change-past-note.ts';
import chordUp from './rules/bow/chord-up.ts';
import hookApart from './rules/bow/hook-apart.ts';
import outlastsBow from './rules/bow/outlasts-bow.ts';
import plucked from './rules/bow/plucked.ts';
import retakeInTime from './rules/bow/retake-in-time.ts';
import sameDirection from './rules/bow/same-direction.ts';
import openBesideStopped from './rules/desk/open-beside-stopped.ts';
import partnersBowedApart from './rules/desk/partners-bowed-apart.ts';
import sameMusicBowed from './rules/bow/same-music.ts';
import partnersChangeTogether from './rules/desk/partners-change-together.ts';
import partnersShiftTogether from './rules/desk/partners-shift-together.ts';
import exposedSlide from './rules/fingering/exposed-slide.ts';
import handOrder from './rules/fingering/hand-order.ts';
import harmonicNode from './rules/fingering/harmonic-node.ts';
import oneHand from './rules/fingering/one-hand.ts';
import openStrings from './rules/fingering/open-strings.ts';
import pitchOnString from './rules/fingering/pitch-on-string.ts';
import reach from './rules/fingering/reach.ts';
import sameMusic from './rules/fingering/same-music.ts';
import shiftInTime from './rules/fingering/shift-in-time.ts';
import substitution from './rules/fingering/substitution.ts';
import thumb from './rules/fingering/thumb.ts';
import tiedOver from './rules/fingering/tied-over.ts';
import trillFinger from './rules/fingering/trill-finger.ts';
import zeroIsOpen from './rules/fingering/zero-is-open.ts';
import bothBowsPrinted from './rules/notation/both-bows-printed.ts';
import bowInsideSlur from './rules/notation/bow-inside-slur.ts';
import markOnUnplayed from './rules/notation/mark-on-unplayed.ts';
import marksDisagree from './rules/notation/marks-disagree.ts';
import retakeInsideSlur from './rules/notation/retake-inside-slur.ts';
import slurMarkNowhere from './rules/notation/slur-mark-nowhere.ts';
import stringWords from './rules/notation/string-words.ts';
import dividedBowedAgainst from './rules/parts/divided-bowed-against.ts';
import muteInTime from './rules/parts/mute-in-time.ts';
import pizzInTime from './rules/parts/pizz-in-time.ts';
import arrivesApart from './rules/section/arrives-apart.ts';
import sectionBowedApart from './rules/section/bowed-apart.ts';
import changeOnBarline from './rules/section/change-on-barline.ts';
import tooManyAtOnce from './rules/section/too-many-at-once.ts';
import unisonBowedAgainst from './rules/section/unison-bowed-against.ts';
import unisonSlurredOtherwise from './rules/section/unison-slurred-otherwise.ts';
import type { Rule } from './rule.ts';

/** Every rule of the checker, one line each. */
export const RULES: readonly Rule[] = [
  pitchOnString,
  zeroIsOpen,
  thumb,
  oneHand,
  harmonicNode,
  reach,
  shiftInTime,
  handOrder,
  exposedSlide,
  sameMusic,
  openStrings,
  tiedOver,
  sameDirection,
  outlastsBow,
  partnersChangeTogether,
  partnersShiftTogether,
  tooManyAtOnce,
  changeOnBarline,
  marksDisagree,
  retakeInsideSlur,
  slurMarkNowhere,
  plucked,
  changePastNote,
  changeInTremolo,
  retakeInTime,
  hookApart,
  chordUp,
  bowInsideSlur,
  markOnUnplayed,
  bothBowsPrinted,
  stringWords,
  pizzInTime,
  muteInTime,
  dividedBowedAgainst,
  partnersBowedApart,
  sectionBowedApart,
  openBesideStopped,
  substitution,
  trillFinger,
  arrivesApart,
  unisonBowedAgainst,
  unisonSlurredOtherwise,
  sameMusicBowed,
];
