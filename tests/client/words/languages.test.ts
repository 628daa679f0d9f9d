import { describe, expect, it } from 'vitest';
import type { RefusalCode } from '../../../core/agreement/refusal.ts';
import { de } from '../../../client/words/de/de.ts';
import { en, type Words } from '../../../client/words/en.ts';
import { fr } from '../../../client/words/fr/fr.ts';
import { it as italian } from '../../../client/words/it/it.ts';
import { spokenIn } from '../../../client/words/language.ts';
import { parametersByPath } from './parameters.ts';

const OTHERS: [string, Words, RegExp, RegExp][] = [
  ['German', de, /\b(fehler\w*|(be)?nutzer\w*|aufgaben?|einreich\w*|genehmig\w*|ablehn\w*|ungültig\w*|bestätig\w*)\b/i, /\b(du|dein\w*|dir|dich)\b/i],
  ['French', fr, /\b(erreurs?|utilisateurs?|tâches?|soumettre|approuver|rejeter|valid\w*|invalides?|échec)\b|tableau de bord/i, /(?<!\p{L})(tu|ton|tes|toi)(?!\p{L})/iu],
  ['Italian', italian, /\b(errori?|utent[ei]|compit[oi]|approvare|rifiutare|sottoporre|valid[oa]|fallit[oa])\b/i, /\b(tu|tuo|tua|tuoi|tue)\b/i],
];

/** Said the same in English too. */
const ALIKE = new Set(['name', 'hair.unit', 'technical', 'shelf.personName', 'shelf.sectionName', 'shelf.instrument', 'rules.sources', 'plan.title', 'tools.short', 'keys.caps', 'marks', 'shelf.instruments', 'folder.text', 'seat.all']);

function texts(table: unknown, path = ''): [string, string][] {
  if (typeof table === 'string') return [[path, table]];
  return typeof table === 'object' && table !== null ? Object.entries(table).flatMap(([key, value]) => texts(value, path ? `${path}.${key}` : key)) : [];
}
const at = (table: unknown, path: string): unknown => path.split('.').reduce((value, key) => (value as Record<string, unknown>)[key], table);

/** Positions end where the fingerboard does; what a finding tells is tried on the rules. */
const parameters = [...parametersByPath()].filter(([path]) => path !== 'offers.position' && path !== 'fact');

/** Each blank filled with something that can be told from every other. */
function filled(types: readonly string[], flag: boolean): unknown[] {
  return types.map((type, i) => {
    if (type === 'number') return 111 * (i + 1);
    if (type === 'string' || type === 'string | null' || type === 'string | number') return `q${'abcdefgh'[i]!}q`;
    if (type === 'boolean') return flag;
    if (type === 'readonly string[]') return [`q${i}x`, `q${i}y`];
    if (type.startsWith("'down'")) return flag ? 'down' : 'up';
    return { mm: 777, zone: 'qzq', fingers: [1, 4] };
  });
}
const said = (table: Words, path: string, args: readonly unknown[]): string => (at(table, path) as (...given: unknown[]) => string)(...args);
const blanksIn = (text: string): string[] => [...new Set(text.toLowerCase().match(/q\wq|q\d[xy]|111|222|333|444|555|777/g) ?? [])].sort();

describe.each(OTHERS)('the words in %s', (_, table, office, familiar) => {
  it('have every text, none of them empty', () => {
    expect(texts(table).filter(([, text]) => !text.trim())).toEqual([]);
    expect(texts(table).map(([path]) => path).filter((path) => !/^(technical|findings|rulePages)\b/.test(path)).sort()).toEqual(texts(en).map(([path]) => path).sort());
  });

  it('fill the same blanks as the English ones', () => {
    const differing = parameters.flatMap(([path, types]) => [true, false].flatMap((flag) => {
      const args = filled(types, flag);
      const [english, other] = [said(en, path, args), said(table, path, args)];
      return String(blanksIn(english)) === String(blanksIn(other)) ? [] : [[path, english, other]];
    }));
    expect(differing).toEqual([]);
  });

  it('refuse with facts that English has too', () => {
    const open = (text: string) => text.match(/\{\w+\}/g) ?? [];
    for (const [code, text] of Object.entries(table.refusals)) expect(open(en.refusals[code as RefusalCode]), code).toEqual(expect.arrayContaining(open(text)));
  });

  it('say something whole for none, one, two and many', () => {
    for (const [path, types] of parameters) {
      for (const n of [0, 1, 2, 40]) {
        const text = said(table, path, filled(types, true).map((value) => (typeof value === 'number' ? n : value)));
        expect(text.trim(), path).not.toMatch(/^$|undefined|NaN|\[object| {2}| [.,;:]( |$)/);
      }
    }
  });

  it('are a player\'s, never an office\'s, and polite', () => {
    const all = [...texts(table).filter(([path]) => !path.startsWith('rules.sources')).map(([, text]) => text), ...parameters.map(([path, types]) => said(table, path, filled(types, true)))];
    expect(all.length).toBeGreaterThan(400);
    expect(all.filter((text) => office.test(text) || familiar.test(text))).toEqual([]);
  });

  it('are no English and need hardly more room', () => {
    const english = new Map(texts(en));
    const own = texts(table).filter(([path]) => ![...ALIKE].some((alike) => path.startsWith(alike)) && english.has(path));
    expect(own.filter(([path, text]) => /^[A-Za-z].*[a-z]{3}/.test(text) && english.get(path) === text && / /.test(text))).toEqual([]);
    expect(own.filter(([path, text]) => text.length > 1.7 * english.get(path)!.length + 22)).toEqual([]);
  });
});

describe('names by the habit of the language', () => {
  const bFlat = { step: 'B', alter: -1, octave: 4 } as const;
  const b = { step: 'B', alter: 0, octave: 4 } as const;
  const fSharp = { step: 'F', alter: 1, octave: 2 } as const;

  it('German tells B from H, the others sing', () => {
    expect([bFlat, b, fSharp].map(de.pitch)).toEqual(['b′', 'h′', 'Fis']);
    expect([bFlat, b, fSharp].map(fr.pitch)).toEqual(['si bémol 3', 'si 3', 'fa dièse 1']);
    expect([bFlat, b, fSharp].map(italian.pitch)).toEqual(['si bemolle 3', 'si 3', 'fa diesis 1']);
  });

  it('German octaves go from the lowest of the double bass to the highest of the violin', () => {
    const octaves = [1, 2, 3, 4, 7].map((octave) => de.pitch({ step: 'E', alter: 0, octave }));
    expect(octaves).toEqual(['E₁', 'E', 'e', 'e′', 'e′′′′']);
    expect(de.pitch({ step: 'A', alter: -1, octave: 3 })).toBe('as');
    expect(de.pitch({ step: 'B', alter: -2, octave: 3 })).toBe('heses');
  });
});

describe('the language spoken', () => {
  it('is the one kept, else the first of the browser\'s that is known, else English', () => {
    expect(spokenIn('it', ['de-AT'])).toBe('it');
    expect(spokenIn(null, ['da', 'fr-CH', 'de'])).toBe('fr');
    expect(spokenIn('nonsense', ['DE'])).toBe('de');
    expect(spokenIn(null, ['toString', 'fi'])).toBe('en');
  });
});
