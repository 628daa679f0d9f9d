const start = () => new Worker(new URL('./engrave.worker.ts', import.meta.url), { type: 'module' });

let waiting: Worker | null = null;

/** Starts the engraver before there is anything to engrave: it is some megabytes. */
export function warmEngraver(): void {
  waiting ??= start();
}

/** A worker that belongs to the asker alone. */
export function takeEngraver(): Worker {
  const taken = waiting ?? start();
  waiting = null;
  return taken;
}
