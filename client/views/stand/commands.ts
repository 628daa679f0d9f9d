import type { Mark } from '../../../core/music/mark.ts';
import { slotOf } from '../../../core/music/mark.ts';
import { exact, fraction } from '../../../core/music/time.ts';
import { beatOf } from '../../../core/music/metre.ts';
import { moveInside } from '../../library/partIndex.ts';
import { go } from '../../router.ts';
import { selected } from '../../tools/caret/reducer.ts';
import type { Command } from '../../tools/keys.ts';
import { marksOf } from '../../tools/pencil/signs.ts';
import { nextLight } from '../../ui/light.ts';
import { goPlace } from '../../ui/remembered.ts';
import { words } from '../../words/words.ts';
import { isPrincipal, mayMark, pencilsOf, type Desk } from './desk.ts';
import { submit } from './lay.ts';
import { passageInHand } from './passageInHand.ts';
import { goTo } from './goTo.ts';
import { hearHere } from './hearing/hearHere.ts';
import { askOffers, takeOffer } from './offers/take.ts';
import { nextAfter, slipsAt } from './openMeasures.ts';
import { askElsewhere, layElsewhere } from './elsewhere/layElsewhere.ts';
import { findingHere, hereIn } from './findingHere.ts';
import { inkedSentence, runOn } from './runThrough.ts';
import { slipName } from './sentence.ts';
import { myPart, openBeside } from './phone/goingRound.ts';

/** Slips under the open measure, and the one in focus. */
export function slipsHere(desk: Desk) {
  const slips = desk.caret.open === null ? [] : slipsAt(desk.state, desk.caret.open);
  return { slips, slip: slips.find(({ id }) => id === desk.caret.slip) ?? slips[0] };
}

const pencilledOn = ({ pencil }: Desk, note: string): Mark[] => [...(pencil.held === 'alone' ? pencil.alone : pencil.draft)].filter((mark) => mark.note === note);

function mark(desk: Desk, command: Extract<Command, { do: 'mark' }>): void {
  if (desk.pencil.held !== 'alone' && !mayMark(desk)) return desk.say(words.stand.onlySection);
  if (desk.pencil.held !== 'alone' && desk.state.locked) return desk.say(words.stand.lifted);
  const notes = selected(desk.caret, desk.walk.ids);
  if (!notes.length) return desk.say(words.stand.noNote);
  const standing = (note: string) => [...pencilledOn(desk, note), ...desk.inForce.filter((one) => one.note === note)];
  desk.write({ type: 'write', marks: marksOf(command, notes, desk.index, standing, desk.pencil.substituting) });
}

function moveChange(desk: Desk, direction: 1 | -1): void {
  const placed = desk.caret.at === null ? undefined : desk.index.notes.get(desk.caret.at);
  const change = placed && pencilledOn(desk, placed.note.id).find(({ value }) => value.kind === 'change');
  if (!placed || change?.value.kind !== 'change') return desk.say(words.stand.changeFirst);
  const step = exact(fraction(beatOf(placed.measure)).div(2));
  desk.write({ type: 'replace', note: placed.note.id, before: change.value, after: { kind: 'change', after: moveInside(change.value.after, step, direction, placed.note) } });
}

function rub(desk: Desk): void {
  const notes = selected(desk.caret, desk.walk.ids);
  if (notes.some((note) => pencilledOn(desk, note).length)) return desk.write({ type: 'rub', notes });
  const standing = desk.inForce.filter(({ note, value }) => notes.includes(note) && value.kind !== 'none');
  const marks = standing.map(({ note, value }): Mark => ({ note, value: { kind: 'none', slot: slotOf(value), ...(value.kind === 'change' ? { after: value.after } : {}) } }));
  const printed = notes.flatMap((note): Mark[] => {
    const names = desk.index.notes.get(note)?.note.technical.map(({ name }) => name) ?? [];
    const slots = [names.includes('fingering') && 'finger', names.some((name) => name.endsWith('-bow')) && 'bow', names.includes('string') && 'string'] as const;
    return slots.flatMap((slot) => (slot && !marks.some((one) => one.note === note && slotOf(one.value) === slot) ? [{ note, value: { kind: 'none' as const, slot } }] : []));
  });
  const all = [...marks, ...printed];
  return all.length ? desk.write({ type: 'write', marks: all }) : desk.say(words.stand.nothingHere);
}

/** Opens a measure and puts the caret there; the first slip, or the one named, is in focus. */
export function openMeasure(desk: Desk, measure: number, slip: string | null = null): void {
  const first = desk.index.first.get(measure);
  if (first !== undefined && desk.facts.notes.get(desk.caret.at ?? '') !== measure) desk.move({ type: 'put', at: first });
  desk.move({ type: 'open', measure, slip: slip ?? slipsAt(desk.state, measure)[0]?.id ?? null });
}

