import type { Severity } from './finding.ts';
import { RULES } from './registry.ts';

/** What a reader is told of a rule. */
export interface RulePage {
  id: string;
  summary: string;
  why: string;
  /** Keys of core/SOURCES.md. */
  source: readonly string[];
  severity: Severity;
  messages: Readonly<Record<string, string>>;
}

/** All rules as a reader sees them, in the order they run. Example: the first is `fingering/pitch-on-string`. */
export function rulePages(): RulePage[] {
  return RULES.map(({ id, summary, why, source, severity, messages }) => ({ id, summary, why, source, severity, messages }));
}
