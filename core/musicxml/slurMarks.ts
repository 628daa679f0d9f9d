import type { Additions } from './additions.ts';
import { childrenNamed, isHidden, type XmlElement } from './element.ts';
import type { NumberedSlur } from './slurs.ts';
import type { Standing, VoiceOrder } from './voiceOrder.ts';

/** Slur numbers a document may use (MusicXML 4.0, number-level). */
const HIGHEST = 16;

interface Placed {
  from: Standing;
  to: Standing;
  number: number;
}

/**
 * Writes slurs that are split or joined.
 * A split slur becomes slurs over its stretches: a stop on the last note of one, a start on the first of the next, all with the number of the
 * slur; a stretch of one note has no slur, and the end that the source has there is hidden where `hide` asks for it.
 */
export class SlurMarks {
  private readonly order: VoiceOrder;
  private readonly slurs: Placed[];
  private readonly splits = new Map<Placed, Set<Standing>>();
  private readonly rubbedOut = new Set<Placed>();
  private readonly joins: Placed[] = [];

  constructor(order: VoiceOrder, slurs: readonly NumberedSlur[]) {
    this.order = order;
    const byId = new Map(order.notes.map((standing) => [standing.note.id, standing]));
    this.slurs = slurs.flatMap(({ from, to, number }) => {
      const first = byId.get(from);
      const last = byId.get(to);
      return first && last ? [{ from: order.head(first), to: order.head(last), number }] : [];
    });
  }

  /** The slur over a note ends before it and begins anew on it. Without a slur there, nothing is to be drawn. */
  split(standing: Standing): void {
    const head = this.order.head(standing);
    const over = this.slurs.findLast(({ from, to }) => from.at < head.at && head.at <= to.at && from.note.voice === head.note.voice);
    if (!over) return;
    const points = this.splits.get(over) ?? new Set<Standing>();
    this.splits.set(over, points.add(head));
  }

  /** A slur of its own from a note to the next. Without a next note or a free number, nothing is drawn. */
  join(standing: Standing): void {
    const from = this.order.head(standing);
    const to = this.order.after(from);
    const number = to && this.freeNumber(from.at, to.at);
    if (to && number) this.joins.push({ from, to, number });
  }

  /** The slurs that begin on a note are no longer shown. */
  rubOut(standing: Standing): void {
    const head = this.order.head(standing);
    for (const slur of this.slurs) if (slur.from === head) this.rubbedOut.add(slur);
  }

  write(additions: Additions, hide: boolean): void {
    for (const { from, to, number } of this.rubbedOut) {
      hideEnd(from.element, 'start', number, additions);
      hideEnd(to.element, 'stop', number, additions);
    }
    // A slur that is rubbed out has no stretches left to split it into.
    for (const [slur, points] of this.splits) if (!this.rubbedOut.has(slur)) this.writeStretches(slur, points, additions, hide);
    for (const { from, to, number } of this.joins) {
      additions.at(from.element).slurStarts.push(slurXml('start', number));
      additions.at(to.element).slurStops.push(slurXml('stop', number));
    }
  }

  private writeStretches(slur: Placed, points: ReadonlySet<Standing>, additions: Additions, hide: boolean): void {
    const { number } = slur;
    const starts = [slur.from, ...[...points].toSorted((a, b) => a.at - b.at)];
    starts.forEach((first, i) => {
      const next = starts[i + 1];
      const last = next ? (this.order.before(next) ?? first) : slur.to;
      if (first !== last) {
        if (i > 0) additions.at(first.element).slurStarts.push(slurXml('start', number));
        if (next) additions.at(last.element).slurStops.push(slurXml('stop', number));
      } else if (hide) {
        if (i === 0) hideEnd(first.element, 'start', number, additions);
        if (!next) hideEnd(first.element, 'stop', number, additions);
      }
    });
  }

  private freeNumber(from: number, to: number): number | undefined {
    for (let number = 1; number <= HIGHEST; number++) {
      const spanned = this.slurs.some((slur) => slur.number === number && slur.from.at <= to && slur.to.at >= from);
      const met = this.order.notes.slice(from, to + 1).some(({ note }) => note.slurs.some((slur) => slur.number === number));
      // Joins may follow each other on one number: a note ends one before it begins the next.
      const joined = this.joins.some((join) => join.number === number && join.from.at < to && join.to.at > from);
      if (!spanned && !met && !joined) return number;
    }
    return undefined;
  }
}

const slurXml = (type: 'start' | 'stop', number: number) => `<slur type="${type}" number="${number}"/>`;

function hideEnd(note: XmlElement, type: 'start' | 'stop', number: number, additions: Additions): void {
  for (const notations of childrenNamed(note, 'notations').filter((element) => !isHidden(element))) {
    const end = childrenNamed(notations, 'slur').find(({ attributes }) => attributes.type === type && (Number(attributes.number ?? 1) || 1) === number);
    if (end) additions.at(note).hiddenSlurs.add(end);
  }
}
