import { SaxesParser, type SaxesTagPlain } from 'saxes';
import type { XmlElement } from './element.ts';
import { DocumentError, type DocumentFault, lineAt } from './fault.ts';
import { LIMITS } from './limits.ts';

type Open = { -readonly [Key in keyof XmlElement]: XmlElement[Key] } & { children: XmlElement[] };

export type Parsed = { ok: true; root: XmlElement } | { ok: false; fault: DocumentFault };

const NO_CHILDREN: XmlElement[] = [];
const NO_ATTRIBUTES = Object.freeze({});
const CHUNK = 65_536;
const TOO_BIG = 'Nothing was read. If this really is a score, save it again from your notation program as MusicXML.';

/**
 * Reads an XML text into a tree that knows where each element stands.
 * Models elements, attributes and character data; comments and instructions stay in the text only. Never follows or defines an entity; refuses a
 * DOCTYPE that brings definitions of its own and everything beyond `LIMITS`.
 * @param text the document without a byte order mark
 * @returns the root, or the fault with line, measure and element. Linear in the length of the text.
 * Example: `parseXml('<a b="1"><c/></a>')` gives a root with one child that starts at 9.
 */
export function parseXml(text: string): Parsed {
  const reading = new Reading(text);
  try {
    return { ok: true, root: reading.run() };
  } catch (error) {
    if (error instanceof DocumentError) return { ok: false, fault: error.fault };
    throw error;
  }
}

class Reading {
  private readonly text: string;
  private readonly parser = new SaxesParser<{ xmlns: false }>({ xmlns: false });
  private readonly open: Open[] = [];
  private root: Open | undefined;
  private elements = 0;
  private lastEvent = 0;

  constructor(text: string) {
    this.text = text;
    // saxes numbers lines itself only with its own text kept; ours are counted once, when something is wrong.
    this.parser.on('error', (error) => this.stop('NOT_WELL_FORMED', `The file is not well-formed XML: ${plain(error.message)} Export it again from the program it came from.`));
    this.parser.on('doctype', (doctype) => {
      this.seen();
      if (doctype.includes('[')) this.stop('OWN_DEFINITIONS', 'The file brings definitions of its own (an internal DOCTYPE subset). Scores need none: export it again as plain MusicXML.');
    });
    this.parser.on('opentag', (tag) => this.start(tag));
    this.parser.on('closetag', () => this.finish());
    this.parser.on('attribute', ({ name, value }) => {
      if (name.length > LIMITS.name || value.length > LIMITS.run) this.tooMuch('an attribute longer than any score has');
    });
    this.parser.on('text', (data) => this.data(data));
    this.parser.on('cdata', (data) => this.data(data));
    this.parser.on('comment', () => this.seen());
    this.parser.on('processinginstruction', () => this.seen());
  }

  run(): XmlElement {
    if (this.text.length > LIMITS.characters) this.tooMuch('more text than any score has');
    for (let at = 0; at < this.text.length; at += CHUNK) {
      this.parser.write(this.text.slice(at, at + CHUNK));
      if (this.parser.position - this.lastEvent > LIMITS.run) this.tooMuch('one piece of text or comment longer than any score has');
    }
    this.parser.close();
    if (!this.root) this.stop('NOT_WELL_FORMED', 'The file holds no XML element. Export it again from the program it came from.');
    return this.root;
  }

  private start(tag: SaxesTagPlain): void {
    this.seen();
    if (this.open.length >= LIMITS.depth) this.tooMuch(`elements nested more than ${LIMITS.depth} deep`);
    if (++this.elements > LIMITS.elements) this.tooMuch('more elements than any score has');
    const count = Object.keys(tag.attributes).length;
    if (count > LIMITS.attributes || tag.name.length > LIMITS.name) this.tooMuch('more attributes, or a longer name, than any score has');
    const end = this.parser.position;
    const element: Open = {
      name: tag.name,
      attributes: count ? tag.attributes : NO_ATTRIBUTES,
      children: NO_CHILDREN,
      text: '',
      start: this.text.lastIndexOf('<', end - 1),
      startTagEnd: end,
      endTagStart: end,
      end,
    };
    const parent = this.open.at(-1);
    if (!parent) this.root = element;
    else if (parent.children === NO_CHILDREN) parent.children = [element];
    else parent.children.push(element);
    this.open.push(element);
  }

  private finish(): void {
    this.seen();
    const element = this.open.pop();
    const end = this.parser.position;
    if (!element || end === element.startTagEnd) return;
    element.end = end;
    element.endTagStart = this.text.lastIndexOf('<', end - 1);
  }

  private data(data: string): void {
    this.seen();
    const element = this.open.at(-1);
    if (!element || !/\S/.test(data)) return;
    element.text += data;
    if (element.text.length > LIMITS.run) this.tooMuch('one text longer than any score has');
  }

  private seen(): void {
    this.lastEvent = this.parser.position;
  }

  private tooMuch(what: string): never {
    this.stop('TOO_BIG', `The file has ${what}. ${TOO_BIG}`);
  }

  private stop(code: string, text: string): never {
    const holding = (name: string, attribute: string) => this.open.findLast((element) => element.name === name)?.attributes[attribute];
    const part = holding('part', 'id');
    const measure = holding('measure', 'number');
    const element = this.open.at(-1)?.name;
    throw new DocumentError({
      code,
      text,
      line: lineAt(this.text, Math.min(this.parser.position, this.text.length)),
      ...(part === undefined ? {} : { part }),
      ...(measure === undefined ? {} : { measure }),
      ...(element === undefined ? {} : { element }),
    });
  }
}

/** The parser's own message without its "line:column:" prefix. */
function plain(message: string): string {
  const text = message.replace(/^[^:]*\d+:\d+:\s*/, '').trim();
  return text.endsWith('.') ? text : `${text}.`;
}
