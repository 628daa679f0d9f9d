/** What a server answered: JSON as it is; anything else as it came. */
export interface Answer {
  status: number;
  type: string;
  bytes: Buffer;
}

/** Somebody at a running server of any version, by the cookie of their session. */
export interface Guest {
  /** As the browser keeps it, to be shown again years later. */
  cookie(): string;
  ask(path: string): Promise<Answer>;
  /** Null where that version had no such thing; anything else but yes is a fault of the one who wrote the season down. */
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- forms differ from version to version
  say(method: 'POST' | 'PUT' | 'DELETE', path: string, body?: unknown): Promise<any>;
  /** Who was refused is told so; the answer is kept by the server. */
  refused(path: string, body: unknown): Promise<void>;
  upload(path: string, fileName: string, content: string): Promise<void>;
}

const isAbsent = (status: number, text: string): boolean => status === 404 && /no such (page|operation)/.test(text);

export function guestAt(address: string): Guest {
  let cookie = '';
  async function send(method: string, path: string, body?: BodyInit, headers: Record<string, string> = {}): Promise<Response> {
    const reply = await fetch(address + path, { method, headers: { cookie, origin: address, ...headers }, ...(body === undefined ? {} : { body }) });
    const set = reply.headers.get('set-cookie');
    if (set) cookie = set.split(';')[0]!;
    return reply;
  }
  const json = (body: unknown): [BodyInit?, Record<string, string>?] => (body === undefined ? [] : [JSON.stringify(body), { 'content-type': 'application/json' }]);

  return {
    cookie: () => cookie,
    async ask(path) {
      const reply = await send('GET', path);
      return { status: reply.status, type: reply.headers.get('content-type') ?? '', bytes: Buffer.from(await reply.arrayBuffer()) };
    },
    async say(method, path, body) {
      const reply = await send(method, path, ...json(body));
      const text = await reply.text();
      if (reply.ok) return JSON.parse(text);
      if (isAbsent(reply.status, text)) return null;
      throw new Error(`${method} ${path}: ${reply.status} ${text}`);
    },
    async refused(path, body) {
      const reply = await send('POST', path, ...json(body));
      if (reply.status !== 409) throw new Error(`POST ${path}: expected a refusal, ${reply.status} ${await reply.text()}`);
    },
    async upload(path, fileName, content) {
      const form = new FormData();
      form.append('file', new Blob([content]), fileName);
      const reply = await send('POST', path, form);
      if (!reply.ok) throw new Error(`${path}: ${reply.status} ${await reply.text()}`);
    },
  };
}

/** Follows a one-time link. */
export async function comeIn(address: string, link: string): Promise<Guest> {
  const guest = guestAt(address);
  await guest.say('POST', '/api/sign-in', { token: new URL(link).searchParams.get('token') });
  return guest;
}
