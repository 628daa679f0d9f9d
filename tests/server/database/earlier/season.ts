import { randomUUID } from 'node:crypto';
import { comeIn, type Guest } from './guest.ts';

/** Who came in by the links that the server printed, and what they leave unused. */
export interface Cast {
  librarian: Guest;
  principal: Guest;
  player: Guest;
}
export interface Left {
  /** Made and never followed. */
  unusedLinks: { librarian: string; player: string };
  /** Followed before, and the session ended by its owner. */
  usedLink: string;
  endedCookie: string;
}

interface Content {
  measures: { notes: { id: string; rest?: true }[] }[];
}
interface Shelf {
  programmes: { id: string; works: { id: string; parts: { id: string; name: string }[] }[] }[];
  sections: { id: string; name: string; seats: { seat: string; person: { id: string } | null }[]; principal: { id: string } }[];
  people: { id: string; name: string }[];
}

/** Above the number of rows after which a snapshot is written, so that there is one of that version. */
const REMARKS = 190;
const DAY = { kind: 'rehearsal', date: '2027-03-01', time: '10:00', words: 'Small hall' };

const finger = (n: number) => ({ kind: 'finger', finger: n });
const firstNote = (content: Content, measure: number): string => content.measures[measure - 1]!.notes.find(({ rest }) => !rest)!.id;

/**
 * What a section does in a season, as far as a version of the server knows of it, on the demo that it began with: slips, votes, words, decisions,
 * a refusal, a snapshot, a corrected edition with marks that cannot go along, settings, seats, a hand, letters, an archive, wrong notes. Returns what was left
 * unused.
 */
