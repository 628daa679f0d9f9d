/** Lets at most `places` pieces of work run at once; the others wait in the order they came. */
export class Turnstile {
  private free: number;
  private readonly waiting: (() => void)[] = [];

  constructor(places: number) {
    this.free = places;
  }

  /** Lets so many more through at once. */
  widen(places: number): void {
    for (let place = 0; place < places; place++) this.leave();
  }

  /** Runs the work when a place is free and gives the place on, whatever becomes of the work. */
  async pass<T>(work: () => Promise<T>): Promise<T> {
    if (this.free > 0) this.free--;
    else await new Promise<void>((resolve) => this.waiting.push(resolve));
    try {
      return await work();
    } finally {
      this.leave();
    }
  }

  private leave(): void {
    const next = this.waiting.shift();
    if (next) next();
    else this.free++;
  }
}
