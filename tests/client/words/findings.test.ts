import { afterEach, describe, expect, it } from 'vitest';
import { findingText } from '../../../client/views/findingText.ts';
import { de } from '../../../client/words/de/de.ts';
import { en } from '../../../client/words/en.ts';
import { fr } from '../../../client/words/fr/fr.ts';
import { speak } from '../../../client/words/words.ts';
import { RULES } from '../../../core/check/registry.ts';

const blanks = (text: string): string[] => [...new Set(text.match(/\{\w+\}/g) ?? [])];
const name = (ordinal: number): string => String(ordinal + 100);
const finding = { rule: 'fingering/exposed-slide', message: 'slides', text: 'In English.', measure: 4, seats: ['2o'], facts: { distance: { count: 1, of: 'semitone' }, pitch: { pitch: { step: 'B', alter: -1, octave: 4 } } } } as const;

describe('findings in another language', () => {
  afterEach(() => speak(en));

  it('in German say every message of every rule, with blanks that the rule fills', () => {
    const english = RULES.flatMap(({ id, messages }) => Object.entries(messages).map(([key, text]) => [`${id} ${key}`, text] as const));
    const german = new Map(Object.entries(de.findings).flatMap(([id, messages]) => Object.entries(messages).map(([key, text]) => [`${id} ${key}`, text] as const)));
    expect([...german.keys()].sort()).toEqual(english.map(([key]) => key).sort());
    for (const [key, text] of english) expect(blanks(text), key).toEqual(expect.arrayContaining(blanks(german.get(key)!)));
    expect([...german.values()].filter((text) => !/[.]$/.test(text) || /\b(fehler|benutzer|aufgabe)/i.test(text))).toEqual([]);
  });

  it('name place, players, pitch and distance by the habit of the language', () => {
    speak(de);
    expect(findingText({ ...finding, seats: [...finding.seats] }, name)).toMatch(/^Pult 2 außen: der Lagenwechsel um etwa 1 Halbton zu b′ in Takt 104 liegt/);
  });

  it('stand in English where a language has no sentence for them yet', () => {
    speak(fr);
    expect(findingText({ ...finding, seats: [...finding.seats] }, name)).toBe('In English.');
  });

  it('leave no blank open for any kind of fact', () => {
    const facts = [3, 0.5, 'up', 'II', { pitch: null }, { count: 0, of: 'quarter' }, { count: 2, of: 'unmarked bow' }, { measure: 7 }, { seats: ['1o', '3i'] }, { names: ['Violine II', 'Viola'] }, { assumedTempo: 90 }, { assumedDynamic: 'mf' }] as const;
    expect(facts.map((fact) => de.fact(fact as Parameters<typeof de.fact>[0], name))).toEqual([
      '3', '0,5', 'Aufstrich', 'II', 'dieser Note', 'keine eigene Zeit', '2 unbezeichneten Strichen', 'Takt 107', 'Pult 1 außen, Pult 3 innen', 'Violine II und Viola', ', wenn ein Viertel 90 geht', 'mf (noch ist keine Lautstärke gedruckt)',
    ]);
  });
});
