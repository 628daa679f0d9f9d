declare module 'verovio/wasm' {
  export default function createVerovioModule(): Promise<unknown>;
}

declare module 'verovio/esm' {
  export const LOG_ERROR: number;
  export const LOG_WARNING: number;
  export function enableLog(level: number, module: unknown): void;
  /** Kept for `getLog` instead of said on the console. */
  export function enableLogToBuffer(on: boolean, module: unknown): void;
  export class VerovioToolkit {
    constructor(module: unknown);
    setOptions(options: Record<string, unknown>): void;
    /** 0 where the text could not be read. */
    loadData(text: string): number;
    redoLayout(): void;
    getPageCount(): number;
    getPageWithElement(id: string): number;
    renderToSVG(page: number): string;
    getLog(): string;
    getMEI(): string;
  }
}
