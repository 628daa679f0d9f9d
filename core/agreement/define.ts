import type { z } from 'zod';
import type { AgreementEvent } from './event.ts';
import type { Actor, Role } from './people.ts';
import type { Decision } from './refusal.ts';
import type { AgreementState, PartFacts } from './state.ts';

/** An operation: its input, who may ask for it, and the pure decision. */
export interface Operation<Name extends string = string, Input extends z.ZodType = z.ZodType> {
  name: Name;
  /** One sentence for the generated description of the HTTP face. */
  summary: string;
  input: Input;
  roles: readonly Role[];
  /** Same state, input, actor and facts give the same decision. */
  decide(state: AgreementState, input: z.infer<Input>, by: Actor, facts: PartFacts): Decision<AgreementEvent>;
}

/** Keeps the types of one operation together. See DEVELOPERS.md, "Add an operation". */
export function defineOperation<const Name extends string, Input extends z.ZodType>(operation: Operation<Name, Input>): Operation<Name, Input> {
  return operation;
}
