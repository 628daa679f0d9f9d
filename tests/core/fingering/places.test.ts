import { describe, expect, it } from 'vitest';
import { placesOf } from '../../../core/fingering/placesOf.ts';
import { holdsTogether } from '../../../core/fingering/stops.ts';
import type { Place } from '../../../core/fingering/frame.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';

const violin = instrumentNamed('violin');
const stopped = (string: 1 | 2 | 3 | 4, finger: number, position: number, above: number): Place => ({ string, finger, position, above, off: 0, respelled: 0 });
const asSpelled = (midi: number, step: number) => placesOf(violin, midi, step).filter(({ respelled, finger }) => respelled === 0 && finger === 1).map(({ string, position }) => `${string}:${position}`);

describe('places on the strings', () => {
  it('follow the letter name: G sharp and A flat on the E string have finger 1 in two positions', () => {
    expect(asSpelled(80, 39)).toContain('1:2');
    expect(asSpelled(80, 40)).toContain('1:3');
  });

  it('an open string has finger 0 and nothing stopped on that string', () => {
    expect(placesOf(violin, 69, 33).filter(({ string }) => string === 2).every(({ finger }) => finger === 0)).toBe(true);
  });

  it.each([['violin', 54], ['viola', 47], ['cello', 35], ['double-bass', 27]] as const)('the %s has none below its lowest string', (name, midi) => {
    expect(placesOf(instrumentNamed(name), midi, 20)).toEqual([]);
    expect(placesOf(instrumentNamed(name), midi + 1, 20)).not.toEqual([]);
  });

  it('the cello hand spans a minor third closed, a major third extended, and 2-3-4 stay a semitone apart', () => {
    const spans = new Map<string, Set<number>>();
    for (let midi = 58; midi <= 68; midi += 1) {
      for (const { string, finger, position, above, off } of placesOf(instrumentNamed('cello'), midi, 0)) {
        if (string !== 1 || finger === 0 || position > 13) continue;
        const key = `${finger}${off === 1 ? 'x' : ''}`;
        spans.set(key, (spans.get(key) ?? new Set()).add(above - position));
      }
    }
    expect(Object.fromEntries([...spans].map(([key, values]) => [key, [...values]]))).toEqual({ 1: [0], 2: [1], 3: [2], 4: [3], '2x': [2], '3x': [3], '4x': [4] });
  });

  it("the cello's fourth finger does not go above G sharp on the A string", () => {
    expect(placesOf(instrumentNamed('cello'), 68, 0).some(({ string, finger }) => string === 1 && finger === 4)).toBe(true);
    expect(placesOf(instrumentNamed('cello'), 69, 0).some(({ string, finger }) => string === 1 && finger === 4)).toBe(false);
  });
});

describe('what one hand holds at once', () => {
  it.each([
    ['an octave 1-4', [stopped(3, 1, 1, 2), stopped(2, 4, 1, 7)]],
    ['a fingered octave 1-3', [stopped(3, 1, 5, 9), stopped(2, 3, 6, 14)]],
    ['a sixth 1-2', [stopped(3, 1, 1, 2), stopped(2, 2, 1, 4)]],
    ['a fifth with one finger', [stopped(3, 2, 1, 4), stopped(2, 2, 1, 4)]],
    ['an open string with anything', [stopped(4, 0, 1, 0), stopped(3, 4, 3, 11)]],
  ])('%s', (_name, places) => expect(holdsTogether(violin, places)).toBe(true));

  it.each([
    ['two notes of one string', [stopped(3, 1, 1, 2), stopped(3, 3, 1, 5)]],
    ['two strings with one between', [stopped(4, 1, 1, 2), stopped(2, 2, 1, 4)]],
    ['one finger at two places', [stopped(3, 2, 1, 4), stopped(2, 2, 1, 3)]],
    ['fingers out of order', [stopped(3, 3, 1, 3), stopped(2, 1, 1, 5)]],
    ['an octave and a half from 1 to 4', [stopped(3, 1, 1, 1), stopped(2, 4, 2, 12)]],
  ])('not %s', (_name, places) => expect(holdsTogether(violin, places)).toBe(false));
});
