/** Permanent codes of everything the section's rules can refuse. A retired code is never used again. */
export const REFUSALS = {
  NOT_YOUR_ROLE: 'Not written: this is for the {roles} of this section.',
  NOT_YOURS: 'Not written: only {owner} can change this. Make a proposal of your own.',
  NOT_YOUR_COMMENT: 'Not written: only {owner} can call this settled. Answer it instead.',
  UNKNOWN_PROPOSAL: 'Not written: that proposal is not in this part. Load the part again.',
  UNKNOWN_COMMENT: 'Not written: that comment is not in this part. Load the part again.',
  UNKNOWN_NOTE: 'Not written: the part has no such note in measures {from} to {to}. Load the part again.',
  UNKNOWN_MEASURE: 'Not written: measure {measure} is outside this part or this proposal.',
  UNKNOWN_SEAT: 'Not written: the section has no seat {seat}.',
  UNKNOWN_MUTE: 'Not written: that finding is not muted.',
  ALREADY_THERE: 'Not written: that id is taken already.',
  ALREADY_DECIDED: 'Not written: this proposal was {status} before your line arrived.',
  REVISED: 'Not written: the proposal was revised before your line arrived. Look at it again.',
  ALREADY_RESOLVED: 'Not written: the comment is settled already.',
  SAME_SLOT_TWICE: 'Not written: two marks of one kind on the same note of measure {measure}. Keep one of them.',
  NOTHING_TO_CHANGE: 'Not written: nothing would change.',
  LOCKED: 'Not written: the part is locked for printing. Ask the librarian to open it again.',
  OLD_PROGRAM: 'This page is older than the library. Load it again; your unsent marks are kept.',
  BAD_INPUT: 'Not written: {detail}',
  TOO_MUCH: 'Not written: too many lines at once. Wait a moment.',
} as const;

export type RefusalCode = keyof typeof REFUSALS;

export interface Refusal {
  code: RefusalCode;
  /** Values for the text's {names}. */
  facts: Record<string, string>;
}

export type Decision<E> = { ok: true; events: E[] } | { ok: false; refusal: Refusal };

export const refused = (code: RefusalCode, facts: Record<string, string | number> = {}): { ok: false; refusal: Refusal } => ({
  ok: false,
  refusal: { code, facts: Object.fromEntries(Object.entries(facts).map(([key, value]) => [key, String(value)])) },
});

export const accepted = <E>(events: E[]): { ok: true; events: E[] } => ({ ok: true, events });

/** The sentence for a refusal; `texts`: another language's. Example: `refusalText({ code: 'UNKNOWN_SEAT', facts: { seat: '9o' } })`. */
export function refusalText({ code, facts }: Refusal, texts: Readonly<Record<RefusalCode, string>> = REFUSALS): string {
  return texts[code].replace(/\{(\w+)\}/g, (_, name: string) => facts[name] ?? '?');
}
