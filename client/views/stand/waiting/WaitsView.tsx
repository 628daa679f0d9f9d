import { useEffect, useRef, type KeyboardEvent, type ReactNode } from 'react';
import { KINDS } from '../../../../core/agreement/waiting/waitsFor.ts';
import { words } from '../../../words/words.ts';
import { changeSentence } from '../../changeSentence.ts';
import { findingText } from '../../findingText.ts';
import { waitSentence } from '../../waiting/waitSentence.ts';
import { openMeasure } from '../commands.ts';
import type { Desk } from '../desk.ts';
import { measureName } from '../sentence.ts';

interface Line {
  key: string;
  text: string;
  measure: number;
  slip: string | null;
}

/** Findings on my own seat, not on everybody's. */
const onMySeat = ({ heard, view }: Desk) => heard.filter(({ seats }) => seats !== 'all' && view.seat !== null && seats.includes(view.seat));

function groupsOf(desk: Desk): { title: string; lines: Line[] }[] {
  const name = (ordinal: number) => measureName(desk, ordinal);
  const { waits } = desk.waits;
  const said = KINDS.map((kind) => ({
    kind,
    title: words.waits.kinds[kind],
    lines: waits.filter((one) => one.kind === kind).map((one): Line => ({ key: `${kind} ${one.seq} ${one.proposal}`, text: waitSentence(one, name), measure: one.measure, slip: one.proposal })),
  }));
  const watch = onMySeat(desk).map((finding): Line => ({ key: finding.rule + finding.place, text: words.waits.watch(words.inMeasures(name(finding.measure), name(finding.measure)), findingText(finding, name)), measure: finding.measure, slip: null }));
  const [before, after] = [said.filter(({ kind }) => kind !== 'decided'), said.filter(({ kind }) => kind === 'decided')];
  const changed = desk.sinceOut.map((change): Line => ({
    key: `since ${change.note} ${String(change.seats)}`, measure: change.measure, slip: null,
    text: `${words.measure(name(change.measure))}, ${changeSentence({ ...change, position: desk.index.notes.get(change.note)?.position ?? 0 })}`,
  }));
  return [{ title: words.season.since, lines: changed }, ...before, { title: words.waits.kinds.watch, lines: watch }, ...after].filter(({ lines }) => lines.length);
}

/** All that waits for me in this part, under the line in hand: each a sentence that leads to its place. */
export function WaitsView({ desk }: { desk: Desk }): ReactNode {
  const list = useRef<HTMLElement>(null);
  useEffect(() => (list.current?.querySelector('button') ?? list.current)?.focus(), []);
  const groups = groupsOf(desk);
  const go = ({ measure, slip }: Line) => {
    desk.waits.turn();
    openMeasure(desk, measure, slip);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (!by) return;
    event.stopPropagation();
    event.preventDefault();
    const all = [...(list.current?.querySelectorAll('button') ?? [])];
    all[all.indexOf(event.target as HTMLButtonElement) + by]?.focus();
  };
  return (
    <section className="waits" aria-label={words.waits.title} ref={list} tabIndex={-1} onKeyDown={onKeyDown}>
      <h3>{words.waits.title}</h3>
      {groups.length ? null : <p className="none">{words.waits.nothing}</p>}
      {groups.map(({ title, lines }) => (
        <div key={title}>
          <h4>{title}</h4>
          <ul>
            {lines.map((line) => (
              <li key={line.key}>
                <button type="button" onClick={() => go(line)}>
                  {line.text}
                </button>
              </li>
            ))}
          </ul>
        </div>
      ))}
      <div className="acts">
        <button type="button" onClick={desk.waits.turn}>
          {words.tools.close} <kbd aria-hidden="true">Esc</kbd>
        </button>
      </div>
    </section>
  );
}
