import type { Trouble } from '../../core/agreement/wire/http.ts';
import { words } from '../words/words.ts';

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

const early = new Map<string, Promise<Response>>();

/** Asks before anybody is there for the answer: the first who asks the same gets it. */
export function askEarly(path: string): void {
  const answer = fetch(`/api${path}`, { credentials: 'same-origin' });
  answer.catch(() => undefined);
  early.set(path, answer);
}

function takeEarly(path: string): Promise<Response> | undefined {
  const answer = early.get(path);
  early.delete(path);
  return answer;
}

export async function send(path: string, init: RequestInit, asked = fetch(`/api${path}`, { credentials: 'same-origin', ...init })): Promise<Response> {
  const response = await asked.catch(() => {
    throw new Refused({ code: 'NO_LINE', text: words.trouble.noLine }, 0);
  });
  if (response.ok) return response;
  const trouble = (await response.json().catch(() => null)) as Trouble | null;
  throw new Refused(trouble?.text ? trouble : { code: 'NO_WORD', text: words.trouble.noWord(response.status) }, response.status);
}

export async function getJson<T>(path: string): Promise<T> {
  return (await (await send(path, {}, takeEarly(path))).json()) as T;
}

export async function getText(path: string): Promise<string> {
  return (await send(path, {}, takeEarly(path))).text();
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

/** Sends files and is answered as soon as they have come; what they come to is asked for later. */
export async function sendFiles<T>(path: string, files: readonly File[]): Promise<T> {
  const form = new FormData();
  for (const file of files) form.append('file', file, file.name);
  return (await (await send(path, { method: 'POST', headers: { prefer: 'respond-async' }, body: form })).json()) as T;
}

/** The sentence for whatever went wrong, with where in the file it was. */
export function troubleText(fault: unknown): string {
  if (!(fault instanceof Refused)) return fault instanceof Error ? fault.message : String(fault);
  const { text, line, part, measure, element, incident } = fault.trouble;
  const where = [line && words.trouble.line(line), part && words.trouble.part(part), measure && words.trouble.measure(measure), element && `<${element}>`].filter(Boolean).join(', ');
  return [text, where && !text.includes(`line ${line}`) ? words.trouble.where(where) : '', incident && !text.includes(incident) ? words.trouble.say(incident) : ''].filter(Boolean).join(' ');
}
