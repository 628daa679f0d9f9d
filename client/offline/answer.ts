/** The parts of the browser's caches that the page's keeper uses. */
export interface Keep {
  match(address: string): Promise<Response | undefined>;
  put(address: string, answer: Response): Promise<void>;
}

export interface Surroundings {
  /** What this edition of the page keeps. */
  own: Keep;
  /** What any kept edition has: a window that is still open wants its own files. */
  any(address: string): Promise<Response | undefined>;
  fetch(request: Request): Promise<Response>;
  /** Resolves after `ms`. */
  wait(ms: number): Promise<void>;
}

/** How long a page is waited for before the kept one is shown, in milliseconds. Chosen, not measured. */
const PATIENCE = 3_000;

const PAGE = '/index.html';

/** Files with a name made of their content never change under that name. */
const lasting = (path: string): boolean => path.startsWith('/assets/');

/** What the keeper answers to: pages and files of the page. What the library says is asked for by the page itself. */
export function isOurs(request: Request, origin: string): boolean {
  const { origin: from, pathname } = new URL(request.url);
  return request.method === 'GET' && from === origin && !/^\/(api|socket)\b/.test(pathname);
}

/** A page as the library has it now, else, without a line or where it is slow or in trouble, the kept one. */
async function page(request: Request, { own, fetch, wait }: Surroundings): Promise<Response> {
  const kept = await own.match(PAGE);
  if (!kept) return fetch(request);
  const fresh = fetch(request).then(
    (answer) => (answer.status >= 500 ? kept : answer),
    () => kept,
  );
  return Promise.race([fresh, wait(PATIENCE).then(() => kept)]);
}

/** A file of the page: the kept one where its name says what is in it, and kept from now on where it was not; any other file fresh where there is a line. */
async function file(request: Request, { own, any, fetch }: Surroundings): Promise<Response> {
  const { pathname } = new URL(request.url);
  if (!lasting(pathname)) {
    const kept = await own.match(pathname);
    return fetch(request).catch((fault: unknown) => kept ?? Promise.reject(fault));
  }
  const kept = await any(pathname);
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) await own.put(pathname, answer.clone());
  return answer;
}

export const answerTo = (request: Request, surroundings: Surroundings): Promise<Response> => (request.mode === 'navigate' ? page(request, surroundings) : file(request, surroundings));
