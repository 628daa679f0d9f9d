import type { Mention } from '../../../core/agreement/state.ts';
import { newId } from '../../agreement/newId.ts';
import type { ReactNode } from 'react';
import { CommandLine } from '../../tools/line/CommandLine.tsx';
import { LedgeLine } from '../../tools/line/LedgeLine.tsx';
import { SayLine } from '../../tools/line/SayLine.tsx';
import type { Command } from '../../tools/keys.ts';
import type { LineState } from '../../tools/line/line.ts';
import { selected } from '../../tools/caret/reducer.ts';
import { words } from '../../words/words.ts';
import { openMeasure } from './commands.ts';
import { goTo } from './goTo.ts';
import type { Desk } from './desk.ts';
import { lay, submit } from './lay.ts';
import { measureName, slipName } from './sentence.ts';

/** The people of the section besides me, as they sit; the principal even without a seat. */
function peopleOf({ view, me }: Desk): { id: string; name: string; seat: string }[] {
  const seated = view.section?.seats.flatMap(({ seat, person }) => (person ? [{ ...person, seat: words.seat.one(seat) }] : [])) ?? [];
  const { principal } = view.section ?? { principal: null };
  const all = principal && !seated.some(({ id }) => id === principal.id) ? [{ ...principal, seat: '' }, ...seated] : seated;
  return all.filter(({ id }) => id !== me.id);
}

/** What the line on the ledge is for, and what it does when it is written. */
export function StandLine({ desk, line, onCommand }: { desk: Desk; line: LineState; onCommand(command: Command): void }): ReactNode {
  const leave = () => desk.setLine(null);
  const mine = (what: string) => `${desk.me.id}/${desk.view.id}/${what}`;
  const done = (act: () => void) => () => {
    desk.setLine(null);
    act();
  };
  switch (line.kind) {
    case 'why':
      return (
        <LedgeLine
          key="why" about={mine(`why ${desk.revising?.id ?? ''}`)} label={words.line.why} button={line.ink ? words.line.ink : words.line.lay} text={line.text} max={500} seats={{ chosen: line.seats, all: desk.seats }} onLeave={leave}
          onWrite={(text, seats) => {
            // Refused or not: the sentence that says so stands where the line is now.
            lay(desk, text, seats, line.ink);
            leave();
          }}
        />
      );
    case 'words': {
      const note = selected(desk.caret, desk.walk.ids)[0];
      return <LedgeLine key="words" label={words.line.words} button={words.line.write} max={60} onLeave={leave} onWrite={(text) => done(() => note && desk.write({ type: 'write', marks: [{ note, value: { kind: 'text', text } }] }))()} />;
    }
    case 'goTo':
      return <LedgeLine key="goTo" label={words.line.goTo} button={words.line.go} max={12} numeric onLeave={leave} onWrite={(text) => done(() => goTo(desk, text))()} />;
    case 'command':
      return <CommandLine onLeave={leave} onCommand={(command) => done(() => onCommand(command))()} />;
    case 'say': {
      const slip = line.proposal === null ? undefined : desk.state.proposals[line.proposal];
      const about = slip ? slipName(desk, slip) : words.inMeasures(measureName(desk, line.measure), measureName(desk, line.measure));
      const write = (text: string, mentions: Mention[]) => {
        const written = submit(desk, 'comment', { id: newId(), measure: line.measure, proposal: line.proposal, text, mentions });
        if (written) openMeasure(desk, line.measure, line.proposal);
      };
      return <SayLine key="say" about={mine(`say ${line.measure} ${line.proposal ?? ''}`)} label={words.line.say(about)} people={peopleOf(desk)} max={2000} onLeave={leave} onWrite={(text, mentions) => done(() => write(text, mentions))()} />;
    }
    case 'aside': {
      const slip = desk.state.proposals[line.proposal];
      const name = slip ? slipName(desk, slip) : '';
      return <LedgeLine key="aside" about={mine(`aside ${line.proposal}`)} label={words.line.aside(name)} button={words.line.put} max={500} onLeave={leave} onWrite={(why) => done(() => submit(desk, 'setAside', { proposal: line.proposal, why }))()} />;
    }
    case 'mute': {
      const { rule, place, fingerprint } = line;
      return <LedgeLine key="mute" about={mine(`mute ${rule} ${place}`)} label={words.line.mute} button={words.line.rest} max={500} onLeave={leave} onWrite={(reason) => done(() => submit(desk, 'mute', { id: newId(), rule, place, fingerprint, reason }))()} />;
    }
  }
}
