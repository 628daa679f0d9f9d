declare module 'verovio/wasm' {
  export default function createVerovioModule(): Promise<unknown>;
}

declare module 'verovio/esm' {
  export class VerovioToolkit {
    constructor(module: unknown);
    setOptions(options: Record<string, unknown>): void;
    loadData(text: string): boolean;
    redoLayout(): void;
    getPageCount(): number;
    getPageWithElement(id: string): number;
    renderToSVG(page: number): string;
    getLog(): string;
  }
}
