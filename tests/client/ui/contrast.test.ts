import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const CSS = readFileSync(join(import.meta.dirname, '../../../client/ui/styles/tokens.css'), 'utf8');
const colours = (selector: string): Map<string, string> => new Map([...CSS.slice(CSS.indexOf(selector)).split('}')[0]!.matchAll(/--([a-z-]+): (#[0-9a-f]{6})/g)].map(([, name, value]) => [name!, value!]));
const day = colours(':root');
const stand = new Map([...day, ...colours("[data-light='stand']")]);

/** Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.2, "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
function contrast(one: string, other: string): number {
  const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (high! + 0.05) / (low! + 0.05);
}

/** What is read, on what, and the least contrast: 7 for what is played from, 4.5 for words (success criterion 1.4.3), 3 for lines (1.4.11). */
const PAIRS: [string, string, number][] = [
  ['ink', 'paper', 7], ['ink', 'slip', 7], ['ink', 'rosin', 7], ['graphite', 'paper', 7], ['graphite', 'slip', 4.5], ['graphite', 'rosin', 4.5],
  ['quiet', 'paper', 4.5], ['quiet', 'slip', 4.5], ['rosin-ink', 'paper', 4.5], ['rosin-ink', 'slip', 4.5], ['red', 'paper', 4.5], ['red', 'slip', 4.5], ['red', 'rosin', 4.5],
  ['blue', 'paper', 4.5], ['blue', 'slip', 4.5], ['blue', 'rosin', 4.5], ['ledge-ink', 'ledge', 7], ['ledge-quiet', 'ledge', 4.5], ['ledge-red', 'ledge', 4.5],
  ['staff', 'paper', 3], ['rule', 'paper', 3], ['rosin-edge', 'paper', 3],
];

describe('the colours', () => {
  it('have the ratios of the guidelines’ own ends: black on white 21, a colour on itself 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#1b4c8c', '#1b4c8c')).toBe(1);
  });

  it.each([['daylight', day], ['stand light', stand]] as const)('reach their floors in %s', (_light, palette) => {
    const short = PAIRS.map(([on, under, floor]) => ({ on, under, floor, ratio: contrast(palette.get(on)!, palette.get(under)!) })).filter(({ ratio, floor }) => ratio < floor);
    expect(short).toEqual([]);
  });
});
