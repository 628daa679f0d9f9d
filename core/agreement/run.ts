import type { z } from 'zod';
import { badInput } from './badInput.ts';
import type { Operation } from './define.ts';
import type { AgreementEvent } from './event.ts';
import type { Actor, Role } from './people.ts';
import { refused, type Decision } from './refusal.ts';
import { isOperationName, OPERATIONS } from './registry.ts';
import type { AgreementState, PartFacts } from './state.ts';

/** An operation as it is asked for: its own id, its name in the registry, and input not yet looked at. */
export interface Request {
  operation: string;
  name: string;
  input: unknown;
}

const WHO: Record<Role, string> = { principal: 'principal', player: 'players', librarian: 'librarian' };

/**
 * What an operation does to `state`: its events, or a refusal. The server runs it before committing, a client to predict.
 * Order of checks: a known name, a role of `actor` among the operation's roles (NOT_YOUR_ROLE), input of the right form (BAD_INPUT
 * says which field), then the operation's own rules. Pure and deterministic; never throws on any input.
 * Example: `run(state, { operation, name: 'lock', input: {} }, librarian, facts)` is `{ ok: true, events: [{ type: 'locked' }] }`.
 */
export function run(state: AgreementState, { name, input }: Request, actor: Actor, facts: PartFacts): Decision<AgreementEvent> {
  if (!isOperationName(name)) return refused('BAD_INPUT', { detail: 'the library does not know what this page asks for. Load the page again.' });
  const operation = OPERATIONS[name] as unknown as Operation<string, z.ZodType>;
  if (!operation.roles.some((role) => actor.roles.includes(role))) return refused('NOT_YOUR_ROLE', { roles: operation.roles.map((role) => WHO[role]).join(' and the ') });
  const parsed = operation.input.safeParse(input);
  return parsed.success ? operation.decide(state, parsed.data, actor, facts) : badInput(parsed.error);
}
