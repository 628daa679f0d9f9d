import type { Measure } from '../music/part.ts';
import type { ExactTime } from '../music/time.ts';
import { child, childrenNamed, type XmlElement } from './element.ts';
import { levelOf } from './dynamics.ts';
import { directionTempo, type Tempo } from './tempo.ts';

/** A change at a time in its measure, in quarters; for one staff or for all. */
export interface Change<T> {
  at: ExactTime;
  value: T;
  staff?: number;
}

/** What the directions of one measure say. */
export interface Said {
  dynamics: Change<string>[];
  tempos: Change<Tempo>[];
  pizzicato: Change<boolean>[];
  words: Measure['words'];
  wedges: Measure['wedges'];
  rehearsal?: string;
}

export const nothingSaid = (): Said => ({ dynamics: [], tempos: [], pizzicato: [], words: [], wedges: [] });

/** Adds what one `<direction>` says. `at` is its time, its offset counted in. */
export function readDirection(direction: XmlElement, at: ExactTime, said: Said): void {
  const staffText = child(direction, 'staff')?.text.trim();
  const staff = staffText ? { staff: Number(staffText) } : {};
  const tempo = directionTempo(direction);
  if (tempo) said.tempos.push({ at, value: tempo });
  for (const type of childrenNamed(direction, 'direction-type')) {
    for (const element of type.children) {
      if (element.name === 'dynamics') {
        const value = levelOf(element);
        if (value) said.dynamics.push({ at, value, ...staff });
      } else if (element.name === 'words' && element.text.trim()) {
        const text = element.text.trim().replace(/\s+/g, ' ');
        said.words.push({ text, at, ...staff });
        const pizzicato = pizzicatoIn(text);
        if (pizzicato !== undefined) said.pizzicato.push({ at, value: pizzicato, ...staff });
      } else if (element.name === 'wedge') {
        said.wedges.push({ type: element.attributes.type ?? '', at });
      } else if (element.name === 'rehearsal' && element.text.trim()) {
        said.rehearsal ??= element.text.trim();
      }
    }
  }
  for (const sound of childrenNamed(direction, 'sound')) readSound(sound, at, said);
}

/** Adds what `<sound>` says about pizzicato. */
export function readSound(sound: XmlElement, at: ExactTime, said: Said): void {
  const { pizzicato } = sound.attributes;
  if (pizzicato) said.pizzicato.push({ at, value: pizzicato === 'yes' });
}

/** True or false where the words switch to plucking or back to the bow; the last word counts. Example: "arco" is false. */
export function pizzicatoIn(words: string): boolean | undefined {
  const last = words.toLowerCase().match(/\b(pizz|arco|col legno|coll'arco)/g)?.at(-1);
  return last === undefined ? undefined : last === 'pizz';
}
