/** What a mark touches, and where. */
export interface Touch {
  kind: 'mark' | 'notehead' | 'words';
  mark: string;
  other: string;
  /** How far they lie over each other, in staff spaces, the lesser way. */
  by: number;
  system: string;
}

export interface MarkOnPage {
  note: string;
  name: string;
  /** Staff spaces: from the middle of the mark to its notehead, rightward; from its foot up to the top line of its staff (negative below it). */
  right: number;
  above: number;
}

/** Measured in the browser: every mark on the page, and whatever it lies over. Text is measured by its ink, not by its line. */
export function inkOnPage(): { marks: MarkOnPage[]; touches: Touch[] } {
  interface Ink { x0: number; x1: number; y0: number; y1: number }
  const canvas = document.createElement('canvas').getContext('2d')!;
  const textInk = (element: SVGTextContentElement): Ink | null => {
    const text = element.textContent ?? '';
    if (!text.trim() || element.getNumberOfChars() === 0) return null;
    const style = getComputedStyle(element);
    const matrix = element.getScreenCTM()!;
    const size = parseFloat(style.fontSize);
    canvas.font = `${style.fontStyle} ${style.fontWeight} 100px ${style.fontFamily}`;
    const measured = canvas.measureText(text);
    const start = element.getStartPositionOfChar(0).matrixTransform(matrix);
    const scale = (size / 100) * matrix.a;
    return { x0: start.x - measured.actualBoundingBoxLeft * scale, x1: start.x + measured.actualBoundingBoxRight * scale, y0: start.y - measured.actualBoundingBoxAscent * scale, y1: start.y + measured.actualBoundingBoxDescent * scale };
  };
  const shapeInk = (element: Element): Ink => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    const { stroke, strokeWidth } = getComputedStyle(element);
    const half = stroke === 'none' ? 0 : (parseFloat(strokeWidth) / 2) * (element as SVGGraphicsElement).getScreenCTM()!.a;
    return { x0: left - half, x1: right + half, y0: top - half, y1: bottom + half };
  };
  const inkOf = (root: Element): Ink[] =>
    [root, ...root.querySelectorAll('*')].flatMap((element) => {
      if (element instanceof SVGTextContentElement) return element.children.length ? [] : ([textInk(element)].filter(Boolean) as Ink[]);
      return element instanceof SVGGeometryElement || element instanceof SVGUseElement ? [shapeInk(element)] : [];
    });
  const around = (boxes: Ink[]): Ink => ({ x0: Math.min(...boxes.map(({ x0 }) => x0)), x1: Math.max(...boxes.map(({ x1 }) => x1)), y0: Math.min(...boxes.map(({ y0 }) => y0)), y1: Math.max(...boxes.map(({ y1 }) => y1)) });
  const over = (a: Ink, b: Ink): number => Math.min(Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0), Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0));

  const marks: MarkOnPage[] = [];
  const touches: Touch[] = [];
  for (const row of document.querySelectorAll<HTMLElement>('[data-system]')) {
    const svg = row.querySelector('svg')!;
    const unit = svg.getScreenCTM()!.a;
    const signs = [...svg.querySelectorAll('.marks > [data-mark]')].map((group) => ({ name: `${group.getAttribute('data-mark')} on ${group.getAttribute('data-on')}`, note: group.getAttribute('data-on')!, mark: group.getAttribute('data-mark')!, ink: around(inkOf(group)) }));
    const heads = [...svg.querySelectorAll('.notehead')].map((head) => ({ name: head.closest('.note')?.id ?? '', ink: around(inkOf(head)) }));
    const words = [...svg.querySelectorAll('.sys .dynam, .sys .dir, .sys .tempo, .sys .reh, .sys .fing, .sys .mNum')].flatMap((one) => inkOf(one).map((ink) => ({ name: `${one.classList[0]} "${one.textContent}"`, ink })));
    const lines = [...svg.querySelectorAll('.sys .staff > path')].map((line) => line.getBoundingClientRect());
    const top = Math.min(...lines.map((line) => line.top));
    const system = row.dataset.system!;
    for (const [i, sign] of signs.entries()) {
      const head = heads.find(({ name }) => name === sign.note);
      marks.push({ note: sign.note, name: sign.mark, right: head ? ((sign.ink.x0 + sign.ink.x1) / 2 - (head.ink.x0 + head.ink.x1) / 2) / unit : NaN, above: (top - sign.ink.y1) / unit });
      const meet = (kind: Touch['kind'], others: { name: string; ink: Ink }[]) => {
        for (const other of others) {
          const by = over(sign.ink, other.ink) / unit;
          if (by > 0.05) touches.push({ kind, mark: sign.name, other: other.name, by, system });
        }
      };
      meet('mark', signs.slice(i + 1));
      meet('notehead', heads);
      meet('words', words);
    }
  }
  return { marks, touches };
}
