import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meantBy, mentionsIn, namedSoFar, piecesOf } from '../../../../client/tools/line/mentions.ts';

const people = [{ id: 'o', name: 'Oren Halvard' }, { id: 'i', name: 'Ilse Tarnow' }, { id: 'e', name: 'Élise Oban' }, { id: 'j', name: 'Ilse' }];
const ids = (said: string) => meantBy(said, people).map(({ id }) => id);

describe('a name being typed', () => {
  it('begins at an @ that stands by itself and ends with a stop', () => {
    expect([namedSoFar('see @Or', 7), namedSoFar('@', 1), namedSoFar('a@b', 3), namedSoFar('no name', 7), namedSoFar('@Oren, look', 11)]).toEqual([{ from: 4, said: 'Or' }, { from: 0, said: '' }, null, null, null]);
  });

  it('is read where the caret stands, not at the end', () => {
    expect(namedSoFar('@Il and more', 3)).toEqual({ from: 0, said: 'Il' });
  });

  it('means whoever has a word that begins so, with or without accents', () => {
    expect([ids('o'), ids('tar'), ids('elise'), ids('')]).toEqual([['o', 'e'], ['i'], ['e'], ['o', 'i', 'e', 'j']]);
  });

  it('is asked for no more once it stands there whole', () => {
    expect([ids('Oren Halvard'), ids('Oren Halvard shall')]).toEqual([[], []]);
  });
});

describe('names in what is said', () => {
  it('the longer of two names that begin alike is meant', () => {
    expect(mentionsIn('@Ilse Tarnow and nobody else', people)).toEqual([{ person: 'i', name: 'Ilse Tarnow' }]);
    expect(mentionsIn('@Ilse and @Ilse Tarnow', people).map(({ person }) => person).sort()).toEqual(['i', 'j']);
    expect(mentionsIn('Ilse Tarnow without the sign', people)).toEqual([]);
  });

  it('are drawn as names, the rest as it was', () => {
    expect(piecesOf('As @Ilse Tarnow said', [{ person: 'i', name: 'Ilse Tarnow' }])).toEqual([{ text: 'As ', person: null }, { text: 'Ilse Tarnow', person: 'i' }, { text: ' said', person: null }]);
    expect(piecesOf('plain')).toEqual([{ text: 'plain', person: null }]);
  });

  it('law: the pieces joined are the text without the @ of each name', () => {
    const word = fc.constantFrom('and', 'but', '@', '@Ilse', '@Ilse Tarnow', '@Nobody');
    fc.assert(
      fc.property(fc.array(word), (said) => {
        const text = said.join(' ');
        const mentions = mentionsIn(text, people);
        const expected = text.replaceAll(/@(?=Ilse)/g, '');
        return piecesOf(text, mentions).map((piece) => piece.text).join('') === (mentions.length === 0 ? text : mentions.length === 1 && mentions[0]!.person === 'i' ? text.replaceAll('@Ilse Tarnow', 'Ilse Tarnow') : expected);
      }),
    );
  });
});
