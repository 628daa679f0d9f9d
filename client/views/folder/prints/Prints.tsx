import { useId, useState, type FormEvent, type ReactNode } from 'react';
import { seatsOf } from '../../../../core/agreement/seating.ts';
import type { SectionView, WorkView } from '../../../../core/agreement/wire/http.ts';
import { CopyMarks } from '../../../../core/print/copy.ts';
import { Fingerings } from '../../../../core/print/fingerings.ts';
import { MarginsName } from '../../../../core/print/margins.ts';
import { PaperName, STAFF } from '../../../../core/print/paper.ts';
import { FORMS, type PrintsAsked } from '../../../library/prints.ts';
import { Choice } from '../../../ui/Choice.tsx';
import { words } from '../../../words/words.ts';
import { GrowingStaff } from '../GrowingStaff.tsx';
import { CopiesLine } from './CopiesLine.tsx';
import { readersFor, type Copies } from './copies.ts';
import { usePrints } from './usePrints.ts';

/** Heights of a staff to choose from, in mm. */
const STAVES = [STAFF.least, 7.25, STAFF.usual, 7.7, 8, STAFF.most];

interface Props {
  work: WorkView;
  /** Parts of the work that this person may hand out. */
  parts: WorkView['parts'];
  inHand: string;
  sections: readonly SectionView[];
  say(sentence: string | null): void;
}

/** Copies for any of the desks of any of the parts, as pages to print or as files: ticked, made one after another, stopped. */
export function Prints({ work, parts, inHand, sections, say }: Props): ReactNode {
  const title = useId();
  const [chosen, setChosen] = useState<ReadonlyMap<string, Copies>>(new Map([[inHand, 'section']]));
  const { making, make, stop } = usePrints(work.id, say);
  const seatsIn = (part: WorkView['parts'][number]) => seatsOf(sections.find(({ id }) => id === part.section?.id));
  const copies = parts.filter(({ id }) => chosen.has(id)).map((part) => ({ part: part.id, for: readersFor(chosen.get(part.id)!, seatsIn(part)) }));
  const count = copies.reduce((sum, one) => sum + one.for.length, 0);
  const turn = (part: string, how: Copies | null) => {
    const next = new Map(chosen);
    if (how) next.set(part, how);
    else next.delete(part);
    setChosen(next);
  };
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const said = Object.fromEntries(new FormData(event.currentTarget)) as Omit<PrintsAsked, 'copies' | 'staff'> & { staff: string };
    const { form, marks, paper, margins, fingerings, staff } = said;
    void make({ copies, form, marks, paper, margins, fingerings, staff: Number(staff) }, count);
  };
  const options = <T extends string>(all: readonly T[], word: Record<T, string>) => all.map((value) => ({ value, word: word[value] }));
  return (
    <section className="prints rows" aria-labelledby={title}>
      <h2 id={title}>{words.prints.title(work.title)}</h2>
      <p className="quiet">{words.prints.what}</p>
      <form onSubmit={onSubmit}>
        <div>
          {parts.map((part) => (
            <CopiesLine key={part.id} name={part.name} seats={seatsIn(part)} copies={chosen.get(part.id) ?? null} onTurn={(how) => turn(part.id, how)} />
          ))}
        </div>
        <div>
          <p className="chosen-line"><Choice label={words.prints.form} name="form" options={options(FORMS, words.prints.forms)} first="pdf" /></p>
          <p className="chosen-line"><Choice label={words.prints.paper} name="paper" options={options(PaperName.options, words.prints.papers)} first="a4" /></p>
          <p className="chosen-line"><Choice label={words.prints.margins} name="margins" options={options(MarginsName.options, words.prints.edges)} first="usual" /></p>
          <p className="chosen-line"><Choice label={words.prints.staff} name="staff" options={STAVES.map((mm) => ({ value: String(mm), word: words.prints.millimetres(mm) }))} first={String(STAFF.usual)} /></p>
          <p className="chosen-line"><Choice label={words.prints.marks} name="marks" options={options(CopyMarks.options, words.prints.marked)} first="agreed" /></p>
          <p className="chosen-line"><Choice label={words.prints.fingerings} name="fingerings" options={options(Fingerings.options, words.prints.figures)} first="all" /></p>
        </div>
        {making ? (
          <p className="running">
            <GrowingStaff done={making.made} of={making.of} label={words.prints.picture(making.made, making.of)} />
            <button type="button" onClick={stop}>{words.prints.stop}</button>
          </p>
        ) : (
          <button type="submit" disabled={!count}>{words.prints.make(count)}</button>
        )}
      </form>
    </section>
  );
}
