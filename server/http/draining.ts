/** Whether this process is on its way out. Told once, never taken back. */
export interface Draining {
  readonly begun: boolean;
  begin(): void;
}

export function createDraining(): Draining {
  let begun = false;
  return {
    get begun() {
      return begun;
    },
    begin: () => void (begun = true),
  };
}
