import { randomUUID } from 'node:crypto';
import type { Mark } from '../../core/music/mark.ts';
import type { Shelf } from '../../core/agreement/wire/http.ts';

/** Somebody of another section who inks marks in without opening a page here. */
export class Neighbour {
  readonly #origin: string;
  readonly #cookie: string;

  private constructor(origin: string, cookie: string) {
    this.#origin = origin;
    this.#cookie = cookie;
  }

  static async #signIn(origin: string, link: string): Promise<string> {
    const answer = await fetch(`${origin}/api/sign-in`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ token: new URL(link).searchParams.get('token') }) });
    if (!answer.ok) throw new Error(`Sign-in: ${answer.status} ${await answer.text()}`);
    return answer.headers.get('set-cookie')!.split(';')[0]!;
  }

  /** Signs in as the principal of a section, with a link from the librarian, whose own link is used up. */
  static async principalOf(section: string, origin: string, librarianLink: string): Promise<Neighbour> {
    const librarian = await Neighbour.#signIn(origin, librarianLink);
    const { sections } = (await (await fetch(`${origin}/api/shelf`, { headers: { cookie: librarian } })).json()) as Shelf;
    const person = sections.find(({ name }) => name === section)!.principal!.id;
    const { link } = (await (await fetch(`${origin}/api/people/${person}/link`, { method: 'POST', headers: { cookie: librarian } })).json()) as { link: string };
    return new Neighbour(origin, await Neighbour.#signIn(origin, link));
  }

  async #operate(part: string, name: string, input: unknown): Promise<void> {
    const answer = await fetch(`${this.#origin}/api/parts/${part}/operations/${name}`, { method: 'POST', headers: { cookie: this.#cookie, 'content-type': 'application/json' }, body: JSON.stringify({ operation: randomUUID(), input }) });
    if (!answer.ok) throw new Error(`${name}: ${answer.status} ${await answer.text()}`);
  }

  /** Proposes marks in a measure and inks them in. */
  async ink(part: string, measure: number, marks: Mark[], why: string): Promise<void> {
    const id = randomUUID();
    await this.#operate(part, 'propose', { id, from: measure, to: measure, seats: 'all', why, marks });
    await this.#operate(part, 'adopt', { proposal: id, revision: 1, why: '' });
  }
}
