import type { DocumentFault } from '../../core/musicxml/fault.ts';

/** A file that cannot be opened; caught in `openFile` and returned as a value. */
export class FileError extends Error {
  readonly fault: DocumentFault;

  constructor(code: string, text: string, line?: number) {
    super(text);
    this.fault = { code, text, ...(line === undefined ? {} : { line }) };
  }
}
