import { beforeAll, describe, expect, it } from 'vitest';
import createVerovioModule from 'verovio/wasm';
import { VerovioToolkit } from 'verovio/esm';
import { readGeometry } from '../../../core/engraving/readGeometry.ts';
import { embeddedFont, tidy } from '../../../core/engraving/tidy.ts';
import { linesOf, passageOf } from '../../../client/engraving/passage.ts';

const note = (id: string, step: string, octave: number, duration: number, type: string, inner = '') =>
  `<note id="${id}"><pitch><step>${step}</step><octave>${octave}</octave></pitch><duration>${duration}</duration><type>${type}</type>${inner}</note>`;
const words = (text: string, placement: string) => `<direction placement="${placement}"><direction-type><words>${text}</words></direction-type></direction>`;
const TEXT = `<?xml version="1.0"?><score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Violin</part-name></score-part></part-list><part id="P1">
<measure id="m1" number="1"><attributes><divisions>2</divisions><key><fifths>1</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>G</sign><line>2</line></clef></attributes>
${words('above', 'above')}${words('below', 'below')}${note('a', 'B', 4, 4, 'half')}${note('b', 'C', 5, 4, 'half')}</measure>
<measure id="m2" number="2">${note('c', 'G', 4, 8, 'whole')}</measure>
<measure id="m3" number="3"><print new-system="yes"/><attributes><clef><sign>C</sign><line>3</line></clef></attributes>${note('d', 'C', 4, 8, 'whole')}</measure>
<measure id="m4" number="4">${note('e', 'D', 4, 8, 'whole')}</measure>
</part></score-partwise>`;

let toolkit: VerovioToolkit;
const svgOf = (text: string, breaks = 'none') => {
  toolkit.setOptions({ pageWidth: 1800, pageHeight: 400, adjustPageHeight: true, breaks, header: 'none', footer: 'none', svgViewBox: true, svgRemoveXlink: true, scale: 100, pageMarginLeft: 0, pageMarginRight: 0, pageMarginTop: 0, pageMarginBottom: 0, xmlIdSeed: 7, mnumInterval: 0 });
  expect(toolkit.loadData(text)).toBeTruthy();
  return toolkit.renderToSVG(1);
};

beforeAll(async () => {
  toolkit = new VerovioToolkit(await createVerovioModule());
});

describe('where things stand in an engraved system', () => {
  it('every note is found where its pitch puts it on the staff: a step is half a space', () => {
    const { notes, top, bottom } = readGeometry(svgOf(TEXT));
    expect(Object.keys(notes).sort()).toEqual(['a', 'b', 'c', 'd', 'e']);
    expect(bottom - top).toBeCloseTo(4, 1);
    // B4 is the middle line of a treble staff, C5 half a space above it, G4 the second line.
    expect(notes.a!.y).toBeCloseTo(top + 2, 1);
    expect(notes.b!.y).toBeCloseTo(top + 1.5, 1);
    expect(notes.c!.y).toBeCloseTo(top + 3, 1);
  });

  it('notes stand in their measures, in the order of time, and measures touch', () => {
    const { notes, measures } = readGeometry(svgOf(TEXT));
    expect(measures.map(({ ordinal }) => ordinal)).toEqual([1, 2, 3, 4]);
    for (const [i, measure] of measures.slice(1).entries()) expect(measure.x0).toBeCloseTo(measures[i]!.x1, 1);
    const inOrder = ['a', 'b', 'c', 'd', 'e'].map((id) => notes[id]!);
    expect(inOrder.map(({ x }) => x)).toEqual(inOrder.map(({ x }) => x).sort((a, b) => a - b));
    for (const { x, measure } of inOrder) expect(x > measures[measure - 1]!.x0 && x < measures[measure - 1]!.x1).toBe(true);
  });

  it('printed words give way to their own side: above upward, below downward', () => {
    const svg = svgOf(TEXT);
    const { high, low, top, bottom } = readGeometry(svg);
    expect(high.length).toBeGreaterThan(0);
    expect(low.length).toBeGreaterThan(0);
    for (const { y1 } of high) expect(y1).toBeLessThanOrEqual(top + 0.3);
    for (const { y0 } of low) expect(y0).toBeGreaterThanOrEqual(bottom - 0.3);
    const { inner } = tidy(svg, () => true);
    expect(inner).toMatch(/class="dir high"[\s\S]*>above</);
    expect(inner).toMatch(/class="dir low"[\s\S]*>below</);
  });

  it('what goes into the page has our ids only, no style of its own, and glyphs under one name in every system', () => {
    const { inner, glyphs } = tidy(svgOf(TEXT), (id) => id.length === 1);
    expect([...inner.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id).sort()).toEqual(['a', 'b', 'c', 'd', 'e', 'm1', 'm2', 'm3', 'm4']);
    expect(inner).not.toMatch(/style=|<style|Violin/);
    const used = new Set([...inner.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id!));
    expect([...used].filter((id) => !(id in glyphs))).toEqual([]);
    expect(used.size).toBeGreaterThan(2);
  });

  it('the groups stay balanced', () => {
    const { inner } = tidy(svgOf(TEXT), () => true);
    expect([...inner.matchAll(/<g\b[^>]*[^/]>/g)]).toHaveLength([...inner.matchAll(/<\/g>/g)].length);
  });

  it('a text without signs of the music font embeds none', () => {
    expect(embeddedFont('<svg></svg>')).toBeNull();
  });
});

describe('a passage alone', () => {
  it('has its measures only, with the clef and key in force and no line break', () => {
    const text = passageOf(TEXT, 3, 4);
    expect([...text.matchAll(/<measure id="m(\d)"/g)].map(([, ordinal]) => ordinal)).toEqual(['3', '4']);
    expect(text).not.toContain('<print');
    const { notes, top } = readGeometry(svgOf(text, 'encoded'));
    // Middle C is the middle line in the alto clef, which the passage brings itself.
    expect(notes.d!.y).toBeCloseTo(top + 2, 1);
    const second = readGeometry(svgOf(passageOf(TEXT, 2, 2), 'encoded'));
    expect(second.notes.c!.y).toBeCloseTo(second.top + 3, 1);
  });

  it('stands in lines of its own with others, and says again only what is not in force any more', () => {
    const text = linesOf(TEXT, [{ first: 1, last: 1 }, { first: 2, last: 2 }, { first: 4, last: 4 }]);
    expect([...text.matchAll(/<measure id="m(\d)"/g)].map(([, ordinal]) => ordinal)).toEqual(['1', '2', '4']);
    expect(text.match(/<print new-page="yes"\/>/g)).toHaveLength(2);
    expect(text.match(/<sign>G/g)).toHaveLength(1);
    expect(text.match(/<sign>C/g)).toHaveLength(1);
    expect(text.match(/<fifths>/g)).toHaveLength(1);
    svgOf(text, 'encoded');
    expect(toolkit.getPageCount()).toBe(3);
  });

  it('is the whole text when it has no measure of ours', () => {
    expect(passageOf('<score-partwise/>', 1, 2)).toBe('<score-partwise/>');
  });
});
