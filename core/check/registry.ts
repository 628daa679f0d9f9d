import outlastsBow from './rules/bow/outlasts-bow.ts';
import sameDirection from './rules/bow/same-direction.ts';
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
import thumb from './rules/fingering/thumb.ts';
import tiedOver from './rules/fingering/tied-over.ts';
import zeroIsOpen from './rules/fingering/zero-is-open.ts';
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
  unisonBowedAgainst,
  unisonSlurredOtherwise,
  sameMusicBowed,
];
