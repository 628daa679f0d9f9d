import { beforeAll, describe, expect, it } from 'vitest';
import { inForce } from '../../../core/agreement/inForce.ts';
import type { AgreementState } from '../../../core/agreement/state.ts';
import type { Part } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { checkPart } from '../../../core/check/checkPart.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { fillDemo, type DemoAnswer, type DemoDeps } from '../../../server/demo/fillDemo.ts';
import { createAuthority } from '../../../server/operations/authority.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

const store = await inMemory();
const authority = createAuthority(store);
const deps: DemoDeps = {
  store, authority,
  signInLink: async (person) => `link of ${person.name}`,
  async layScore(programme, { bytes, fileName }, by) {
    const read = readScore(new TextDecoder().decode(bytes));
    if (!read.ok) throw new Error(read.fault.text);
    const sections = await store.sections.all();
    const parts = read.score.parts.map((content) => ({ content, section: sections.find(({ name }) => name === content.name)?.id ?? null }));
    return (await store.library.addWork(programme, { title: read.score.title, composer: read.score.composer }, { bytes, fileName, by: by.id, at: new Date() }, parts))!;
  },
};

let answer: DemoAnswer;
let part: Part;
let state: AgreementState;
beforeAll(async () => {
  answer = await fillDemo(deps);
  const { id } = (await store.library.programmes())[0]!.works[0]!.parts[0]!;
  part = (await store.library.part(id))!.content;
  state = (await authority.current(id))!.state;
});

describe('the demo', () => {
  it('seats 12, 10, 8, 6 and 4 players, each person in one place, and gives three links', async () => {
    const sections = await store.sections.all();
    expect(sections.map(({ seats }) => seats.length)).toEqual([12, 10, 8, 6, 4]);
    const seated = sections.flatMap(({ seats }) => seats.map(({ person }) => person?.name));
    expect(new Set(seated).size).toBe(40);
    expect(answer).toMatchObject({ filled: true, links: [{ role: 'principal', name: 'Ilse Tarnow' }, { role: 'player', name: 'Marek Dvorsin' }, { role: 'librarian', name: 'Agnes Whitlow' }] });
    expect(sections[0]!.principal?.name).toBe('Ilse Tarnow');
  });

  it('puts each of the five parts on the stands of its section', async () => {
    const [programme] = await store.library.programmes();
    expect(programme!.works[0]!.parts.map(({ name, section }) => [name, section?.name])).toEqual(
      ['Violin I', 'Violin II', 'Viola', 'Violoncello', 'Double bass'].map((name) => [name, name]));
  });

  it('leaves one measure open with the slips a, b and c, with votes for and against and an answered question', () => {
    const measure = part.measures.find(({ number }) => number === '46')!.ordinal;
    const slips = Object.values(state.proposals).filter(({ status, from }) => status === 'open' && from === measure);
    expect(slips.map(({ letter }) => letter)).toEqual(['a', 'b', 'c']);
    for (const { votes } of slips) expect(new Set(Object.values(votes[measure]!))).toEqual(new Set(['for', 'against']));
    expect(Object.values(state.comments).some(({ answers }) => answers !== null)).toBe(true);
  });

  it('keeps what was superseded and what was set aside, with who and why', () => {
    expect(state.ink.filter(({ superseded }) => superseded !== null).map(({ superseded }) => superseded!.name)).toEqual(['Ilse Tarnow']);
    expect(Object.values(state.proposals).filter(({ status }) => status === 'setAside').map(({ decided }) => decided!.why.length > 10)).toEqual([true]);
  });

  it('gives the checker the collision at desk 4 and little else', () => {
    const findings = checkPart({ part, seats: seatsFor(12), marks: inForce(state, seatsFor(12)), settings: {} });
    const collisions = findings.filter(({ rule }) => rule === 'desk/partners-change-together');
    expect(collisions.map(({ measure, seats }) => [part.measures[measure - 1]!.number, seats])).toEqual([['49', ['4o', '4i']]]);
    expect(findings.length, findings.map(({ text }) => text).join('\n')).toBeLessThanOrEqual(6);
  });

  it('is not written twice: the second time it says so and gives the links again', async () => {
    const again = await fillDemo(deps);
    expect(again.filled).toBe(false);
    expect(again.links).toHaveLength(3);
    expect(await store.library.programmes()).toHaveLength(1);
  });
});
