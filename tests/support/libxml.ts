import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ParseOption, XmlBufferInputProvider, XmlDocument, type XmlLibError, xmlRegisterInputProvider, XsdValidator } from 'libxml2-wasm';

/** A second reader of XML, not ours: libxml2. */
const OPTIONS = { option: ParseOption.XML_PARSE_HUGE | ParseOption.XML_PARSE_NONET | ParseOption.XML_PARSE_BIG_LINES };

export function withDocument<T>(bytes: Uint8Array, read: (document: XmlDocument) => T): T {
  const document = XmlDocument.fromBuffer(bytes, OPTIONS);
  try {
    return read(document);
  } finally {
    document.dispose();
  }
}

/** True when libxml2 takes the bytes for well-formed XML. */
export function isWellFormed(bytes: Uint8Array): boolean {
  try {
    return withDocument(bytes, () => true);
  } catch {
    return false;
  }
}

export function canonicalForm(bytes: Uint8Array): string {
  return withDocument(bytes, (document) => document.canonicalizeToString());
}

let validator: XsdValidator | undefined;

/** The schema errors of a score, as often as they occur, without their lines. `schema` is the folder of the published schema. */
export function schemaErrors(bytes: Uint8Array, schema: string): Map<string, number> {
  if (!validator) {
    const files = ['xml.xsd', 'xlink.xsd'].map((name) => [`http://www.musicxml.org/xsd/${name}`, readFileSync(join(schema, name))] as const);
    xmlRegisterInputProvider(new XmlBufferInputProvider(Object.fromEntries(files)));
    validator = XsdValidator.fromDoc(XmlDocument.fromBuffer(readFileSync(join(schema, 'musicxml.xsd'))));
  }
  const valid = validator;
  const counts = new Map<string, number>();
  withDocument(bytes, (document) => {
    try {
      valid.validate(document);
    } catch (error) {
      const { details } = error as XmlLibError;
      for (const { message } of details) counts.set(message.trim(), (counts.get(message.trim()) ?? 0) + 1);
    }
  });
  return counts;
}
