import { afterEach, describe, expect, it } from 'vitest';
import { exampleOf, families } from '../../../client/views/rules/families.ts';
import { findingText } from '../../../client/views/findingText.ts';
import { de } from '../../../client/words/de/de.ts';
import { en } from '../../../client/words/en.ts';
import { fr } from '../../../client/words/fr/fr.ts';
import { it as italian } from '../../../client/words/it/it.ts';
import { speak } from '../../../client/words/words.ts';
import { RULES } from '../../../core/check/registry.ts';

const blanks = (text: string): string[] => [...new Set(text.match(/\{\w+\}/g) ?? [])];
const name = (ordinal: number): string => String(ordinal + 100);
const finding = { rule: 'fingering/exposed-slide', message: 'slides', text: 'In English.', measure: 4, seats: ['2o'], facts: { distance: { count: 1, of: 'semitone' }, pitch: { pitch: { step: 'B', alter: -1, octave: 4 } } } } as const;

describe('findings in another language', () => {
  afterEach(() => speak(en));

  it.each([['German', de], ['French', fr], ['Italian', italian]] as const)('in %s say every message of every rule, with blanks that the rule fills', (_, spoken) => {
    const english = RULES.flatMap(({ id, messages }) => Object.entries(messages).map(([key, text]) => [`${id} ${key}`, text] as const));
    const said = new Map(Object.entries<Readonly<Record<string, string>>>(spoken.findings).flatMap(([id, messages]) => Object.entries(messages).map(([key, text]) => [`${id} ${key}`, text] as const)));
    expect([...said.keys()].sort()).toEqual(english.map(([key]) => key).sort());
    for (const [key, text] of english) expect(blanks(text), key).toEqual(expect.arrayContaining(blanks(said.get(key)!)));
    expect([...said.values()].filter((text) => !/[.]$/.test(text) || /\b(fehler|benutzer|aufgabe)/i.test(text))).toEqual([]);
  });

  it.each([['German', de], ['French', fr], ['Italian', italian]] as const)('and the pages of the rules in %s say of every rule what holds and why', (_, spoken) => {
    expect(Object.keys(spoken.rulePages).sort()).toEqual(RULES.map(({ id }) => id).sort());
    expect(Object.values(spoken.rulePages).flat().filter((text) => !/^[A-ZÀ-ÜL].*[.]$/.test(text))).toEqual([]);
    speak(spoken);
    const pages = families().flatMap(({ rules }) => rules);
    const own = new Set(RULES.flatMap(({ summary, why, messages }) => [summary, why, ...Object.values(messages)]));
    expect(pages.flatMap(({ summary, why, messages }) => [summary, why, ...Object.values(messages)]).filter((text) => own.has(text))).toEqual([]);
    expect(pages.flatMap(({ messages }) => Object.values(messages).map(exampleOf)).filter((text) => /[{}]|measure|desk/.test(text))).toEqual([]);
  });

  it('name place, players, pitch and distance by the habit of the language', () => {
    speak(de);
    expect(findingText({ ...finding, seats: [...finding.seats] }, name)).toMatch(/^Pult 2 außen: der Lagenwechsel um etwa 1 Halbton zu b′ in Takt 104 liegt/);
  });

  it('name measures as French and Italian sentences go on', () => {
    speak(fr);
    expect(findingText({ ...finding, seats: [...finding.seats] }, name)).toMatch(/^Rang 2 extérieur : le démanché d’environ 1 demi-ton vers si bémol 3 dans la mesure 104 est/);
    speak(italian);
    expect(findingText({ ...finding, seats: [...finding.seats] }, name)).toMatch(/^Leggio 2 esterno: il cambio di posizione di circa 1 semitono verso si bemolle 3 a battuta 104 sta/);
  });

  it('stand in English where a rule has no sentence yet', () => {
    expect(findingText({ ...finding, rule: 'fingering/none-yet', seats: [...finding.seats] }, name)).toBe('In English.');
  });

  it('leave no blank open for any kind of fact', () => {
    const facts = [3, 0.5, 'up', 'II', { pitch: null }, { count: 0, of: 'quarter' }, { count: 2, of: 'unmarked bow' }, { measure: 7 }, { seats: ['1o', '3i'] }, { names: ['Violine II', 'Viola'] }, { assumedTempo: 90 }, { assumedDynamic: 'mf' }] as const;
    expect(facts.map((fact) => de.fact(fact as Parameters<typeof de.fact>[0], name))).toEqual([
      '3', '0,5', 'Aufstrich', 'II', 'dieser Note', 'keine eigene Zeit', '2 unbezeichneten Strichen', 'Takt 107', 'Pult 1 außen, Pult 3 innen', 'Violine II und Viola', ', wenn ein Viertel 90 geht', 'mf (noch ist keine Lautstärke gedruckt)',
    ]);
  });
});
