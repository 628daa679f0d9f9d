import { connect, createServer, type AddressInfo } from 'node:net';

export interface Line {
  /** The house's address by way of this line. */
  origin: string;
  /** While cut, pages come through and the live line to the library does not. */
  cut: boolean;
  close(): Promise<void>;
}

/** A line of our own between a browser and the house, so that the live line alone can be held back. */
export async function openLine(house: string): Promise<Line> {
  const { hostname, port } = new URL(house);
  const server = createServer((near) => {
    near.once('data', (first) => {
      if (line.cut && first.toString('latin1').startsWith('GET /socket/')) return near.destroy();
      const far = connect(Number(port), hostname, () => {
        far.write(first);
        near.pipe(far).pipe(near);
      });
      far.on('error', () => near.destroy());
      far.on('close', () => near.destroy());
      near.on('close', () => far.destroy());
    });
    near.on('error', () => near.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, hostname, resolve));
  const line: Line = {
    origin: `http://${hostname}:${(server.address() as AddressInfo).port}`,
    cut: false,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
  return line;
}
