import { isTremolo, turned } from '../../../core/bowing/strokes.ts';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import type { Note } from '../../../core/music/part.ts';
import { quarters } from '../../../core/music/time.ts';
import type { Chance } from '../../support/chance.ts';
import { above, type Bow, fingerOn, type House, stringOn } from './house.ts';
import { SEATS } from './marked.ts';

export interface Planted {
  added: Mark[];
  /** Marks the fault takes away. */
  removed?: readonly Mark[];
  /** The note it stands on. */
  note: string;
}

/** One way to spoil a part, and the rules of which one has to say so. */
export interface Fault {
  name: string;
  /** At least one of them has to speak. */
  says: readonly string[];
  /** May speak as well: what the same slip breaks besides. */
  also?: readonly string[];
  /** How often it is planted in a part, where few parts have room for it. */
  times?: number;
  plant(house: House, chance: Chance): Planted | null;
}

/** A planted fault as it is judged. */
export interface Trial {
  name: string;
  says: readonly string[];
  also: readonly string[];
  measure: number;
}

const on = (note: string, value: MarkValue, seats?: Mark['seats']): Mark => ({ note, value, ...(seats ? { seats } : {}) });

/** A note picked at random among those that fit. */
function oneOf(house: House, chance: Chance, fits: (note: Note) => boolean): Note | null {
  const all = [...house.notes.values()].filter((note) => !note.hidden && !note.cue && !note.grace && fits(note));
  return all.length ? chance.pick(all) : null;
}

const single = (house: House, note: Note): boolean => house.events.get(note.id)?.notes.length === 1 && !note.rest && note.midi !== undefined;
const plain = (house: House, note: Note): boolean => single(house, note) && !note.pizzicato && !isTremolo(note) && !note.ties.includes('stop');

/** A bow of one voice between two others that touch it, none of them a tremolo, each with its sign; no second voice sounds. */
function innerBow(house: House, chance: Chance, fits: (bow: Bow, before: Bow) => boolean = () => true): { bow: Bow; before: Bow } | null {
  if (house.strokes.length > 1) return null;
  const found = house.strokes.flatMap((strokes) =>
    strokes.flatMap((bow, i) => {
      const [before, after] = [strokes[i - 1], strokes[i + 1]];
      if (!before || !after || bow.begins - before.ends > 0.05 || after.begins - bow.ends > 0.05 || before.direction === bow.direction || after.direction === bow.direction) return [];
      const signed = [before, bow, after].every(({ notes }) => house.marks.filter(({ note, value }) => note === notes[0] && value.kind !== 'finger' && value.kind !== 'string').length === 1);
      const clear = [before, bow, after].every(({ notes }) => !house.notes.get(notes[0]!)!.technical.length && !isTremolo(house.notes.get(notes[0]!)!) && !house.notes.get(notes[0]!)!.grace && !house.planned.some(({ note }) => notes.includes(note)));
      return signed && clear && fits(bow, before) ? [{ bow, before }] : [];
    }),
  );
  return found.length ? chance.pick(found) : null;
}

const HAND = ['fingering/shift-in-time', 'fingering/hand-order', 'fingering/exposed-slide', 'desk/partners-shift-together', 'fingering/same-music', 'fingering/one-hand', 'fingering/reach', 'fingering/tied-over'];
const BOW = ['bow/same-direction', 'bow/same-music', 'bow/hook-apart'];
const HALF = SEATS.slice(0, SEATS.length / 2);

/** Where a staggered plan stands: a change of one seat alone, and the other changes of its passage. */
function plannedChange(house: House, chance: Chance, fits: (mark: Mark) => boolean = () => true): Mark | null {
  const changes = house.planned.filter((mark) => mark.value.kind === 'change' && Array.isArray(mark.seats) && mark.seats.length === 1 && fits(mark));
  return changes.length ? chance.pick(changes) : null;
}

