import type { ReactNode } from 'react';
import { markWords, seatWords } from '../../../core/music/markWords.ts';
import type { Proposal, StandingMark } from '../../../core/agreement/state.ts';
import { words } from '../../words/words.ts';
import type { Desk } from './desk.ts';
import { submit } from './lay.ts';
import { slipName } from './sentence.ts';
import { Talk } from './Talk.tsx';

function decided({ status, decided: stamp }: Proposal): string {
  if (!stamp) return '';
  const say = status === 'adopted' ? words.slip.adopted : status === 'setAside' ? words.slip.aside : words.slip.withdrawn;
  return say(stamp.name, stamp.at) + (stamp.why ? `: ${stamp.why}` : '');
}

/** Marks that came in together and went together, in one line. */
function together(ink: readonly StandingMark[]): StandingMark[][] {
  const lines = new Map<string, StandingMark[]>();
  for (const one of ink) {
    const key = `${one.proposal} ${one.superseded?.seq ?? ''}`;
    lines.set(key, [...(lines.get(key) ?? []), one]);
  }
  return [...lines.values()];
}

/** What became of this measure: slips decided, marks in ink with who and why, what they replaced, what was put to rest. */
export function Past({ desk, measure }: { desk: Desk; measure: number }): ReactNode {
  const { state } = desk;
  const past = Object.values(state.proposals).filter((slip) => slip.status !== 'open' && slip.from <= measure && measure <= slip.to);
  const ink = state.ink.some((one) => one.measure === measure);
  const resting = Object.values(state.mutes).filter(({ place }) => place === '*' || desk.found.some((finding) => finding.measure === measure && finding.place === place));
  if (!past.length && !ink && !resting.length) return null;
  return (
    <section className="past" aria-label={words.slip.history}>
      <h3>{words.slip.history}</h3>
      <ul>
        {past.map((slip) => (
          <li key={slip.id} data-past={slip.id}>
            <em>{slipName(desk, slip)}</em> {slip.proposed.name}: {slip.why} <span>{decided(slip)}</span>
            <Talk desk={desk} measure={measure} proposal={slip.id} />
          </li>
        ))}
        {together(state.ink.filter((one) => one.measure === measure)).map((marks) => {
          const { inked, superseded, why, proposal } = marks[0]!;
          return (
            <li key={`${proposal} ${superseded?.seq ?? ''}`}>
              <b className={superseded ? 'gone' : ''}>{marks.map(({ mark, seats }) => words.slip.stands(markWords(mark.value, undefined, words.marks), seatWords(seats, words.marks))).join('; ')}.</b>{' '}
              <span>{`${words.slip.adopted(inked.name, inked.at)}: ${why}`}</span>
              {superseded ? <span> · {`${words.slip.replaced(superseded.name, superseded.at)}: ${superseded.why}`}</span> : null}
            </li>
          );
        })}
        {resting.map(({ id, reason, muted }) => (
          <li key={id}>
            {words.slip.muted(muted.name)}: {reason}{' '}
            {desk.view.roles.some((role) => role !== 'player') ? (
              <button type="button" onClick={() => submit(desk, 'unmute', { id })}>
                {words.slip.wake}
              </button>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  );
}
