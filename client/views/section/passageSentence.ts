import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import { levelThrough } from '../../../core/bowing/stagger/level.ts';
import { quarters } from '../../../core/music/time.ts';
import { words } from '../../words/words.ts';
import { changesOf, closest, desksOf } from './lanes.ts';

/** The picture in words. */
export function passageSentence(passage: SectionPassage): string {
  const changes = changesOf(passage);
  const seats = passage.seats.filter(({ bows }) => bows.length > 1).length;
  const barline = changes.filter(({ bow }) => quarters(bow.begins.at) === 0).length;
  const nearest = desksOf(passage.seats.map(({ seat }) => seat))
    .flatMap(({ desk }) => {
      const pair = closest(changes, desk);
      return pair ? [{ desk, apart: pair.apart }] : [];
    })
    .sort((a, b) => a.apart - b.apart)[0];
  const { worst } = levelThrough(changes.map(({ second }) => second - passage.start), passage.seats.length, passage.end - passage.start);
  return [words.section.words(changes.length, seats, barline), nearest ? words.section.apart(nearest.apart.toFixed(1), nearest.desk) : '', words.section.dips(worst.toFixed(2))].filter(Boolean).join(' ');
}
