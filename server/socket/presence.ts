import type { ServerMessages } from '../../core/agreement/wire/socket.ts';

type Person = ServerMessages['present']['people'][number];

/** Who looks at which measure: memory only, told to a part's followers at most a few times a second. */
export interface Presence {
  look(part: string, socket: string, person: Person): void;
  leave(part: string, socket: string): void;
  /** Told again to everybody, for one who has just come. */
  tell(part: string): void;
  stop(): void;
}

/** Chosen, not measured. */
const PAUSE = 200;

export function createPresence(send: (part: string, people: Person[]) => void): Presence {
  const looking = new Map<string, Map<string, Person>>();
  const due = new Map<string, NodeJS.Timeout>();

  function tell(part: string): void {
    if (due.has(part)) return;
    const timer = setTimeout(() => {
      due.delete(part);
      // A person with two windows is one person: where they looked last.
      const people = new Map([...(looking.get(part)?.values() ?? [])].map((person) => [person.id, person]));
      send(part, [...people.values()]);
    }, PAUSE);
    due.set(part, timer);
  }

  return {
    tell,
    look(part, socket, person) {
      const here = looking.get(part) ?? new Map<string, Person>();
      here.delete(socket);
      looking.set(part, here.set(socket, person));
      tell(part);
    },
    leave(part, socket) {
      const here = looking.get(part);
      if (!here?.delete(socket)) return;
      if (here.size === 0) looking.delete(part);
      tell(part);
    },
    stop: () => due.forEach((timer) => clearTimeout(timer)),
  };
}
