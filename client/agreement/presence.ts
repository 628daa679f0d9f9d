import type { ServerMessages } from '../../core/agreement/wire/socket.ts';
import type { Connection } from './connection.ts';

export type Present = ServerMessages['present']['people'][number];

export interface Presence {
  look(measure: number | null): void;
  /** Say it again: the server forgets where I look when the line is cut. */
  repeat(): void;
}

/** Tells the others which measure I look at. */
export function presence(part: string, connection: Connection): Presence {
  let looking: number | null = null;
  return {
    look(measure) {
      if (measure === looking) return;
      looking = measure;
      connection.tell('looking', { part, measure });
    },
    repeat() {
      if (looking !== null) connection.tell('looking', { part, measure: looking });
    },
  };
}