export const FAULTS: readonly Fault[] = [
  {
    name: 'a string that has not the note',
    says: ['fingering/pitch-on-string'],
    also: [...HAND, 'fingering/zero-is-open', 'notation/string-words'],
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && stringOn(house, one.id) !== undefined && above(house, one, 1) < 0);
      if (!note) return null;
      return { added: [on(note.id, { kind: 'string', string: 1 })], note: note.id };
    },
  },
  {
    name: 'nought on a stopped note',
    says: ['fingering/zero-is-open'],
    also: [...HAND, 'fingering/pitch-on-string'],
    plant(house, chance) {
      const opens = new Set(house.instrument.openStrings);
      const note = oneOf(house, chance, (one) => single(house, one) && !opens.has(one.sounding ?? one.midi!) && !one.technical.length && !house.marks.some((mark) => mark.note === one.id && mark.value.kind === 'harmonic'));
      return note && { added: [on(note.id, { kind: 'finger', finger: 0 })], note: note.id };
    },
  },
  {
    name: 'the thumb behind the neck',
    says: ['fingering/thumb'],
    also: HAND,
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && stringOn(house, one.id) !== undefined && above(house, one, stringOn(house, one.id)!) > 0 && above(house, one, stringOn(house, one.id)!) < 4);
      return note && { added: [on(note.id, { kind: 'finger', finger: 'thumb' })], note: note.id };
    },
  },
  {
    name: 'two notes on one string',
    says: ['fingering/one-hand', 'fingering/pitch-on-string'],
    also: [...HAND, 'fingering/zero-is-open'],
    plant(house, chance) {
      // Where the part divides, two players share the two notes.
      if (house.part.measures.some(({ words }) => words.some(({ text }) => /\bdiv|get(h)?eilt/i.test(text)))) return null;
      const pairs = house.voices.flat().filter(({ notes, head }) => notes.length === 2 && !head.grace && notes.every((note) => stringOn(house, note.id) !== undefined));
      if (!pairs.length) return null;
      const [one, other] = chance.pick(pairs).notes as [Note, Note];
      const low = one.midi! < other.midi! ? one : other;
      const high = low === one ? other : one;
      return { added: [on(high.id, { kind: 'string', string: stringOn(house, low.id)! })], note: high.id };
    },
  },
  {
    name: 'a finger two octaves away in a run',
    says: ['fingering/shift-in-time'],
    also: [...HAND, 'fingering/pitch-on-string'],
    plant(house, chance) {
      const found = house.voices.flatMap((voice) =>
        voice.flatMap((event, i) => {
          const before = voice[i - 1];
          if (!before || event.notes.length > 1 || before.notes.length > 1 || event.start - before.start > 0.13 || event.head.tempo === null || before.head.grace || event.head.grace || event.head.ties.includes('stop')) return [];
          const [finger, string] = [fingerOn(house, before.head.id), stringOn(house, before.head.id)];
          const far = [2, 3, 4].find((s) => above(house, event.head, s) >= 14 && above(house, event.head, s) <= 22);
          return typeof finger === 'number' && finger > 0 && string !== undefined && above(house, before.head, string) <= 7 && far ? [{ note: event.head.id, far }] : [];
        }),
      );
      if (!found.length) return null;
      const { note, far } = chance.pick(found);
      return { added: [on(note, { kind: 'string', string: far }), on(note, { kind: 'finger', finger: 3 })], note };
    },
  },
  {
    name: 'a finger once more on a tied note',
    says: ['fingering/tied-over'],
    also: HAND,
    plant(house, chance) {
      const found = house.voices.flatMap((voice) => voice.flatMap((event, i) => (event.notes.length === 1 && event.head.ties.includes('stop') && voice[i - 1]?.notes.length === 1 && voice[i - 1]!.head.ties.includes('start') && voice[i - 1]!.head.midi === event.head.midi && Math.abs(voice[i - 1]!.to - event.from) < 1e-6 ? [{ event, before: voice[i - 1]! }] : [])));
      const fingered = found.filter(({ before }) => fingerOn(house, before.head.id) !== undefined);
      if (!fingered.length) return null;
      const { event, before } = chance.pick(fingered);
      return { added: [on(event.head.id, { kind: 'finger', finger: fingerOn(house, before.head.id)! })], note: event.head.id };
    },
  },
  {
    name: 'a finger takes over from itself',
    says: ['fingering/substitution'],
    also: HAND,
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && typeof fingerOn(house, one.id) === 'number' && fingerOn(house, one.id)! !== 0);
      if (!note) return null;
      const finger = fingerOn(house, note.id)!;
      return { added: [on(note.id, { kind: 'finger', finger, substitution: finger })], note: note.id };
    },
  },
  {
    name: 'the fourth finger on a trill',
    says: ['fingering/trill-finger'],
    also: [...HAND, 'fingering/pitch-on-string'],
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && one.ornaments.includes('trill-mark') && typeof fingerOn(house, one.id) === 'number' && fingerOn(house, one.id) !== 4);
      return note && { added: [on(note.id, { kind: 'finger', finger: 4 })], note: note.id };
    },
  },
  {
    name: 'a harmonic where no string has one',
    says: ['fingering/harmonic-node'],
    also: HAND,
    plant(house, chance) {
      // A semitone above the lowest string lies on no other one, and near no node.
      const note = oneOf(house, chance, (one) => single(house, one) && above(house, one, 4) === 1);
      return note && { added: [on(note.id, { kind: 'harmonic', harmonic: 'natural' })], removed: house.marks.filter((mark) => mark.note === note.id && mark.value.kind === 'string'), note: note.id };
    },
  },
  {
    name: 'a harmonic where its string has none',
    says: ['fingering/pitch-on-string'],
    also: HAND,
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && stringOn(house, one.id) !== undefined && above(house, one, stringOn(house, one.id)!) === 1);
      return note && { added: [on(note.id, { kind: 'harmonic', harmonic: 'natural' })], note: note.id };
    },
  },
  {
    name: 'a bow turned round',
    says: ['bow/same-direction'],
    also: BOW,
    plant(house, chance) {
      const found = innerBow(house, chance);
      return found && { added: [on(found.bow.notes[0]!, { kind: 'bow', bow: turned(found.bow.direction) })], note: found.bow.notes[0]! };
    },
  },
  {
    name: 'a bow sign on a plucked note',
    says: ['bow/plucked'],
    also: BOW,
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && one.pizzicato === true);
      return note && { added: [on(note.id, { kind: 'bow', bow: chance.pick(['up', 'down'] as const) })], note: note.id };
    },
  },
  {
    name: 'a change after the note has ended',
    says: ['bow/change-past-note'],
    also: ['section/arrives-apart'],
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => plain(house, one) && quarters(one.duration) > 0 && quarters(one.duration) < 3);
      return note && { added: [on(note.id, { kind: 'change', after: 4 })], note: note.id };
    },
  },
  {
    name: 'a change in a tremolo',
    says: ['bow/change-in-tremolo'],
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => single(house, one) && isTremolo(one) && !one.pizzicato && quarters(one.duration) > 1);
      return note && { added: [on(note.id, { kind: 'change', after: 1 })], note: note.id };
    },
  },
  {
    name: 'a retake without time',
    says: ['bow/retake-in-time'],
    also: [...BOW, 'section/arrives-apart'],
    plant(house, chance) {
      const found = innerBow(house, chance, (bow, before) => bow.begins - before.begins < 0.16 && bow.begins - before.begins > 0.02);
      return found && { added: [on(found.bow.notes[0]!, { kind: 'retake' })], note: found.bow.notes[0]! };
    },
  },
  {
    name: 'a hook after a long rest',
    says: ['bow/hook-apart'],
    also: BOW,
    plant(house, chance) {
      const found = house.voices.flatMap((voice) => voice.filter((event, i) => !event.head.grace && plain(house, event.head) && (i === 0 || event.start - voice[i - 1]!.end > 2) && (voice[i + 1] === undefined || voice[i + 1]!.start - event.end > 2)));
      if (!found.length) return null;
      const { id } = chance.pick(found).head;
      return { added: [on(id, { kind: 'hooked' })], note: id };
    },
  },
  {
    name: 'a bow sign inside a slur',
    says: ['notation/bow-inside-slur'],
    also: [...BOW, 'bow/outlasts-bow', 'section/arrives-apart'],
    plant(house, chance) {
      const bow = chance.pick(house.strokes.flat().filter(({ notes }) => notes.length > 2 && notes.slice(0, 3).every((id) => !house.notes.get(id)!.grace && house.inSlur.has(id) === (id !== notes[0]) && !house.notes.get(id)!.technical.length && !house.planned.some(({ note }) => note === id)) && notes.every((id) => !house.marks.some(({ note, value }) => note === id && (value.kind === 'slur' || value.kind === 'hooked')))).concat(NONE));
      return bow === NONE ? null : { added: [on(bow.notes[1]!, { kind: 'bow', bow: turned(bow.direction) })], note: bow.notes[1]! };
    },
  },
  {
    name: 'a retake inside a slur',
    says: ['notation/retake-inside-slur'],
    also: [...BOW, 'bow/retake-in-time', 'bow/outlasts-bow', 'section/arrives-apart'],
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => plain(house, one) && house.inSlur.has(one.id) && house.events.get(one.id)!.bound && !house.marks.some((mark) => mark.note === one.id && !['finger', 'string'].includes(mark.value.kind)));
      return note && { added: [on(note.id, { kind: 'retake' })], note: note.id };
    },
  },
  {
    name: 'a split where no slur is',
    says: ['notation/slur-mark-nowhere'],
    also: BOW,
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => plain(house, one) && !house.events.get(one.id)!.bound && !house.inSlur.has(one.id) && !house.marks.some((mark) => mark.note === one.id && !['finger', 'string', 'bow'].includes(mark.value.kind)));
      return note && { added: [on(note.id, { kind: 'slur', slur: 'split' })], note: note.id };
    },
  },
  {
    name: 'a hook and a retake on one note',
    says: ['notation/marks-disagree'],
    also: [...BOW, 'bow/retake-in-time', 'notation/retake-inside-slur'],
    plant(house, chance) {
      const note = oneOf(house, chance, (one) => plain(house, one) && !house.events.get(one.id)!.bound);
      return note && { added: [on(note.id, { kind: 'hooked' }), on(note.id, { kind: 'retake' })], note: note.id };
    },
  },
  {
    name: 'a finger on a rest',
    says: ['notation/mark-on-unplayed'],
    plant(house, chance) {
      const rests = [...house.notes.values()].filter(({ rest, hidden }) => rest && !hidden);
      if (!rests.length) return null;
      const { id } = chance.pick(rests);
      return { added: [on(id, { kind: 'finger', finger: 1 })], note: id };
    },
  },
  {
    name: 'a partner bowed the other way',
    says: ['desk/partners-bowed-apart'],
    also: BOW,
    plant(house, chance) {
      const found = innerBow(house, chance);
      return found && { added: [on(found.bow.notes[0]!, { kind: 'bow', bow: turned(found.bow.direction) }, [chance.pick(SEATS)])], note: found.bow.notes[0]! };
    },
  },
  {
    name: 'half the desks bowed the other way',
    says: ['section/bowed-apart'],
    also: BOW,
    plant(house, chance) {
      const found = innerBow(house, chance);
      return found && { added: [on(found.bow.notes[0]!, { kind: 'bow', bow: turned(found.bow.direction) }, [...HALF])], note: found.bow.notes[0]! };
    },
  },
  {
    name: 'a change moved onto that of the partner',
    times: 6,
    says: ['desk/partners-change-together'],
    also: ['section/too-many-at-once', 'section/change-on-barline', 'bow/outlasts-bow', 'section/arrives-apart'],
    plant(house, chance) {
      const partner = (seat: string): string => `${seat.slice(0, -1)}${seat.endsWith('o') ? 'i' : 'o'}`;
      const own = plannedChange(house, chance, (mark) => house.planned.some((other) => other.value.kind === 'change' && other.note === mark.note && (other.seats as string[])[0] === partner((mark.seats as string[])[0]!)));
      if (!own) return null;
      const other = house.planned.find((mark) => mark.value.kind === 'change' && mark.note === own.note && (mark.seats as string[])[0] === partner((own.seats as string[])[0]!))!;
      return { added: [{ ...other, seats: own.seats! }], removed: [own], note: own.note };
    },
  },
  {
    name: 'three changes brought together',
    times: 6,
    says: ['section/too-many-at-once'],
    also: ['desk/partners-change-together', 'section/change-on-barline', 'bow/outlasts-bow', 'section/arrives-apart'],
    plant(house, chance) {
      const own = plannedChange(house, chance);
      if (!own) return null;
      const rest = house.planned.filter((mark) => mark !== own && mark.note === own.note && mark.value.kind === 'change' && (mark.seats as string[])[0] !== (own.seats as string[])[0]).slice(0, 2);
      return rest.length < 2 ? null : { added: rest.map((mark) => ({ ...own, seats: mark.seats! })), removed: rest, note: own.note };
    },
  },
  {
    name: 'the changes of one seat left out',
    times: 6,
    says: ['bow/outlasts-bow'],
    also: ['section/arrives-apart'],
    plant(house, chance) {
      const own = plannedChange(house, chance);
      if (!own) return null;
      const passage = house.passages.find(({ marks }) => marks.includes(own))!;
      // Without its changes the bow of this seat lasts from the beginning of the passage.
      return { added: [], removed: passage.marks.filter((mark) => mark.value.kind === 'change' && (mark.seats as string[])[0] === (own.seats as string[])[0]), note: passage.first };
    },
  },
];

const NONE: Bow = { notes: [], begins: 0, ends: 0, direction: 'down', measure: 0 };