function enter(desk: Desk): void {
  if (desk.offers.found?.offers.length) return takeOffer(desk);
  if (desk.elsewhere.found) return layElsewhere(desk);
  if (desk.pencil.draft.length) {
    const seats = desk.revising?.seats ?? (desk.caret.seat === 'all' ? 'all' : [desk.caret.seat]);
    return desk.setLine({ kind: 'why', ink: desk.pencil.held === 'ink', seats, text: desk.revising?.why ?? '' });
  }
  const here = hereIn(desk);
  if (desk.caret.open !== here && here) return openMeasure(desk, here);
  const { slip } = slipsHere(desk);
  if (!slip) return desk.say(words.stand.noSlip);
  if (!isPrincipal(desk)) return desk.say(words.stand.onlyPrincipal);
  if (submit(desk, 'adopt', { proposal: slip.id, revision: slip.revision, why: '' })) desk.say(inkedSentence(desk, slip, here));
}

function leave(desk: Desk): void {
  if (desk.keys) return desk.setKeys(false);
  if (desk.waits.on) return desk.waits.turn();
  if (desk.elsewhere.found) return desk.elsewhere.leave();
  if (desk.offers.sides) return desk.offers.apart();
  if (desk.offers.asked) return desk.offers.leave();
  if (desk.caret.open !== null) {
    desk.setPast(null);
    return desk.move({ type: 'close' });
  }
  if (desk.caret.at !== null) desk.move({ type: 'put', at: desk.caret.at });
}

function nextOpen(desk: Desk): void {
  // A measure on whose first notes the hand already lies is the next while it is closed.
  const { to, slip, sentence } = runOn(desk, desk.caret.open ?? hereIn(desk) - 1);
  if (to !== null) openMeasure(desk, to, slip);
  desk.say(sentence);
}

function nextFinding(desk: Desk): void {
  const { walk, caret } = desk;
  const place = (note: string | undefined) => (note === undefined ? -1 : walk.ids.indexOf(note));
  const inOrder = [...desk.heard].sort((a, b) => place(a.notes[0]) - place(b.notes[0]));
  const next = nextAfter(inOrder, place(caret.at ?? undefined), ({ notes }) => place(notes[0]));
  if (!next?.notes[0]) return desk.say(words.stand.nothingToWatch);
  desk.move({ type: 'put', at: next.notes[0] });
}

/** My vote on the slip in focus, for the open measure; the same vote again takes it back. A closed measure with slips opens first: one votes on what one sees. */
export function vote(desk: Desk, which: 'for' | 'against', id?: string): void {
  const here = hereIn(desk);
  const [first] = desk.caret.open === null && here ? slipsAt(desk.state, here) : [];
  if (first) {
    openMeasure(desk, here);
    return desk.say(words.stand.nowVote(slipName(desk, first)));
  }
  const { slips, slip } = slipsHere(desk);
  const voted = id === undefined ? slip : slips.find((one) => one.id === id);
  if (!voted || desk.caret.open === null) return desk.say(words.stand.noSlip);
  const now = voted.votes[desk.caret.open]?.[desk.me.id];
  const cast = now === which ? null : which;
  if (submit(desk, 'castVote', { proposal: voted.id, revision: voted.revision, measure: desk.caret.open, vote: cast })) desk.say(words.spoken.voted[cast ?? 'none'](slipName(desk, voted)));
}

/** The history of the open measure, or of the one in hand, which opens for it. */
function showPast(desk: Desk): void {
  const measure = desk.caret.open ?? hereIn(desk);
  if (!measure) return desk.say(words.stand.noNote);
  desk.setPast(desk.caret.open !== null && desk.past === measure ? null : measure);
  if (desk.caret.open === null) openMeasure(desk, measure);
}

function seat(desk: Desk, by: 1 | -1): void {
  const found = desk.offers.found?.offers.length;
  if (found) return desk.offers.choose(Math.max(0, Math.min(found - 1, desk.offers.chosen + by)));
  const { slips, slip } = slipsHere(desk);
  if (slip) {
    const next = slips[slips.indexOf(slip) + by];
    if (next) desk.move({ type: 'slip', slip: next.id });
    return;
  }
  const all = ['all', ...desk.seats] as const;
  const next = all[all.indexOf(desk.caret.seat) + by];
  if (!next) return;
  desk.move({ type: 'seat', seat: next });
}

