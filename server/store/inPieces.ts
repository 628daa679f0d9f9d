import { PIECE_BYTES } from './jobs.ts';

/** Bytes however they come, as pieces of one size and a rest; an empty file has one empty piece. */
export async function* inPieces(bytes: AsyncIterable<Uint8Array> | Iterable<Uint8Array>, size = PIECE_BYTES): AsyncIterable<Buffer> {
  let waiting: Uint8Array[] = [];
  let length = 0;
  let any = false;
  for await (const came of bytes) {
    for (let at = 0; at < came.length; ) {
      const step = Math.min(size - length, came.length - at);
      waiting.push(came.subarray(at, at + step));
      at += step;
      length += step;
      if (length < size) continue;
      yield Buffer.concat(waiting);
      any = true;
      waiting = [];
      length = 0;
    }
  }
  if (length || !any) yield Buffer.concat(waiting);
}

/** All of them again as one. */
export async function whole(pieces: AsyncIterable<Uint8Array>): Promise<Buffer> {
  const all: Uint8Array[] = [];
  for await (const piece of pieces) all.push(piece);
  return Buffer.concat(all);
}
