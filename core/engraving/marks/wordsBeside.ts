import { boxReader, type WidthOf } from '../boxReader.ts';
import type { Box } from '../geometry.ts';
import { scan } from '../scan.ts';

const around = (boxes: readonly Box[]): Box => ({ x0: Math.min(...boxes.map(({ x0 }) => x0)), x1: Math.max(...boxes.map(({ x1 }) => x1)), y0: Math.min(...boxes.map(({ y0 }) => y0)), y1: Math.max(...boxes.map(({ y1 }) => y1)) });

/** Words above ("high") or below ("low") the staff of a system as `tidy` leaves it, in the order of the drawing, where the engraver put them. */
export function wordsBeside(inner: string, side: 'high' | 'low', widthOf: WidthOf | undefined): { name: string; box: Box }[] {
  const found: { group: object; name: string; boxes: Box[] }[] = [];
  const read = boxReader(widthOf);
  for (const element of scan(inner)) {
    const group = element.groups.find(({ class: name }) => name.endsWith(` ${side}`));
    const name = group?.class.split(' ')[0];
    const boxes = read(element, name);
    if (!group) continue;
    const known = found.find((one) => one.group === group);
    if (known) known.boxes.push(...boxes);
    else found.push({ group, name: name!, boxes });
  }
  return found.map(({ name, boxes }) => ({ name, box: boxes.length ? around(boxes) : { x0: 0, x1: 0, y0: 0, y1: 0 } }));
}
