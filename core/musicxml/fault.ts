/** Why a document cannot be read, for the person who sent it: what happened, where, and what to do. */
export interface DocumentFault {
  /** Permanent. */
  code: string;
  text: string;
  /** From 1. */
  line?: number;
  part?: string;
  /** As printed. */
  measure?: string;
  element?: string;
}

/** Carries a fault out of deep reading code; never leaves the folder: `readScore` and `parseXml` return it as a value. */
export class DocumentError extends Error {
  readonly fault: DocumentFault;

  constructor(fault: DocumentFault) {
    super(fault.text);
    this.fault = fault;
  }
}

/** Line number, from 1, of an offset; CRLF, CR and LF each end one line. Example: `lineAt("a\nb", 2)` is 2. */
export function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let i = 0; i < offset; i++) {
    const unit = text.charCodeAt(i);
    if (unit === 10 || (unit === 13 && text.charCodeAt(i + 1) !== 10)) line++;
  }
  return line;
}
