import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../core/check/checkPart.ts';
import { settingsFault } from '../../../core/check/settingsFault.ts';
import { partOf } from '../../support/partBuilder.ts';

describe('what is wrong with a section’s settings', () => {
  it.each<[string, unknown]>([
    ['nothing set', {}],
    ['a bass with extension', { lowestString: 24 }],
    ['a key of someone else', { printSize: 7 }],
    ['one dynamic of the bow table', { bowSeconds: { pp: 14 } }],
  ])('nothing: %s', (_, settings) => {
    expect(settingsFault(settings, 'double-bass')).toBeNull();
    expect(() => checkPart({ part: partOf('G2:4', { instrument: 'double-bass' }), seats: [], marks: [], settings: settings as Record<string, unknown> })).not.toThrow();
  });

  it.each<[string, unknown, RegExp]>([
    ['a word for a number', { assumedTempo: 'fast' }, /^assumedTempo: .*\.$/],
    ['a bow of no length', { bowSeconds: { f: 0 } }, /^bowSeconds\.f: A bow lasts more than 0 seconds\.$/],
    ['a lowest string above the third', { lowestString: 40 }, /^lowestString: .* below 33\.$/],
    ['no settings at all', null, /expected object/],
  ])('%s is named', (_, settings, sentence) => {
    expect(settingsFault(settings, 'double-bass')).toMatch(sentence);
  });
});
