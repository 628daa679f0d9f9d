import type { ReactNode } from 'react';
import type { Proposal } from '../../../core/agreement/state.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { seatWords } from '../../../core/music/markWords.ts';
import { lensOf } from '../../drawing/lensOf.ts';
import { SeatVotes } from '../../drawing/SeatVotes.tsx';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { votesOn } from '../../tools/run/votesOn.ts';
import { words } from '../../words/words.ts';
import { vote } from './commands.ts';
import { isPrincipal, mayMark, type Desk } from './desk.ts';
import { submit } from './lay.ts';
import { findingText } from '../findingText.ts';
import { measureName } from './sentence.ts';
import { Talk } from './Talk.tsx';

function seatOf({ view }: Desk, person: string): string {
  const found = view.section?.seats.find((seat) => seat.person?.id === person);
  return found ? words.seat.one(found.seat) : '';
}

function VoteKey({ desk, slip, which, measure }: { desk: Desk; slip: Proposal; which: 'for' | 'against'; measure: number }): ReactNode {
  const mine = slip.votes[measure]?.[desk.me.id] === which;
  return (
    <button type="button" aria-pressed={mine} onClick={() => vote(desk, which, slip.id)}>
      {words.slip[which]} {desk.caret.slip === slip.id ? <kbd aria-hidden="true">{which === 'for' ? '+' : '−'}</kbd> : null}
    </button>
  );
}

function Decide({ desk, slip }: { desk: Desk; slip: Proposal }): ReactNode {
  const mine = slip.proposed.by === desk.me.id;
  const writeAnew = () => {
    desk.write({ type: 'take', marks: slip.marks });
    desk.setRevising(slip);
  };
  return (
    <>
      {isPrincipal(desk) ? (
        <>
          <button type="button" onClick={() => submit(desk, 'adopt', { proposal: slip.id, revision: slip.revision, why: '' })}>
            {words.slip.inkIn}
          </button>
          <button type="button" onClick={() => desk.setLine({ kind: 'aside', proposal: slip.id })}>
            {words.slip.setAside}
          </button>
        </>
      ) : null}
      {mine ? (
        <>
          <button type="button" onClick={writeAnew}>
            {words.slip.change}
          </button>
          <button type="button" onClick={() => submit(desk, 'withdraw', { proposal: slip.id, why: '' })}>
            {words.slip.takeBack}
          </button>
        </>
      ) : null}
      <button
        type="button"
        onClick={() => {
          desk.move({ type: 'slip', slip: slip.id });
          desk.setLine({ kind: 'say', measure: desk.caret.open ?? slip.from, proposal: slip.id });
        }}
      >
        {words.slip.say}
      </button>
    </>
  );
}

/** What is known of one slip: whose, why, who is for and against where they sit, what it would bring to watch, and the talk about it. */
export function SlipFacts({ desk, slip, name, measure, findings, chosen }: { desk: Desk; slip: Proposal; name: string; measure: number; findings: readonly Finding[]; chosen: boolean }): ReactNode {
  const { section } = desk.view;
  const votes = slip.votes[measure] ?? {};
  const { plus, minus } = votesOn(slip, measure);
  const people = section?.seats.filter(({ person }) => person).length ?? 0;
  const where = words.inMeasures(measureName(desk, slip.from), measureName(desk, slip.to));
  return (
    <article className={chosen ? 'facts chosen' : 'facts'} data-proposal={slip.id} aria-label={words.slip.label(name, slip.proposed.name)} aria-current={chosen || undefined} onClick={() => desk.move({ type: 'slip', slip: slip.id })}>
      <h3>
        <em>{name}</em> <b>{slip.proposed.name}</b> <span>{[seatOf(desk, slip.proposed.by), slip.seats === 'all' ? '' : words.seat.forSome(seatWords(slip.seats, words.marks)), slip.from === slip.to ? '' : words.slip.covers(where)].filter(Boolean).join(' · ')}</span>
      </h3>
      <p className="why">{slip.why}</p>
      <div className="cast">
        {section ? <SeatVotes section={section} votes={votes} me={desk.me.id} label={words.slip.votes(plus, minus, people)} /> : null}
        <span className="counts">
          <b>{plus}</b> {words.slip.for} <b>{minus}</b> {words.slip.against}
        </span>
        {mayMark(desk) ? (
          <span className="acts">
            <VoteKey desk={desk} slip={slip} which="for" measure={measure} />
            <VoteKey desk={desk} slip={slip} which="against" measure={measure} />
          </span>
        ) : null}
      </div>
      {findings.map((finding) => (
        <p key={finding.place + finding.rule} className="watch" data-finding={finding.rule}>
          <SpectaclesInline dark={lensOf(finding.seats)} /> {findingText(finding, (ordinal) => measureName(desk, ordinal))} <PlaceLink to={{ at: 'rules', rule: finding.rule }}>{words.rules.why}</PlaceLink>
        </p>
      ))}
      <Talk desk={desk} measure={measure} proposal={slip.id} />
      <p className="acts decide">
        <Decide desk={desk} slip={slip} />
      </p>
    </article>
  );
}
