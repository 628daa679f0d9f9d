import { describe, expect, it } from 'vitest';
import { isMei, musicXmlFromMei } from '../../../core/mei/musicXmlFromMei.ts';
import type { Score } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { meiScore } from './samples.ts';

function read(measures: string, more = ''): Score {
  const made = musicXmlFromMei(meiScore(measures, more));
  if (!made.ok) throw new Error(made.fault.text);
  const score = readScore(made.text);
  if (!score.ok) throw new Error(score.fault.text);
  return score.score;
}

/** One measure with this upper staff; the lower rests. */
const above = (layer: string, signs = ''): string => `<measure n="1"><staff n="1"><layer n="1">${layer}</layer></staff><staff n="2"><layer n="1"><mRest/></layer></staff>${signs}</measure>`;
const notes = (layer: string, signs = '') => read(above(layer, signs)).parts[0]!.measures[0]!.notes;
const QUARTERS = '<note xml:id="a" pname="g" oct="4" dur="4"/><note xml:id="b" pname="a" oct="4" dur="4"/><note xml:id="c" pname="b" oct="4" dur="4"/>';

describe('a score in MEI (MEI Guidelines 5.1)', () => {
  it('is known by its namespace, whatever stands before its root', () => {
    expect(isMei(meiScore(''))).toBe(true);
    expect(isMei('<score-partwise version="4.0"/>')).toBe(false);
  });

  it('has a title, a composer, and parts named by label or instrument', () => {
    const { title, composer, parts } = read(above(QUARTERS));
    expect([title, composer]).toEqual(['Two Ferries', 'Ines Vaarland']);
    expect(parts.map(({ name, instrument, transposition }) => [name, instrument, transposition])).toEqual([['Violin I', 'violin', 0], ['Double Bass', 'double-bass', -12]]);
  });

  it('lies in time exactly: dots, tuplets, grace notes, chords, rests of a measure', () => {
    const measure = notes('<note pname="g" oct="4" dur="4" dots="1"/><note grace="unacc" pname="a" oct="4" dur="8"/><chord dur="8"><note pname="b" oct="4"/><note pname="d" oct="5"/></chord><tuplet num="3" numbase="2"><note pname="c" oct="5" dur="8"/><rest dur="8"/><note pname="a" oct="4" dur="8"/></tuplet>');
    expect(measure.map(({ onset, duration }) => [onset, duration])).toEqual([[0, '3/2'], ['3/2', 0], ['3/2', '1/2'], ['3/2', '1/2'], [2, '1/3'], ['7/3', '1/3'], ['8/3', '1/3']]);
    expect(measure.map(({ grace, chord, rest }) => [grace, chord, rest].filter(Boolean).length)).toEqual([0, 1, 0, 1, 0, 1, 0]);
    expect(read(above(QUARTERS)).parts[1]!.measures[0]!.notes.map(({ rest, duration }) => [rest, duration])).toEqual([[true, 3]]);
  });

  it('a tuplet given as a span is one', () => {
    const measure = notes('<note xml:id="t" pname="c" oct="5" dur="8"/><note pname="c" oct="5" dur="8"/><note xml:id="u" pname="c" oct="5" dur="8"/><note pname="g" oct="4" dur="2"/>', '<tupletSpan startid="#t" endid="#u" num="3" numbase="2"/>');
    expect(measure.map(({ onset }) => onset)).toEqual([0, '1/3', '2/3', 1]);
  });

  it('sounds by its key and earlier signs where no sounding accidental is ever said, and as said where one is', () => {
    const layer = '<note pname="f" oct="5" dur="8"/><note pname="f" oct="5" accid="n" dur="8"/><note pname="f" oct="5" dur="4"/>';
    expect(notes(layer).map(({ midi }) => midi)).toEqual([78, 77, 77]);
    expect(notes(`${layer}<note pname="c" oct="5" accid.ges="s" dur="4"/>`).map(({ midi }) => midi)).toEqual([77, 77, 77, 73]);
  });

  it('slurs, ties, fingers, bows, articulations and dynamics stand on their notes, by id or by time', () => {
    const signs = '<slur startid="#a" endid="#c"/><tie startid="#b" endid="#c"/><fing startid="#b">2</fing><fing staff="1" tstamp="3">4</fing><dynam staff="1" tstamp="2">p</dynam><reh staff="1" tstamp="1"><rend rend="box">A</rend></reh>';
    const measure = read(above(QUARTERS.replace('oct="4" dur="4"/>', 'oct="4" dur="4" artic="dnbow stacc"/>'), signs)).parts[0]!;
    expect(measure.slurs).toEqual([{ from: measure.measures[0]!.notes[0]!.id, to: measure.measures[0]!.notes[2]!.id }]);
    const [a, b, c] = measure.measures[0]!.notes;
    expect(a!.technical.map(({ name }) => name)).toEqual(['down-bow']);
    expect(a!.articulations).toEqual(['staccato']);
    expect([b!.ties, c!.ties]).toEqual([['start'], ['stop']]);
    expect([b, c].map((note) => note!.technical.map(({ name, value }) => [name, value]))).toEqual([[['fingering', '2']], [['fingering', '4']]]);
    expect([a, b, c].map((note) => note!.dynamic)).toEqual([null, 'p', 'p']);
    expect(measure.measures[0]!.rehearsal).toBe('A');
  });

  it('two slurs that overlap keep their own ends', () => {
    const measure = read(above(QUARTERS, '<slur startid="#a" endid="#c"/><slur startid="#b" endid="#c"/>')).parts[0]!;
    const [a, b, c] = measure.measures[0]!.notes.map(({ id }) => id);
    expect(measure.slurs).toEqual(expect.arrayContaining([{ from: a, to: c }, { from: b, to: c }]));
    expect(measure.slurs).toHaveLength(2);
  });

  it('voices lie side by side, and what varies is read in its preferred form', () => {
    const two = read(`<measure n="1"><staff n="1"><layer n="1">${QUARTERS}</layer><layer n="2"><space dur="4"/><app><lem><note pname="d" oct="4" dur="2"/></lem><rdg><note pname="e" oct="4" dur="2"/></rdg></app></layer></staff><staff n="2"><layer n="1"><mRest/></layer></staff></measure>`);
    expect(two.parts[0]!.measures[0]!.notes.map(({ voice, onset, midi }) => [voice, onset, midi])).toEqual([['1', 0, 67], ['1', 1, 69], ['1', 2, 71], ['2', 1, 62]]);
  });

  it('a long rest becomes as many measures, and "as before" the measure before', () => {
    const staff = (n: number, inside: string) => `<staff n="${n}"><layer n="1">${inside}</layer></staff>`;
    const { parts } = read(`${above(QUARTERS)}<measure n="2">${staff(1, '<mRpt/>')}${staff(2, '<mRest/>')}</measure><measure n="3">${staff(1, '<multiRest num="4"/>')}${staff(2, '<multiRest num="4"/>')}</measure><measure n="7">${staff(1, QUARTERS.replace(/xml:id="."/g, ''))}${staff(2, '<mRest/>')}</measure>`);
    expect(parts[0]!.measures.map(({ number }) => number)).toEqual(['1', '2', '3', '4', '5', '6', '7']);
    expect(parts[0]!.measures[1]!.notes.map(({ midi }) => midi)).toEqual([67, 69, 71]);
    expect(parts[0]!.measures[3]!.notes.map(({ rest }) => rest)).toEqual([true]);
  });

  it('a pick-up is as long as what is in it; metre and key that change hold from there', () => {
    const { parts } = read(`<measure n="0" metcon="false"><staff n="1"><layer n="1"><note pname="d" oct="4" dur="4"/></layer></staff><staff n="2"><layer n="1"><mRest/></layer></staff></measure>${above(QUARTERS)}<scoreDef meter.count="2" meter.unit="2" keysig="2f"/><measure n="2"><staff n="1"><layer n="1"><note pname="b" oct="4" dur="1"/></layer></staff><staff n="2"><layer n="1"><mRest/></layer></staff></measure>`);
    expect(parts[1]!.measures.map(({ length, implicit }) => [length, implicit ?? false])).toEqual([[1, true], [3, false], [4, false]]);
    expect(parts[0]!.measures[2]).toMatchObject({ time: { beats: '2', beatType: '2' }, fifths: -2 });
    expect(parts[0]!.measures[2]!.notes[0]!.midi).toBe(70);
  });

  it('a file without a score, and a note without a length, are refused with what to do and where', () => {
    const empty = musicXmlFromMei('<mei xmlns="http://www.music-encoding.org/ns/mei"><meiHead/></mei>');
    expect(empty).toMatchObject({ ok: false, fault: { code: 'MEI_WITHOUT_SCORE' } });
    const untimed = musicXmlFromMei(meiScore(above('\n<note pname="g" oct="4"/>')));
    expect(untimed).toMatchObject({ ok: false, fault: { code: 'MEI_UNTIMED', element: 'note', line: 13 } });
    expect(musicXmlFromMei('<mei><a></mei>')).toMatchObject({ ok: false, fault: { code: 'NOT_WELL_FORMED' } });
  });
});
