/** How far along the staff a finger or the mouse goes before a passage begins, pixels. Chosen, not measured. */
const BEGINS = 10;

export interface Drag {
  /** The note it began on. */
  from: string;
  x: number;
  y: number;
  /** A passage has begun; before that it may still be a touch, or the page being scrolled. */
  begun: boolean;
}

/** The drag after a move to (x, y): it becomes a passage once it goes further along the staff than across it. */
export function dragged(drag: Drag, x: number, y: number): Drag {
  const [along, across] = [Math.abs(x - drag.x), Math.abs(y - drag.y)];
  return drag.begun || along <= BEGINS || along <= across ? drag : { ...drag, begun: true };
}