export async function playSeason(address: string, { librarian, principal, player }: Cast): Promise<Left> {
  const shelf = JSON.parse((await librarian.ask('/api/shelf')).bytes.toString()) as Shelf;
  const programme = shelf.programmes[0]!;
  const work = programme.works[0]!;
  const part = work.parts.find(({ name }) => name === 'Violin I')!.id;
  const content = (JSON.parse((await principal.ask(`/api/parts/${part}`)).bytes.toString()) as { part: Content }).part;
  const does = (who: Guest, name: string, input: object) => who.say('POST', `/api/parts/${part}/operations/${name}`, { operation: randomUUID(), input });
  const slip = async (who: Guest, measure: number, value: object, seats: 'all' | string[] = 'all') => {
    const id = randomUUID();
    await does(who, 'propose', { id, from: measure, to: measure, seats, why: `For measure ${measure}.`, marks: [{ note: firstNote(content, measure), value }] });
    return id;
  };

  // Inked in for everybody, and otherwise for two inside players; three that stay where they are; one on a measure that the correction takes away.
  const inked = await slip(principal, 30, finger(2));
  await does(player, 'castVote', { proposal: inked, revision: 1, measure: 30, vote: 'for' });
  await does(principal, 'adopt', { proposal: inked, revision: 1, why: 'As on the record.' });
  const inside = await slip(principal, 30, finger(3), ['1i', '2i']);
  await does(principal, 'adopt', { proposal: inside, revision: 1, why: 'The inside players reach it better.' });
  const gone = await slip(player, 20, { kind: 'bow', bow: 'up' });
  const { seq: tuesday } = ((await does(principal, 'adopt', { proposal: gone, revision: 1, why: '' })) as { entry: { seq: number } }).entry;
  await does(principal, 'setAside', { proposal: await slip(player, 32, finger(4)), why: 'Too far.' });
  await does(player, 'withdraw', { proposal: await slip(player, 33, finger(1)), why: 'I misread it.' });
  const rewritten = await slip(player, 34, finger(1));
  await does(player, 'revise', { proposal: rewritten, from: 34, to: 34, seats: 'all', why: 'Rather this.', marks: [{ note: firstNote(content, 34), value: finger(2) }] });
  await does(principal, 'castVote', { proposal: rewritten, revision: 2, measure: 34, vote: 'against' });
  await principal.refused(`/api/parts/${part}/operations/castVote`, { operation: randomUUID(), input: { proposal: rewritten, revision: 2, measure: 34, vote: 'against' } });

  const remarks = Array.from({ length: REMARKS }, () => randomUUID());
  for (let i = 0; i < REMARKS; i += 10) await Promise.all(remarks.slice(i, i + 10).map((id, n) => does(player, 'comment', { id, measure: 1 + ((i + n) % 40), proposal: null, answers: null, text: `Grüße ${i + n}: „leiser“ 𝄞` })));
  await does(principal, 'comment', { id: randomUUID(), measure: 1, proposal: null, answers: remarks[0], text: 'Yes.' });
  await does(player, 'resolveComment', { id: remarks[1] });
  await does(principal, 'mute', { id: randomUUID(), rule: 'bow/bow-runs-out', place: '*', reason: 'We know.', fingerprint: null });
  await does(principal, 'moveOn', { stage: 'inkedIn' });
  await does(librarian, 'lock', {});
  await does(librarian, 'unlock', {});

  await librarian.say('PUT', `/api/sections/${shelf.sections[0]!.id}/settings`, { assumedTempo: 76, openStrings: 'avoided' });
  const violas = shelf.sections.find(({ name }) => name === 'Viola')!;
  const people = violas.seats.map(({ person }) => person?.id ?? null).toReversed();
  const plan = { seats: violas.seats.map(({ seat }, index) => ({ seat, person: people[index]! })), principal: violas.principal.id };
  await librarian.say('PUT', `/api/sections/${violas.id}/seating`, plan);
  await librarian.say('PUT', '/api/me/hand', { factor: 1.05, shortFourth: false });
  await player.say('PUT', '/api/me/hand', { factor: 0.92, shortFourth: true });
  await player.say('PUT', '/api/me/letters', { address: 'marek@varnholm.example', language: 'de' });
  await player.say('PUT', `/api/parts/${part}/seen`, { seq: 40 });
  await librarian.say('PUT', `/api/programmes/${programme.id}`, { title: 'Tide Tables', season: '2026/27', conductor: 'Odile Marchetti', days: [DAY], deadlines: { roundSection: '2027-02-01', inkedIn: null } });
  await librarian.say('PUT', `/api/programmes/${programme.id}/sections/${violas.id}/seating`, { ...plan, seats: plan.seats.slice(0, 4) });
  await librarian.say('POST', `/api/works/${work.id}/keep`, { ensemble: 'Varnholm Strings', conductor: 'Odile Marchetti', season: '2026/27' });
  const erratum = (await player.say('POST', `/api/parts/${part}/errata`, { measure: 12, says: 'A', should: 'A flat' })) as { id: string } | null;
  await player.say('POST', `/api/parts/${part}/errata`, { measure: 14, says: 'no slur', should: 'a slur' });
  if (erratum) await librarian.say('PUT', `/api/errata/${erratum.id}/settled`, { settled: true });
  await does(principal, 'adopt', { proposal: await slip(principal, 36, finger(3)), revision: 1, why: '' });
  await does(principal, 'restore', { seq: tuesday, why: 'Back to Tuesday.' });

  await librarian.upload(`/api/works/${work.id}/editions`, 'low-water-2.musicxml', corrected((await librarian.ask(`/api/parts/${part}/source`)).bytes.toString()));
  const carried = await principal.ask(`/api/parts/${part}/carried`);
  if (carried.status === 200) {
    const { revision, places } = JSON.parse(carried.bytes.toString()) as { revision: number; places: { marks: { key: string }[] }[] };
    await principal.say('POST', `/api/parts/${part}/carried`, { revision, key: places.flatMap(({ marks }) => marks)[0]!.key, how: 'leftOut' });
  }
  await does(player, 'castVote', { proposal: rewritten, revision: 2, measure: carried.status === 200 ? 33 : 34, vote: 'for' });

  const linkFor = async (name: string) => ((await librarian.say('POST', `/api/people/${shelf.people.find((one) => one.name === name)!.id}/link`)) as { link: string }).link;
  const usedLink = await linkFor('Celia Vantongel');
  const left = await comeIn(address, usedLink);
  const endedCookie = left.cookie();
  await left.say('POST', '/api/sign-out');
  return { unusedLinks: { librarian: await linkFor('Agnes Whitlow'), player: await linkFor('Oren Halvard') }, usedLink, endedCookie };
}

/** Every part one measure shorter, and one pitch of it otherwise: marks of measure 20 cannot go along, and later ones stand a measure earlier. */
function corrected(score: string): string {
  return score.replace(/<measure number="19".*?<\/measure>\s*/gs, '').replace(/(<measure number="21".*?<step>)[A-G]/gs, '$1B');
}
