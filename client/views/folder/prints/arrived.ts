const SIGNATURE = 0x04034b50;
const HEADER = 30;

/**
 * How many files of a zip have come so far, told chunk by chunk. Walks from one local header to the next by the sizes they state; ends at the directory.
 * Source: PKWARE, APPNOTE.TXT 4.3.7.
 */
export function countArrived(): (chunk: Uint8Array) => number {
  let left = new Uint8Array();
  let skip = 0;
  let files = 0;
  return (chunk) => {
    const bytes = new Uint8Array(left.length + chunk.length);
    bytes.set(left);
    bytes.set(chunk, left.length);
    let at = 0;
    for (;;) {
      const step = Math.min(skip, bytes.length - at);
      at += step;
      skip -= step;
      if (skip > 0 || bytes.length - at < HEADER) break;
      const view = new DataView(bytes.buffer, at);
      if (view.getUint32(0, true) !== SIGNATURE) break;
      files += 1;
      skip = HEADER + view.getUint16(26, true) + view.getUint16(28, true) + view.getUint32(18, true);
    }
    left = bytes.slice(at);
    return files;
  };
}
