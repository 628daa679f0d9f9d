import type { Trouble } from '../../core/agreement/wire/http.ts';

/** The library could not do what was asked, with the sentence to show. */
export class Refused extends Error {
  readonly trouble: Trouble;
  readonly status: number;
  constructor(trouble: Trouble, status: number) {
    super(trouble.text);
    this.trouble = trouble;
    this.status = status;
  }
}

const NO_LINE: Trouble = { code: 'NO_LINE', text: 'No line to the library. Look whether the network is there, then try again.' };

async function send(path: string, init: RequestInit): Promise<Response> {
  const response = await fetch(`/api${path}`, { credentials: 'same-origin', ...init }).catch(() => {
    throw new Refused(NO_LINE, 0);
  });
  if (response.ok) return response;
  const trouble = (await response.json().catch(() => null)) as Trouble | null;
  throw new Refused(trouble?.text ? trouble : { code: 'NO_WORD', text: `The library did not answer as it should (${response.status}). Try again, or tell the librarian.` }, response.status);
}

export async function getJson<T>(path: string): Promise<T> {
  return (await (await send(path, {})).json()) as T;
}

export async function getText(path: string): Promise<string> {
  return (await send(path, {})).text();
}

export async function sendJson<T>(method: 'POST' | 'PUT', path: string, body: unknown): Promise<T> {
  const response = await send(path, { method, headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
  return (response.status === 204 ? null : await response.json()) as T;
}

export async function remove(path: string): Promise<void> {
  await send(path, { method: 'DELETE' });
}

export async function sendFile<T>(path: string, file: File): Promise<T> {
  const form = new FormData();
  form.append('file', file, file.name);
  return (await (await send(path, { method: 'POST', body: form })).json()) as T;
}

/** The sentence for whatever went wrong, with where in the file it was. */
export function troubleText(fault: unknown): string {
  if (!(fault instanceof Refused)) return fault instanceof Error ? fault.message : String(fault);
  const { text, line, part, measure, element, incident } = fault.trouble;
  const where = [line && `line ${line}`, part && `part ${part}`, measure && `measure ${measure}`, element && `<${element}>`].filter(Boolean).join(', ');
  return [text, where && !text.includes(`line ${line}`) ? `Where: ${where}.` : '', incident && !text.includes(incident) ? `Say to the librarian: ${incident}.` : ''].filter(Boolean).join(' ');
}
