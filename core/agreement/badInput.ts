import type { z } from 'zod';
import { refused } from './refusal.ts';

const FIELDS: Record<string, string> = {
  id: 'its name',
  proposal: 'the proposal it is about',
  answers: 'the comment it answers',
  from: 'the first measure',
  to: 'the last measure',
  measure: 'the measure',
  seats: 'the seats',
  why: 'the sentence of why',
  reason: 'the reason',
  text: 'the words',
  marks: 'the marks',
  mentions: 'the people named',
  note: 'its note',
  value: 'its sign',
  vote: 'the vote',
  stage: 'the stage',
};

function placeOf(path: readonly PropertyKey[]): string {
  const [first, index, ...rest] = path;
  if (first === 'marks' && typeof index === 'number') {
    const field = rest.find((key) => typeof key === 'string');
    return `mark ${index + 1}${field === undefined ? '' : `: ${FIELDS[field] ?? `“${field}”`}`}`;
  }
  return first === undefined ? 'the whole line' : (FIELDS[String(first)] ?? `“${String(first)}”`);
}

function complaint(issue: z.core.$ZodIssue): string {
  const items = 'origin' in issue && (issue.origin === 'array' || issue.origin === 'set');
  const unit = 'origin' in issue && issue.origin === 'string' ? ' characters' : '';
  if (issue.code === 'too_small') return issue.minimum === 1 && (unit || items) ? 'is missing. Write something' : `must be ${issue.minimum} or more${unit}`;
  if (issue.code === 'too_big') return `must be ${issue.maximum} or fewer${unit}. Make it shorter`;
  if (issue.code === 'unrecognized_keys') return `has something unknown (${issue.keys.join(', ')}). Load the page again`;
  if (issue.code === 'invalid_type') return 'is missing or of the wrong kind. Fill it in';
  if (issue.code === 'custom') return issue.message;
  return 'is not one of the things it can be. Choose again';
}

/**
 * The refusal for input of the wrong form: says which field and what to do, for its first fault.
 * Example: an empty `why` gives "the sentence of why is missing. Write something." as `facts.detail`.
 */
export function badInput(error: z.ZodError): ReturnType<typeof refused> {
  const issue = error.issues[0]!;
  const place = placeOf(issue.path);
  const said = /^the (marks|seats|words|people named)$/.test(place) ? complaint(issue).replace(/^is\b/, 'are').replace(/^has\b/, 'have') : complaint(issue);
  return refused('BAD_INPUT', { detail: `${place} ${said}.` });
}
