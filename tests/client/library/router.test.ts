import { describe, expect, it } from 'vitest';
import { addressOf, placeOf, type Place } from '../../../client/router.ts';
import { troubleText, Refused } from '../../../client/library/http.ts';

const read = (address: string) => {
  const [path = '', search] = address.split('?');
  return placeOf(path, search === undefined ? '' : `?${search}`);
};

describe('addresses', () => {
  it.each<Place>([
    { at: 'shelf' },
    { at: 'signIn', token: null },
    { at: 'signIn', token: 'a+b/c=' },
    { at: 'signIn', token: 'abc', invited: true },
    { at: 'signIn', token: null, came: true },
    { at: 'signIn', token: null, trouble: 'LINK_USED' },
    { at: 'signIn', token: null, confirm: 'a-b_c' },
    { at: 'folder', programme: 'p 1' },
    { at: 'stand', part: 'x', measure: null },
    { at: 'stand', part: 'x/y', measure: 46 },
    { at: 'stand', part: 'x', measure: 3, open: '' },
    { at: 'stand', part: 'x', measure: 3, open: 'a slip/1' },
    { at: 'rules', rule: null },
    { at: 'rules', rule: 'bow/same-direction' },
    { at: 'section', part: 'x', passage: null },
    { at: 'section', part: 'x', passage: { first: 'a b', last: 'c&d' } },
  ])('%o comes back from its address', (place) => {
    expect(read(addressOf(place))).toEqual(place);
  });

  it('an address nobody gave leads to the shelf', () => {
    expect([read('/'), read('/stand'), read('/folder/'), read('/elsewhere/1')].map(({ at }) => at)).toEqual(['shelf', 'shelf', 'shelf', 'shelf']);
  });
});

describe('what went wrong', () => {
  it('says what the library said, and where in the file, once', () => {
    const fault = new Refused({ code: 'BAD', text: 'The file ends too soon.', line: 12, measure: '3', element: 'note' }, 422);
    expect(troubleText(fault)).toBe('The file ends too soon. Where: line 12, measure 3, <note>.');
    expect(troubleText(new Refused({ code: 'BAD', text: 'Broken at line 12, in measure 3.', line: 12 }, 422))).toBe('Broken at line 12, in measure 3.');
  });

  it('gives the name to say over the telephone', () => {
    expect(troubleText(new Refused({ code: 'BUG', text: 'Something broke.', incident: 'heron 4127' }, 500))).toContain('heron 4127');
  });
});
