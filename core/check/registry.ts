import outlastsBow from './rules/bow/outlasts-bow.ts';
import sameDirection from './rules/bow/same-direction.ts';
import partnersChangeTogether from './rules/desk/partners-change-together.ts';
import partnersShiftTogether from './rules/desk/partners-shift-together.ts';
import pitchOnString from './rules/fingering/pitch-on-string.ts';
import zeroIsOpen from './rules/fingering/zero-is-open.ts';
import changeOnBarline from './rules/section/change-on-barline.ts';
import tooManyAtOnce from './rules/section/too-many-at-once.ts';
import type { Rule } from './rule.ts';

/** Every rule of the checker, one line each. */
export const RULES: readonly Rule[] = [
  pitchOnString,
  zeroIsOpen,
  sameDirection,
  outlastsBow,
  partnersChangeTogether,
  partnersShiftTogether,
  tooManyAtOnce,
  changeOnBarline,
];
