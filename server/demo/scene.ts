import { randomUUID } from 'node:crypto';
import type { Authority } from '../operations/authority.ts';
import type { Slip } from './slip.ts';

/** Lets invented people work on one part. A refusal here is a bug: the story is ours. */
export class Scene {
  readonly #authority: Authority;
  readonly #part: string;
  readonly #ids: ReadonlyMap<string, string>;

  /** @param ids name -> person id */
  constructor(authority: Authority, part: string, ids: ReadonlyMap<string, string>) {
    this.#authority = authority;
    this.#part = part;
    this.#ids = ids;
  }

  async #do(name: string, operation: string, input: object): Promise<void> {
    const request = { operation: randomUUID(), name: operation, input };
    const answer = await this.#authority.submit(this.#part, { request, asker: { person: this.#ids.get(name)!, session: null } });
    if (!answer?.ok) throw new Error(`The demo could not be filled: ${operation} of ${name}: ${JSON.stringify(answer)}`);
  }

  async propose(name: string, slip: Slip): Promise<string> {
    const id = randomUUID();
    await this.#do(name, 'propose', { id, ...slip });
    return id;
  }

  async vote(proposal: string, measure: number, names: string[], vote: 'for' | 'against'): Promise<void> {
    for (const name of names) await this.#do(name, 'castVote', { proposal, revision: 1, measure, vote });
  }

  async say(name: string, measure: number, proposal: string | null, text: string, answers: string | null = null): Promise<string> {
    const id = randomUUID();
    await this.#do(name, 'comment', { id, measure, proposal, answers, text });
    return id;
  }

  adopt(name: string, proposal: string, why: string): Promise<void> {
    return this.#do(name, 'adopt', { proposal, revision: 1, why });
  }

  setAside(name: string, proposal: string, why: string): Promise<void> {
    return this.#do(name, 'setAside', { proposal, why });
  }
}
