import { childrenNamed, descend, type XmlElement } from '../musicxml/element.ts';
import { type DocumentFault, lineAt } from '../musicxml/fault.ts';
import { parseXml } from '../musicxml/parse.ts';
import { flowOf } from './flow.ts';
import { Untimed } from './layer.ts';
import { measureXml } from './measureXml.ts';
import { readMeasures, type ReadMeasure } from './readMeasures.ts';
import { SignReader } from './signs.ts';
import { wordsOf } from './shown.ts';
import { stavesOf, type Staff } from './staves.ts';
import { xmlText } from '../musicxml/escape.ts';

export type FromMei = { ok: true; text: string } | { ok: false; fault: DocumentFault };

/** True for a document that says it is MEI. Example: `isMei('<?xml version="1.0"?><mei xmlns="http://www.music-encoding.org/ns/mei">')`. */
export const isMei = (text: string): boolean => /^\s*(?:<\?[\s\S]*?\?>\s*|<!--[\s\S]*?-->\s*|<!DOCTYPE[^>]*>\s*)*<(?:\w+:)?(mei|music|score|section)\b[^>]*music-encoding\.org/.test(text.slice(0, 20_000));

const fault = (code: string, text: string, more: Partial<DocumentFault> = {}): FromMei => ({ ok: false, fault: { code, text, ...more } });

/**
 * An MEI score as a MusicXML document, so that everything else reads one kind of music.
 * Takes notes, chords, rests, tuplets, beams, grace notes, tremolos, ties, slurs, slides, articulations, bow signs, fingers, ornaments, dynamics, hairpins, words, tempo,
 * rehearsal marks, keys, metres, clefs, repeats and endings; every staff becomes a part. Leaves out figured bass, lyrics, layout, facsimile and analysis.
 * Of variants the preferred one is read; repeats are not written out. Refuses a file without a score and music that cannot be put in time, with line and measure.
 * @param text the document without a byte order mark
 * Source: MEI Guidelines 5.1. Example: `musicXmlFromMei(text)` of a quintet gives five parts.
 */
export function musicXmlFromMei(text: string): FromMei {
  const parsed = parseXml(text);
  if (!parsed.ok) return parsed;
  const scores = scoresIn(parsed.root);
  const scoreDef = scores.map((score) => firstDefinition(score)).find((found) => found !== undefined);
  if (!scores.length || !scoreDef) return fault('MEI_WITHOUT_SCORE', 'Nothing was imported: the MEI file holds no score with staves (a <score> with a <scoreDef>). Export the whole score as MEI or as MusicXML and send that file.');
  const staves = stavesOf(parsed.root, scoreDef, text);
  if (!staves.length) return fault('MEI_WITHOUT_STAVES', 'Nothing was imported: the MEI file defines no staves. Export it again, or as MusicXML.', { line: lineAt(text, scoreDef.start) });
  try {
    const measures = readMeasures(flowOf(scores), staves);
    return { ok: true, text: compose(parsed.root, text, staves, measures) };
  } catch (error) {
    if (!(error instanceof Untimed)) throw error;
    const { element } = error;
    return fault('MEI_UNTIMED', `Nothing was imported: a <${element.name}> has no length this reader can count${element.attributes.dur ? ` ("${element.attributes.dur.slice(0, 20)}")` : ''}. Give it a note value, or write shorthand out, and send the file again.`, { line: lineAt(text, element.start), element: element.name });
  }
}

function scoresIn(root: XmlElement): XmlElement[] {
  if (root.name === 'score') return [root];
  return root.children.flatMap((child) => (['music', 'body', 'mdiv', 'group'].includes(child.name) ? scoresIn(child) : child.name === 'score' ? [child] : []));
}

function firstDefinition(element: XmlElement): XmlElement | undefined {
  for (const child of element.children) {
    if (child.name === 'scoreDef') return child;
    const inside = child.name === 'section' ? firstDefinition(child) : undefined;
    if (inside) return inside;
  }
  return undefined;
}

/** A title in parts is told by its main part. */
function titleOf(title: XmlElement, text: string): string {
  const parts = childrenNamed(title, 'titlePart');
  return wordsOf(parts.find(({ attributes }) => attributes.type === 'main') ?? parts[0] ?? title, text);
}

function heading(root: XmlElement, text: string): string {
  const file = descend(root, 'meiHead', 'fileDesc', 'titleStmt');
  const work = descend(root, 'meiHead', 'workList', 'work');
  const title = [file, work].flatMap((owner) => (owner ? childrenNamed(owner, 'title') : [])).map((one) => titleOf(one, text)).find(Boolean);
  const people = [file, work].flatMap((owner) => (owner ? [...childrenNamed(owner, 'composer'), ...childrenNamed(owner, 'respStmt').flatMap((all) => childrenNamed(all, 'persName').filter(({ attributes }) => attributes.role === 'composer')), ...childrenNamed(owner, 'creator')] : []));
  const composer = people.map((one) => wordsOf(one, text)).find(Boolean);
  return `${title ? `<work><work-title>${xmlText(title)}</work-title></work>` : ''}${composer ? `<identification><creator type="composer">${xmlText(composer)}</creator></identification>` : ''}`;
}

function compose(root: XmlElement, text: string, staves: readonly Staff[], measures: readonly ReadMeasure[]): string {
  const signs = new SignReader(measures, staves, text);
  const saysSounding = /\baccid\.ges\s*=/.test(text);
  const list = staves.map(({ name, abbreviation, program }, i) => {
    const instrument = program === null ? '' : `<score-instrument id="P${i + 1}-I1"><instrument-name>${xmlText(name)}</instrument-name></score-instrument><midi-instrument id="P${i + 1}-I1"><midi-program>${program}</midi-program></midi-instrument>`;
    return `<score-part id="P${i + 1}"><part-name>${xmlText(name)}</part-name>${abbreviation ? `<part-abbreviation>${xmlText(abbreviation)}</part-abbreviation>` : ''}${instrument}</score-part>`;
  });
  const parts = staves.map((_, staff) => {
    const inside = measures.map((measure, i) => measureXml(measure, { staff, measure: i }, measures[i - 1]?.staves[staff]?.standing ?? null, signs, saysSounding));
    return `<part id="P${staff + 1}">\n${inside.join('\n')}\n</part>`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<score-partwise version="4.0">\n${heading(root, text)}<part-list>${list.join('')}</part-list>\n${parts.join('\n')}\n</score-partwise>\n`;
}
