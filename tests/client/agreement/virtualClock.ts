import type { Clock } from '../../../client/agreement/clock.ts';

const settle = () => new Promise<void>((resolve) => setImmediate(resolve));

/** A clock that is turned by hand: time passes only in `pass`. */
export class VirtualClock implements Clock {
  #now = Date.parse('2026-11-25T10:00:00Z');
  #due: { at: number; n: number; run: () => void }[] = [];
  #count = 0;

  now(): number {
    return this.#now;
  }

  after(ms: number, run: () => void): () => void {
    const one = { at: this.#now + ms, n: (this.#count += 1), run };
    this.#due.push(one);
    return () => void (this.#due = this.#due.filter((other) => other !== one));
  }

  /** Lets `ms` pass and everything happen that falls due, in order. */
  async pass(ms: number): Promise<void> {
    const until = this.#now + ms;
    await settle();
    for (;;) {
      const next = this.#due.filter(({ at }) => at <= until).sort((a, b) => a.at - b.at || a.n - b.n)[0];
      if (!next) break;
      this.#due = this.#due.filter((other) => other !== next);
      this.#now = next.at;
      next.run();
      await settle();
    }
    this.#now = until;
  }
}