function mute(desk: Desk): void {
  const finding = findingHere(desk);
  if (!finding) return desk.say(words.stand.nothingToWatch);
  desk.setLine({ kind: 'mute', rule: finding.rule, place: finding.place, fingerprint: finding.fingerprint });
}

function holdNext(desk: Desk): void {
  const order = pencilsOf(desk);
  desk.write({ type: 'hold', held: order[(order.indexOf(desk.pencil.held) + 1) % order.length]! });
}

function takeBack(desk: Desk): void {
  const { slip } = slipsHere(desk);
  if (!slip) return desk.say(words.stand.noSlip);
  submit(desk, 'withdraw', { proposal: slip.id, why: '' });
}

/** Asks for a plan of the passage in hand, where the desks lie against time. */
function shareOut(desk: Desk): void {
  const passage = passageInHand(desk);
  if (!passage) return desk.say(words.stand.noNote);
  if (!desk.view.section) return desk.say(words.section.noSection);
  // A draft stays on this stand: it would be lost on the way.
  if (desk.pencil.draft.length) return desk.say(words.plan.draftFirst);
  go({ at: 'section', part: desk.view.id, passage: { first: passage.notes[0]!, last: passage.notes.at(-1)! } });
}

/** Does what a key, a sign on the ledge or a touch asks for. */
export function perform(desk: Desk, command: Command): void {
  switch (command.do) {
    case 'mark':
      return mark(desk, command);
    case 'step':
      return desk.move({ type: command.unit === 'note' ? 'step' : 'stepMeasure', by: command.by, extend: command.extend, walk: desk.walk });
    case 'seat':
      return seat(desk, command.by);
    case 'earlier':
      return moveChange(desk, -1);
    case 'later':
      return moveChange(desk, 1);
    case 'rub':
      return rub(desk);
    case 'undo':
      return desk.pencil.past.length ? desk.write({ type: 'undo' }) : desk.say(words.stand.nothingToTakeBack);
    case 'redo':
    case 'substitute':
      return desk.write({ type: command.do });
    case 'pencil':
      return holdNext(desk);
    case 'enter':
    case 'lay':
      return enter(desk);
    case 'leave':
      return leave(desk);
    case 'nextOpen':
      return nextOpen(desk);
    case 'nextFinding':
      return nextFinding(desk);
    case 'for':
    case 'against':
      return vote(desk, command.do);
    case 'fingerings':
      return askOffers(desk);
    case 'hair':
      return desk.hair.turn();
    case 'beside':
      return desk.beside.turn();
    case 'waits':
      return desk.waits.turn();
    case 'notices':
      desk.notice.turn();
      return desk.say(desk.notice.wanted ? words.notices.off : words.notices.on);
    case 'elsewhere':
      return askElsewhere(desk);
    case 'hear':
      return hearHere(desk, 'one');
    case 'hearSection':
      return hearHere(desk, 'section');
    case 'shareOut':
      return shareOut(desk);
    case 'passage':
      desk.move({ type: 'reach' });
      return desk.say(desk.caret.reaching ? null : words.touch.reach);
    case 'openHere': {
      const here = hereIn(desk);
      return here ? openMeasure(desk, here) : desk.say(words.stand.noNote);
    }
    case 'openBefore':
    case 'openAfter': {
      const range = openBeside(desk)[command.do === 'openBefore' ? 'before' : 'after'];
      return range ? openMeasure(desk, range.from) : desk.say(words.stand.nothingOpen);
    }
    case 'myPart':
      return myPart(desk);
    case 'goTo':
      return command.said === undefined ? desk.setLine({ kind: 'goTo' }) : goTo(desk, command.said);
    case 'words':
    case 'command':
      return desk.setLine({ kind: command.do });
    case 'place':
      return goPlace(command.place);
    case 'say':
      return desk.setLine({ kind: 'say', measure: desk.caret.open ?? Math.max(1, hereIn(desk)), proposal: slipsHere(desk).slip?.id ?? null });
    case 'setAside': {
      if (desk.offers.found?.offers.length) return desk.offers.lay('a');
      const { slip } = slipsHere(desk);
      return slip ? desk.setLine({ kind: 'aside', proposal: slip.id }) : desk.say(words.stand.noSlip);
    }
    case 'takeBack':
      return desk.offers.found?.offers.length ? desk.offers.lay('b') : takeBack(desk);
    case 'mute':
      return mute(desk);
    case 'history':
      desk.setHistory(!desk.history);
      return desk.say(desk.history ? words.stand.historyOff : words.stand.historyOn);
    case 'past':
      return showPast(desk);
    case 'revisions':
      return go({ at: 'revisions', part: desk.view.id, between: null });
    case 'keys':
      return desk.setKeys(!desk.keys);
    case 'light':
      return nextLight();
  }
}
