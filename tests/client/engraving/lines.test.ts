import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenAt } from '../../../core/engraving/broken.ts';
import { beginningOf } from '../../../client/engraving/passage.ts';
import { countRests } from '../../../core/engraving/rests.ts';
import { systemRanges } from '../../../core/engraving/systemRanges.ts';

const rest = '<note><rest measure="yes"/><duration>8</duration><voice>1</voice></note>';
const note = '<note id="x"><pitch><step>C</step><octave>5</octave></pitch><duration>8</duration></note>';
const letter = '<direction><direction-type><rehearsal>A</rehearsal></direction-type></direction>';
const double = '<barline location="right"><bar-style>light-light</bar-style></barline>';
const textOf = (...measures: string[]) => `<part id="P1">\n${measures.map((content, i) => `<measure number="${i + 1}" id="m${i + 1}">${content}</measure>`).join('\n')}\n</part></score-partwise>`;
const spansOf = (...measures: string[]) => [...countRests(textOf(...measures)).spans];

describe('counted rests', () => {
  it('measures of rest after one another are one rest that counts them', () => {
    expect(spansOf(note, rest, rest, rest, note, rest)).toEqual([[2, 3]]);
    expect(countRests(textOf(note, rest, rest)).text).toContain('<measure number="2" id="m2"><attributes><measure-style><multiple-rest>2</multiple-rest></measure-style></attributes><note>');
  });

  it('a letter, a barline, a fermata or another key ends a rest where it comes', () => {
    expect(spansOf(rest, rest, letter + rest, rest)).toEqual([[1, 2], [3, 2]]);
    expect(spansOf(rest, rest, `<attributes><key><fifths>1</fifths></key></attributes>${rest}`, rest)).toEqual([[1, 2], [3, 2]]);
    expect(spansOf(rest, rest + double, rest, rest)).toEqual([[1, 2], [3, 2]]);
    expect(spansOf(rest + double, rest, note)).toEqual([]);
    expect(spansOf(rest, note + double)).toEqual([]);
    expect(spansOf(rest, rest.replace('</note>', '<notations><fermata/></notations></note>'))).toEqual([]);
  });

  it('what is left of a measure beside a repeat is not counted as a whole one', () => {
    const two = (duration: number) => `<note><rest/><duration>${duration}</duration></note>`;
    expect(spansOf(two(6), two(6), two(4) + double)).toEqual([[1, 2]]);
    expect(spansOf(two(6), two(6), two(3) + two(3) + double)).toEqual([[1, 3]]);
    expect(spansOf(two(2), two(6), two(6))).toEqual([[2, 2]]);
  });

  it('the barline a rest ends at stands in its first measure, the only one the engraver reads', () => {
    expect(countRests(textOf(rest, rest, rest + double, note)).text).toContain(`</note>${double}</measure>\n<measure number="2"`);
  });

  it('what the source counts itself is counted anew, so that nothing is counted twice', () => {
    const said = `<attributes><measure-style><multiple-rest>2</multiple-rest></measure-style></attributes>${rest}`;
    expect(countRests(textOf(said, rest, rest)).text.match(/<multiple-rest>/g)).toHaveLength(1);
    expect(spansOf(said, rest, rest)).toEqual([[1, 3]]);
  });
});

describe('where lines begin', () => {
  it('is found whatever the lengths of the lines, asking only measures that stand on the page', () => {
    const line = fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 30 }), (lines) => {
        // Every number is a measure, or a rest that counts so many.
        const spans = new Map<number, number>();
        const system = new Map<number, number>();
        const expected: { first: number; last: number }[] = [];
        let ordinal = 1;
        for (const [i, counts] of lines.entries()) {
          const first = ordinal;
          for (const count of counts) {
            if (count > 1) spans.set(ordinal, count);
            system.set(ordinal, i + 1);
            ordinal += count;
          }
          expected.push({ first, last: ordinal - 1 });
        }
        const measures = Array.from({ length: ordinal - 1 }, (_, i) => i + 1);
        expect(systemRanges(measures, spans, lines.length, (asked) => system.get(asked) ?? NaN)).toEqual(expected);
      }),
    );
  });

  it('another part is broken where this one is, and its own breaks are gone', () => {
    const broken = brokenAt(textOf(note, `<print new-system="yes"/>${note}`, note), [{ first: 1, last: 2 }, { first: 3, last: 3 }]);
    expect(broken.match(/<print/g)).toHaveLength(1);
    expect(broken).toContain('id="m3"><print new-page="yes"/>');
  });

  it('the beginning of a long part is a whole text of its first measures; a short part has none', () => {
    const long = textOf(...Array.from({ length: 20 }, () => note));
    expect(beginningOf(long, 4)!.match(/<measure\b/g)).toHaveLength(4);
    expect(beginningOf(long, 4)).toMatch(/<\/measure>\s*<\/part><\/score-partwise>$/);
    expect(beginningOf(long, 15)).toBeNull();
  });
});
