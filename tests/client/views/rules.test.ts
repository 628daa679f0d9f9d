import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleOf, families } from '../../../client/views/rules/families.ts';
import { words } from '../../../client/words/words.ts';

const root = join(import.meta.dirname, '../../..');
const all = families().flatMap(({ rules }) => rules);

describe('the pages about the rules', () => {
  it('name every family in words', () => {
    expect(families().map(({ name }) => name).sort()).toEqual(Object.keys(words.rules.families).sort());
  });

  it('name every source that stands in core/SOURCES.md and that a rule cites', () => {
    const listed = [...readFileSync(join(root, 'core/SOURCES.md'), 'utf8').matchAll(/^\| `([\w-]+)` \|/gm)].map(([, key]) => key!);
    const cited = [...new Set(all.flatMap(({ source }) => source))];
    expect(cited.filter((key) => !listed.includes(key) || !words.rules.sources[key])).toEqual([]);
  });

  it('leave no blank open in what a rule says', () => {
    const examples = all.flatMap(({ messages }) => Object.values(messages).map(exampleOf));
    expect(examples.length).toBeGreaterThan(40);
    expect(examples.filter((text) => !/^[A-Z][^{}]*measure 46[^{}]*\.$/.test(text))).toEqual([]);
  });

  it('speak a player’s words', () => {
    const office = /\b(submit|approve|reject|dashboard|items?|tasks?|users?|errors?|invalid|safe)\b/i;
    const texts = all.flatMap(({ summary, why, messages }) => [summary, why, ...Object.values(messages)]);
    expect([...texts, JSON.stringify(words.rules)].filter((text) => office.test(text))).toEqual([]);
  });

  it('put a place and players into the blanks', () => {
    expect(exampleOf('{Who}: in {where} one bow lasts {seconds} s ({who}).')).toBe('Desk 2 outside: in measure 46 one bow lasts … s (desk 2 outside).');
  });
});
