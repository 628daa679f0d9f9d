import type { Part } from '../../core/music/part.ts';
import { PARTNER, PRINCIPAL } from './ensemble.ts';
import type { Scene } from './scene.ts';
import { down, extension, finger, hooked, measureAt, slip, string, text, up } from './slip.ts';
import { staggeredPlan } from './staggered.ts';

async function opening(scene: Scene, part: Part): Promise<void> {
  const bows = await scene.propose(PRINCIPAL, slip(part, 'The upbeat near the point, then a bow to the measure; the low line stays on the D string.', [
    ['0', 1, up], ['0', 1, text('point')], ['1', 1, down], ['1', 1, finger(3)], ['1', 1, string(3)], ['1', 3, finger(1)], ['2', 1, up], ['2', 1, finger(3)],
    ['3', 1, down], ['3', 1, finger(4)], ['3', 1, string(3)], ['3', 2, finger(1)], ['4', 1, up], ['4', 3, hooked],
  ]));
  await scene.vote(bows, measureAt(part, '1'), [PARTNER, 'Celia Vantongel', 'Hester Quill', 'Pia Solvesund'], 'for');
  await scene.adopt(PRINCIPAL, bows, 'As we played it on Tuesday.');
  const open = await scene.propose(PARTNER, slip(part, 'Open E: nothing to tune on the top note.', [['5', 1, finger(0)], ['5', 2, finger(3)]]));
  await scene.adopt(PRINCIPAL, open, 'To try it.');
  const stopped = await scene.propose('Celia Vantongel', slip(part, 'The open E rings out of the line. Fourth finger, it can vibrate.', [['5', 1, finger(4)], ['5', 1, string(2)]]));
  await scene.vote(stopped, measureAt(part, '5'), [PARTNER, 'Oren Halvard', 'Tomas Breck', 'Esme Okaduro', 'Bela Korvath'], 'for');
  await scene.vote(stopped, measureAt(part, '5'), ['Jory Penhallick'], 'against');
  await scene.adopt(PRINCIPAL, stopped, 'Agreed: warmer, and it matches the seconds.');
}

async function leap(scene: Scene, part: Part): Promise<void> {
  const slide = await scene.propose('Oren Halvard', slip(part, 'Let it slide up the D string on one finger.', [['15', 1, finger(0)], ['15', 2, finger(2)], ['15', 2, string(2)]]));
  await scene.vote(slide, measureAt(part, '15'), ['Wim Drachter'], 'for');
  await scene.vote(slide, measureAt(part, '15'), ['Hester Quill', 'Noor Asmandi', 'Pia Solvesund'], 'against');
  await scene.setAside(PRINCIPAL, slide, 'Twelve slides at once are too much for piano dolce. The printed 3 stands.');
}

async function chromaticRun(scene: Scene, part: Part): Promise<void> {
  const pivot = await scene.propose('Wim Drachter', slip(part, 'Open E as the hinge, then third position: one shift only, and it falls on the beat side of the A.', [
    ['23', 1, finger(1)], ['23', 1, string(2)], ['23', 6, finger(0)], ['23', 11, finger(1)], ['23', 16, finger(4)],
  ]));
  await scene.vote(pivot, measureAt(part, '23'), ['Noor Asmandi', 'Celia Vantongel'], 'for');
  await scene.say('Noor Asmandi', measureAt(part, '23'), pivot, 'Good in the tempo. Can somebody mark where the 2 and 3 fall after the open E?');
}

async function openMeasure(scene: Scene, part: Part): Promise<void> {
  const measure = measureAt(part, '46');
  const a = await scene.propose(PRINCIPAL, slip(part, 'Stay in third: nothing moves in the diminuendo.', [
    ['46', 1, finger(3)], ['46', 1, string(2)], ['46', 1, down], ['46', 2, finger(1)], ['46', 2, string(1)], ['46', 3, finger(4)], ['46', 4, finger(3)], ['46', 4, up], ['46', 5, finger(2)], ['46', 6, finger(1)],
  ]));
  const b = await scene.propose('Celia Vantongel', slip(part, 'Keep the A on the A string; the hand follows.', [
    ['46', 1, finger(3)], ['46', 1, string(2)], ['46', 1, down], ['46', 2, finger(4)], ['46', 2, extension], ['46', 3, finger(3)], ['46', 3, string(1)], ['46', 4, finger(2)], ['46', 4, up], ['46', 5, finger(1)], ['46', 6, finger(4)], ['46', 6, string(2)],
  ]));
  const c = await scene.propose('Bela Korvath', slip(part, 'Lands on 2, so the hand is ready for the held D and it can vibrate for six measures.', [
    ['46', 1, finger(3)], ['46', 1, string(2)], ['46', 1, down], ['46', 2, finger(1)], ['46', 2, string(1)], ['46', 3, finger(4)], ['46', 4, finger(4)], ['46', 4, up], ['46', 5, finger(3)], ['46', 6, finger(2)],
  ]));
  await scene.vote(a, measure, [PARTNER, 'Oren Halvard', 'Tomas Breck', 'Wim Drachter', 'Pia Solvesund', 'Jory Penhallick'], 'for');
  await scene.vote(a, measure, ['Hester Quill', 'Bela Korvath'], 'against');
  await scene.vote(b, measure, ['Hester Quill', 'Noor Asmandi', 'Celia Vantongel'], 'for');
  await scene.vote(b, measure, ['Tomas Breck', 'Esme Okaduro', 'Wim Drachter', PARTNER], 'against');
  await scene.vote(c, measure, ['Bela Korvath', 'Esme Okaduro'], 'for');
  await scene.vote(c, measure, ['Oren Halvard', 'Pia Solvesund'], 'against');
  const question = await scene.say('Hester Quill', measure, a, 'From desk 3 the A on the E string pokes out. Can we take it under?');
  await scene.say(PRINCIPAL, measure, a, 'With less bow on it, yes. We try both on Tuesday.', question);
  await scene.say('Tomas Breck', measure, b, 'My fourth finger does not get there in tune.');
}

async function heldLine(scene: Scene, part: Part): Promise<void> {
  const plan = await scene.propose(PRINCIPAL, slip(part, 'Eight seconds to a bow, every desk at its own time, never on a barline.', staggeredPlan()));
  await scene.adopt(PRINCIPAL, plan, 'Listen for your partner, not for me.');
  await scene.say('Noor Asmandi', measureAt(part, '49'), null, 'Wim and I change almost together here. Shall I wait for the next measure?');
}

/** A week of the first violins on their part, told in the order it happened. */
export async function firstViolins(scene: Scene, part: Part): Promise<void> {
  await opening(scene, part);
  await leap(scene, part);
  await chromaticRun(scene, part);
  await heldLine(scene, part);
  await openMeasure(scene, part);
}

/** The seconds take over the bows of the passage in octaves. */
export async function secondViolins(scene: Scene, part: Part, leader: string): Promise<void> {
  const bows = await scene.propose(leader, slip(part, 'As the firsts: down on the tune, a bow to the measure.', [['34', 1, up], ['35', 1, down], ['36', 1, up]]));
  await scene.adopt(leader, bows, 'Matches the firsts.');
}
