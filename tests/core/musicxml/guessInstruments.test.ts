import { describe, expect, it } from 'vitest';
import { guessInstruments } from '../../../core/musicxml/guessInstruments.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';

interface Given { name?: string; clef?: string; keys?: string[]; more?: string; listed?: string }

const clefXml = (clef: string) => `<clef><sign>${clef[0]}</sign><line>${clef[1]}</line></clef>`;
function guessed(parts: Given[]): (string | null)[] {
  const list = parts.map(({ name = '', listed = '' }, i) => `<score-part id="P${i + 1}"><part-name>${name}</part-name>${listed}</score-part>`).join('');
  const body = parts.map(({ clef = 'G2', keys = ['C5'], more = '' }, i) => {
    const notes = keys.map((key) => `<note><pitch><step>${key[0]}</step><octave>${key[1]}</octave></pitch><duration>1</duration>${more}</note>`).join('');
    return `<part id="P${i + 1}"><measure number="1"><attributes><divisions>1</divisions>${clefXml(clef)}</attributes>${notes}</measure></part>`;
  });
  const read = readScore(`<score-partwise><part-list>${list}</part-list>${body.join('')}</score-partwise>`);
  if (!read.ok) throw new Error(read.fault.text);
  return guessInstruments(read.parts).map(({ instrument }) => instrument);
}

describe('parts whose names say nothing', () => {
  it.each([
    ['treble clef down to the open G string', { keys: ['G3', 'A6'] }, 'violin'],
    ['treble clef, a step lower', { keys: ['F3', 'A5'] }, 'viola'],
    ['alto clef down to the open C string', { clef: 'C3', keys: ['C3'] }, 'viola'],
    ['alto clef, lower', { clef: 'C3', keys: ['B2'] }, null],
    ['bass clef', { clef: 'F4', keys: ['C2', 'G4'] }, 'cello'],
    ['tenor clef', { clef: 'C4', keys: ['G4'] }, 'cello'],
    ['bass clef, lower than a cello', { clef: 'F4', keys: ['B1'] }, null],
    ['sung', { keys: ['C5'], more: '<lyric><text>la</text></lyric>' }, null],
    ['a second staff', { keys: ['C5'], more: '<staff>2</staff>' }, null],
    ['named by a program', { name: 'MusicXML Part', keys: ['C5'] }, 'violin'],
    ['named by a number', { name: 'Part 2', keys: ['C5'] }, 'violin'],
    ['named otherwise', { name: 'Ocarina', keys: ['C5'] }, null],
    ['its instrument named otherwise', { listed: '<score-instrument id="I"><instrument-name>Ocarina</instrument-name></score-instrument>' }, null],
  ] as [string, Given, string | null][])('%s', (_, part, instrument) => {
    expect(guessed([part])).toEqual([instrument]);
  });

  it('nothing is guessed beside a part that is named a string, nor in a score of more than five such parts', () => {
    expect(guessed([{ name: 'Viola', clef: 'C3' }, {}])).toEqual(['viola', null]);
    expect(guessed([{}, {}, { clef: 'C3' }, { clef: 'F4', keys: ['C3'] }, { clef: 'F4', keys: ['C3'] }])).toEqual(['violin', 'violin', 'viola', 'cello', 'cello']);
    expect(guessed(Array.from({ length: 6 }, () => ({})))).toEqual([null, null, null, null, null, null]);
  });
});
