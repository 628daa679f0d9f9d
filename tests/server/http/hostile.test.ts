import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as documents from '../../../server/jobs/documents.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

let house: House;
let librarian: Visitor;
let programme: string;
beforeAll(async () => {
  const store = await inMemory();
  house = await openHouse(store, { documents });
  librarian = await house.signIn(await store.people.add('Lena Ashgrove', true));
  programme = (await librarian.post('/api/programmes', { title: 'Storm' })).json.id;
});
afterAll(() => house.close());

const HEAD = '<?xml version="1.0"?><score-partwise><part-list><score-part id="P1"><part-name>Violin</part-name></score-part></part-list>';
const entities = Array.from({ length: 12 }, (_, n) => `<!ENTITY a${n + 1} "${`&a${n};`.repeat(10)}">`).join('');
const ATTACKS: [string, string][] = [
  ['nesting 300,000 deep', HEAD + '<a>'.repeat(300_000)],
  ['a comment of 20 MB', `${HEAD}<!--${'x'.repeat(20_000_000)}-->`],
  ['entities that multiply', `<?xml version="1.0"?><!DOCTYPE s [<!ENTITY a0 "boom">${entities}]><score-partwise>&a12;</score-partwise>`],
  ['a file of the house through an entity', '<?xml version="1.0"?><!DOCTYPE s [<!ENTITY f SYSTEM "file:///etc/passwd">]><score-partwise>&f;</score-partwise>'],
  ['an archive that is none', 'PK\u0003\u0004 and nothing of the kind'],
  ['nothing at all', ''],
];

describe('while a hostile file is read', () => {
  it.each(ATTACKS)('%s: it is refused with a sentence, and others are answered meanwhile', async (_name, content) => {
    let refused = false;
    const upload = librarian.upload(`/api/programmes/${programme}/works`, content, 'storm.musicxml').finally(() => (refused = true));
    let answered = 0;
    while (!refused) {
      expect((await house.visitor().get('/api/health')).status).toBe(200);
      answered += 1;
      await new Promise((resolve) => setImmediate(resolve));
    }
    expect(await upload).toMatchObject({ status: 422, json: { code: expect.stringMatching(/^[A-Z_]+$/), text: expect.stringMatching(/.{20,}/) } });
    expect(answered).toBeGreaterThan(0);
    expect((await librarian.get('/api/shelf')).json.programmes[0].works).toEqual([]);
    expect(house.lines).toEqual([]);
  });
});
