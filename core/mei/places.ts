import type Fraction from 'fraction.js';
import type { XmlElement } from '../musicxml/element.ts';
import type { LayerEvent } from './layer.ts';
import type { ReadMeasure } from './readMeasures.ts';
import { idOf, shown } from './shown.ts';

/** Where an event lies. */
export interface EventPlace {
  staff: number;
  measure: number;
  onset: Fraction;
  /** Count in the order of the document, over the staff. */
  order: number;
  /** On which its signs hang: itself, or the note of a chord that is meant. */
  element: XmlElement;
}

/** Finds events by id, and by staff and time. */
export interface Places {
  byId(id: string | null): EventPlace | undefined;
  /** First event of a staff at that time, or the last one that began before it; rests are passed over. */
  at(staff: number, measure: number, time: Fraction): EventPlace | undefined;
}

const sounds = ({ kind }: LayerEvent): boolean => kind === 'note' || kind === 'chord';

/** A place for every event of the score; repeated measures have none of their own. */
export function placesOf(measures: readonly ReadMeasure[]): Places {
  const byId = new Map<string, EventPlace>();
  const byTime = new Map<string, EventPlace[]>();
  const orders = new Map<number, number>();
  for (const [measure, { staves }] of measures.entries()) {
    for (const [staff, { layers, repeated }] of staves.entries()) {
      if (repeated) continue;
      for (const event of layers.flat()) {
        const order = (orders.get(staff) ?? 0) + 1;
        orders.set(staff, order);
        const place: EventPlace = { staff, measure, onset: event.onset, order, element: event.element };
        for (const element of [event.element, ...(event.kind === 'chord' ? shown(event.element) : [])]) {
          const id = idOf(element);
          if (id !== null) byId.set(id, { ...place, element });
        }
        if (sounds(event) && event.grace === null) byTime.set(`${staff} ${measure}`, [...(byTime.get(`${staff} ${measure}`) ?? []), place]);
      }
    }
  }
  return {
    byId: (id) => (id === null ? undefined : byId.get(id)),
    at: (staff, measure, time) => {
      const here = byTime.get(`${staff} ${measure}`) ?? [];
      return here.find(({ onset }) => onset.equals(time)) ?? here.findLast(({ onset }) => onset.compare(time) < 0);
    },
  };
}
