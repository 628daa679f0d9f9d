import type { BrowserContext, Page } from 'playwright-core';
import type { PartView, Shelf, WorkView } from '../../core/agreement/wire/http.ts';

/** Asks the library beside the screens, with the same sign-in, to know what should be on them. */
export class Reader {
  readonly #context: BrowserContext;
  readonly #origin: string;

  constructor(context: BrowserContext, origin: string) {
    this.#context = context;
    this.#origin = origin;
  }

  async #get(path: string): Promise<string> {
    const answer = await this.#context.request.get(`${this.#origin}/api${path}`);
    if (!answer.ok()) throw new Error(`${path}: ${answer.status()} ${await answer.text()}`);
    return answer.text();
  }

  async shelf(): Promise<Shelf> {
    return JSON.parse(await this.#get('/shelf')) as Shelf;
  }

  async work(title: string): Promise<WorkView> {
    const works = (await this.shelf()).programmes.flatMap((programme) => programme.works);
    const found = works.find((work) => work.title.startsWith(title));
    if (!found) throw new Error(`No ${title} on the shelf: ${works.map((work) => work.title).join(', ')}`);
    return found;
  }

  async part(id: string): Promise<PartView> {
    return JSON.parse(await this.#get(`/parts/${id}`)) as PartView;
  }

  /** A new sign-in link for somebody; only the librarian is given one. */
  async linkFor(person: string): Promise<string> {
    const answer = await this.#context.request.post(`${this.#origin}/api/people/${person}/link`, { headers: { origin: this.#origin } });
    if (!answer.ok()) throw new Error(`link: ${answer.status()} ${await answer.text()}`);
    return ((await answer.json()) as { link: string }).link;
  }

  text(path: string): Promise<string> {
    return this.#get(path);
  }
}

/** Opens a one-time link and waits until one is in. */
export async function signIn(page: Page, link: string): Promise<void> {
  await page.goto(link);
  await page.waitForURL((url) => url.pathname !== '/sign-in');
}
