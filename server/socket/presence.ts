import type { ServerMessages } from '../../core/agreement/wire/socket.ts';

export type Present = ServerMessages['present']['people'][number];

/** Who looks at which measure: memory only, told to a part's followers at most a few times a second. */
export interface Presence {
  look(part: string, socket: string, person: Present): void;
  leave(part: string, socket: string): void;
  /** Told again to everybody, for one who has just come. */
  tell(part: string): void;
  /** Another server says who of its people look at a part now. */
  heard(server: string, part: string, people: Present[]): void;
  /** Says again to the other servers who is here, and forgets what a server said that has been silent for long. */
  repeat(): void;
  stop(): void;
}

export interface PresenceOptions {
  /** To the part's followers on this server. */
  send(part: string, people: Present[]): void;
  /** To the other servers: who of our people looks at the part. */
  tellOthers(part: string, people: Present[]): void;
  /** Milliseconds after which a silent server's people are gone. */
  forget: number;
  now?(): number;
}

/** Chosen, not measured. */
const PAUSE = 200;

export function createPresence({ send, tellOthers, forget, now = () => performance.now() }: PresenceOptions): Presence {
  const here = new Map<string, Map<string, Present>>();
  const elsewhere = new Map<string, Map<string, { people: Present[]; at: number }>>();
  const due = new Map<string, { timer: NodeJS.Timeout; ours: boolean }>();

  const oursOn = (part: string): Present[] => [...(here.get(part)?.values() ?? [])];

  function everybody(part: string): Present[] {
    const others = [...(elsewhere.get(part)?.values() ?? [])].flatMap(({ people }) => people);
    // A person with two windows is one person: where they looked last.
    return [...new Map([...others, ...oursOn(part)].map((person) => [person.id, person])).values()];
  }

  /** `ours`: what the other servers know of our people has changed. */
  function soon(part: string, ours: boolean): void {
    const waiting = due.get(part);
    if (waiting) return void (waiting.ours ||= ours);
    const told = { ours, timer: setTimeout(() => {
      due.delete(part);
      send(part, everybody(part));
      if (told.ours) tellOthers(part, oursOn(part));
    }, PAUSE) };
    due.set(part, told);
  }

  function put(part: string, server: string, people: Present[]): void {
    const said = elsewhere.get(part) ?? new Map<string, { people: Present[]; at: number }>();
    if (people.length) elsewhere.set(part, said.set(server, { people, at: now() }));
    else if (said.delete(server) && said.size === 0) elsewhere.delete(part);
  }

  return {
    tell: (part) => soon(part, false),
    look(part, socket, person) {
      const people = here.get(part) ?? new Map<string, Present>();
      people.delete(socket);
      here.set(part, people.set(socket, person));
      soon(part, true);
    },
    leave(part, socket) {
      const people = here.get(part);
      if (!people?.delete(socket)) return;
      if (people.size === 0) here.delete(part);
      soon(part, true);
    },
    heard(server, part, people) {
      const before = JSON.stringify(elsewhere.get(part)?.get(server)?.people ?? []);
      put(part, server, people);
      if (JSON.stringify(people) !== before) soon(part, false);
    },
    repeat() {
      for (const part of here.keys()) tellOthers(part, oursOn(part));
      for (const [part, said] of [...elsewhere]) {
        for (const [server, { at }] of [...said]) {
          if (now() - at < forget) continue;
          put(part, server, []);
          soon(part, false);
        }
      }
    },
    stop() {
      due.forEach(({ timer }) => clearTimeout(timer));
      due.clear();
      for (const part of here.keys()) tellOthers(part, []);
    },
  };
}
