import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../../core/check/checkPart.ts';
import { fingerLine } from '../../../../core/fingering/fingerLine.ts';
import { lineOfPart } from '../../../../core/fingering/partLine.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import type { Mark } from '../../../../core/music/mark.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { partOf } from '../../../support/partBuilder.ts';

const NAMES = ['C', 'C#', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'];
const named = (midi: number): string => `${NAMES[midi % 12]}${Math.floor(midi / 12) - 1}`;

/** A line in quarters that leaps a sixth at most. */
const walk = (low: number, high: number) =>
  fc.tuple(fc.integer({ min: low, max: high }), fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 3, maxLength: 10 })).map(([start, leaps]) => leaps.reduce((line, leap) => [...line, Math.min(high, Math.max(low, line.at(-1)! + leap))], [start]));

describe('what the engine suggests, marked in full', () => {
  it.each([['violin', 55, 88], ['viola', 48, 80], ['cello', 36, 69]] as const)('is never called unplayable on the %s, nor crossed, nor too wide', (name, low, high) => {
    fc.assert(
      fc.property(walk(low, high), (pitches) => {
        const part = partOf(`{q=80} ${pitches.map((midi) => `${named(midi)}:1`).join(' ')}`, { instrument: name });
        const { line } = lineOfPart(part, 1, 1);
        const { fingerings } = fingerLine(instrumentNamed(name), line, 80, { best: 2 });
        for (const { notes } of fingerings) {
          const marks = notes.flatMap(({ id, finger, string }): Mark[] => [{ note: id, value: { kind: 'finger', finger } }, { note: id, value: { kind: 'string', string } }]);
          const findings = checkPart({ part, seats: seatsFor(4), marks, settings: {} }).filter(({ rule }) => rule.startsWith('fingering/') && rule !== 'fingering/same-music');
          expect(findings.map(({ text }) => text)).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
