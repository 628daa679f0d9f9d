import { useEffect, useMemo, useRef, type ReactNode } from 'react';
import { PAPER } from '../../../engraving/sizes.ts';
import { useEngraving } from '../../../engraving/useEngraving.ts';
import type { Desk } from '../desk.ts';
import { measureName } from '../sentence.ts';
import { inked, pencilled } from '../shownMarks.ts';
import { PaperSystem } from './PaperSystem.tsx';

const SPACING = 0.5;

/** The part laid out for paper, beside the one on the screen, which does not show it: what stands in ink for whoever is shown, and what is mine alone. `onLaid` when all of it is there. */
export function Paper({ desk, text, onLaid }: { desk: Desk; text: string; onLaid(): void }): ReactNode {
  const { engraved } = useEngraving(text, PAPER.line, SPACING);
  const { standing, caret, index, pencil } = desk;
  const marks = useMemo(() => [...inked(standing, caret.seat, index), ...pencilled(pencil.alone, 'all', standing, index, 'private')], [standing, caret.seat, index, pencil.alone]);
  const whole = engraved.whole && engraved.systems.every(({ drawing }) => drawing !== null);
  const told = useRef(false);
  useEffect(() => {
    if (!whole || told.current) return;
    told.current = true;
    void document.fonts.ready.then(() => requestAnimationFrame(() => requestAnimationFrame(onLaid)));
  }, [whole, onLaid]);
  return (
    <section className="on-paper" aria-hidden="true">
      <header>
        <b>{desk.view.part.name}</b>
        <i>{desk.view.work.title}</i>
        <span>{desk.view.work.composer}</span>
      </header>
      {engraved.systems.map(({ drawing, first }) => (drawing ? <PaperSystem key={first} drawing={drawing} number={measureName(desk, first)} marks={marks.filter(({ note }) => note in drawing.geometry.notes)} /> : null))}
    </section>
  );
}
