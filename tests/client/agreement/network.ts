import type { Answers, OpenWire, WireListener } from '../../../client/agreement/wire.ts';
import type { ServerMessages } from '../../../core/agreement/wire/socket.ts';
import type { Authority } from './authority.ts';
import type { VirtualClock } from './virtualClock.ts';

export const PART = 'violin-1';

/** How the line treats what is on it. */
export interface Weather {
  /** Milliseconds one way. */
  lag(): number;
  /** The message, or the answer, never arrives. */
  loses(): boolean;
  /** It arrives twice. */
  doubles(): boolean;
}

export const FAIR: Weather = { lag: () => 10, loses: () => false, doubles: () => false };

interface Line {
  person: string;
  listener: WireListener;
  up: boolean;
  /** Rises with every cut: what was on its way then is gone. */
  age: number;
  follows: boolean;
  greeted: boolean;
  closed: boolean;
  broken: (() => void)[];
}

/** Lines between people and one authority. */
export class Network {
  weather: Weather = FAIR;
  looked: { person: string; measure: number | null }[] = [];
  #clock: VirtualClock;
  #authority: Authority;
  #lines = new Set<Line>();

  constructor(clock: VirtualClock, authority: Authority) {
    this.#clock = clock;
    this.#authority = authority;
    authority.onWritten = (entry) => this.tell('logged', { part: PART, entries: [entry] });
  }

  /** Says something to all who follow, as it may arrive: late, twice or never. */
  tell<Name extends keyof ServerMessages>(name: Name, body: ServerMessages[Name]): void {
    for (const line of this.#lines) if (line.follows) this.#travel(line, () => line.listener.message(name, structuredClone(body)));
  }

  cut(person: string): void {
    for (const line of this.#of(person)) {
      if (!line.up) continue;
      Object.assign(line, { up: false, follows: false, greeted: false, age: line.age + 1 });
      line.broken.splice(0).forEach((reject) => reject());
      line.listener.down();
    }
  }

  mend(person: string): void {
    for (const line of this.#of(person)) {
      if (line.up || line.closed) continue;
      line.up = true;
      line.listener.up();
    }
  }

  #of(person: string): Line[] {
    return [...this.#lines].filter((line) => line.person === person);
  }

  #travel(line: Line, arrive: () => void): void {
    const { age } = line;
    const go = () => this.#clock.after(this.weather.lag(), () => (line.age === age && !line.closed ? arrive() : undefined));
    if (!this.weather.loses()) go();
    if (this.weather.doubles()) go();
  }

  #answer(line: Line, name: string, body: Record<string, unknown>): unknown {
    if (name === 'hello') {
      line.greeted = true;
      return this.#authority.hello(body['protocol'] as number);
    }
    if (!line.greeted) throw new Error(`${name} before hello`);
    if (name === 'follow') {
      line.follows = true;
      return this.#authority.follow(body['after'] as number);
    }
    return this.#authority.submit(line.person, body as never);
  }

  wireOf(person: string): OpenWire {
    return (listener) => {
      const line: Line = { person, listener, up: false, age: 0, follows: false, greeted: false, closed: false, broken: [] };
      this.#lines.add(line);
      this.#clock.after(this.weather.lag(), () => {
        if (line.closed || line.up) return;
        line.up = true;
        listener.up();
      });
      return {
        ask: <Name extends keyof Answers>(name: Name, body: object, ms: number) =>
          new Promise<Answers[Name]>((resolve, reject) => {
            if (!line.up) return reject(new Error('cut'));
            const late = this.#clock.after(ms, () => reject(new Error('late')));
            line.broken.push(() => (late(), reject(new Error('cut'))));
            this.#travel(line, () => {
              const answer = this.#answer(line, name, structuredClone(body) as Record<string, unknown>);
              this.#travel(line, () => (late(), resolve(answer as Answers[Name])));
            });
          }),
        tell: (name, body) => {
          if (line.up) this.#travel(line, () => (name === 'looking' && 'measure' in body ? void this.looked.push({ person, measure: body.measure }) : undefined));
        },
        close: () => {
          Object.assign(line, { up: false, follows: false, closed: true });
          this.#lines.delete(line);
        },
      };
    };
  }
}
