import outlastsBow from './rules/bow/outlasts-bow.ts';
import pitchOnString from './rules/fingering/pitch-on-string.ts';
import zeroIsOpen from './rules/fingering/zero-is-open.ts';
import type { Rule } from './rule.ts';

/** Every rule of the checker, one line each. */
export const RULES: readonly Rule[] = [
  pitchOnString,
  zeroIsOpen,
  outlastsBow,
];
