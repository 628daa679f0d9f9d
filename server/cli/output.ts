/** Writes one JSON value and a line end; resolves when a slow reader has taken all of it, so that nothing is cut at exit. */
export function printJson(value: unknown): Promise<void> {
  return print(`${JSON.stringify(value)}\n`);
}

export function print(text: string): Promise<void> {
  return new Promise((resolve, reject) => {
    process.stdout.write(text, (error) => {
      // A reader that has seen enough (head) is no fault.
      if (error && (error as NodeJS.ErrnoException).code !== 'EPIPE') reject(error);
      else resolve();
    });
  });
}
