import type { Note, Part } from '../music/part.ts';
import type { XmlElement } from './element.ts';

/** A note where it stands in its document. */
export interface Standing {
  note: Note;
  element: XmlElement;
  /** Count in the part, in document order. */
  at: number;
}

/** The notes of a part in document order, with its neighbours in their voice. Chords count by their first note, rests break nothing but are no neighbours. */
export class VoiceOrder {
  readonly notes: Standing[] = [];

  constructor(part: Part, elements: readonly (readonly XmlElement[])[]) {
    part.measures.forEach((measure, i) => {
      measure.notes.forEach((note, k) => {
        const element = elements[i]?.[k];
        if (element) this.notes.push({ note, element, at: this.notes.length });
      });
    });
  }

  /** First note of the chord a note belongs to; the note itself when it is alone. */
  head(standing: Standing): Standing {
    let here = standing;
    while (here.note.chord) {
      const before = this.notes[here.at - 1];
      if (!before) break;
      here = before;
    }
    return here;
  }

  before(standing: Standing): Standing | undefined {
    return this.neighbour(standing, -1);
  }

  after(standing: Standing): Standing | undefined {
    return this.neighbour(standing, 1);
  }

  private neighbour(standing: Standing, step: 1 | -1): Standing | undefined {
    const { note, at } = this.head(standing);
    for (let i = at + step; i >= 0 && i < this.notes.length; i += step) {
      const other = this.notes[i];
      if (other && !other.note.rest && !other.note.chord && other.note.voice === note.voice && other.note.staff === note.staff) return other;
    }
    return undefined;
  }
}
