import { z } from 'zod';
import { Mark } from '../../../core/music/mark.ts';

const key = (person: string, part: string) => `bowline/alone/${person}/${part}`;

/** Marks for me alone: kept in this browser, per person and part. What cannot be read is as if it were not there. */
export function readAlone(person: string, part: string): Mark[] {
  try {
    return z.array(Mark).parse(JSON.parse(localStorage.getItem(key(person, part)) ?? '[]'));
  } catch {
    return [];
  }
}

export function keepAlone(person: string, part: string, marks: readonly Mark[]): void {
  localStorage.setItem(key(person, part), JSON.stringify(marks));
}
