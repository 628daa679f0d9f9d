import { excludes, type Mark, type MarkValue } from '../music/mark.ts';

/** Marks gathered for one proposal: two that exclude each other never stand on one note. */
export class MarkSheet {
  readonly #marks = new Map<string, Mark[]>();

  /** Adds a mark; false, and nothing added, where another stands in its way. One that stands already is added once. */
  put(note: string, value: MarkValue): boolean {
    const here = this.#marks.get(note) ?? [];
    const inWay = here.find((mark) => excludes(mark.value, value));
    if (inWay) return JSON.stringify(inWay.value) === JSON.stringify(value);
    this.#marks.set(note, [...here, { note, value }]);
    return true;
  }

  all(): Mark[] {
    return [...this.#marks.values()].flat();
  }
}
