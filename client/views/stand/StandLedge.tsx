import { useMemo, useState, type ReactNode } from 'react';
import { refusalText } from '../../../core/agreement/refusal.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import type { Place } from '../../router.ts';
import type { Command } from '../../tools/keys.ts';
import { Ledge } from '../../ui/Ledge.tsx';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';
import { slipsHere } from './commands.ts';
import { isPrincipal, type Desk } from './desk.ts';
import { goToMeasure } from './goTo.ts';
import { KeysList } from './KeysList.tsx';
import { openRanges } from './openMeasures.ts';
import { OpenBeside, PhoneMoves } from './phone/PhoneMoves.tsx';
import { goingSentence, subSentence, whereSentence } from './sentence.ts';
import { slipSentence } from './slipSentence.ts';
import { StandLine } from './StandLine.tsx';
import { StandMoves } from './StandMoves.tsx';
import { StandTools } from './StandTools.tsx';
import { Thread } from './Thread.tsx';
import { unreadMeasures } from './unread.ts';
import { useStandHint } from './useStandHint.ts';

function urgent({ snapshot, message, notice }: Desk): { lead: string; sub?: string } | null {
  const refusal = snapshot.refusals.at(-1)?.refusal;
  if (refusal) return { lead: refusalText(refusal, words.refusals), sub: words.refusedSub };
  if (message) return { lead: message };
  if (notice.text) return { lead: notice.text };
  return snapshot.trouble && snapshot.hindrance === null ? { lead: refusalText(snapshot.trouble, words.refusals) } : null;
}

/** The stand's ledge: thread, sentence or line of writing, signs and pencils. */
export function StandLedge({ desk, engraved, seen, place, onCommand }: { desk: Desk; engraved: EngravingSnapshot; seen: readonly [number, number]; place: Place; onCommand(command: Command): void }): ReactNode {
  const { width, height } = useWindowSize();
  const phone = sizesFor(width, height).kind === 'phone';
  const [marking, setMarking] = useState(false);
  const signs = !phone || marking || desk.pencil.draft.length > 0;
  const running = isPrincipal(desk) && slipsHere(desk).slip !== undefined;
  const open = useMemo(() => openRanges(desk.state), [desk.state]);
  const unread = useMemo(() => unreadMeasures(desk.state, desk.me.id, desk.view.seen), [desk.state, desk.me.id, desk.view.seen]);
  const loading = engraved.whole && engraved.drawn < engraved.systems.length;
  const engraving = engraved.failed ? words.engravingFailed : loading ? `${words.engraving(engraved.drawn, engraved.systems.length)} ${words.engravingSub}` : null;
  const where = whereSentence(desk);
  const first = urgent(desk);
  const hint = useStandHint(desk);
  const going = goingSentence(desk);
  const acting = !first && going?.act ? going : null;
  const second = acting ? acting.rest : going ? `${going.lead} ${going.rest}`.trim() : subSentence(desk, engraving);
  const slip = desk.pencil.draft.length || going ? null : slipSentence(desk);
  const here = desk.caret.at === null ? 1 : (desk.facts.notes.get(desk.caret.at) ?? 1);
  const done = open.length === 0 && desk.heard.length === 0 && (desk.state.locked || desk.state.ink.length > 0);
  return (
    <Ledge
      here={place}
      className="stand-ledge"
      thread={
        <>
          {desk.keys ? <KeysList onClose={() => desk.setKeys(false)} onCommand={onCommand} /> : null}
          <Thread
            part={desk.index.part} open={open} waits={desk.waits.waits} findings={desk.heard} unread={unread} seen={seen} here={here} away={desk.snapshot.hindrance !== null} done={done} width={width - 64}
            grown={engraved.whole ? engraved.drawn / engraved.systems.length : 0.02} onMeasure={(measure) => goToMeasure(desk, measure)}
          />
        </>
      }
      sentence={first ?? acting ? <b>{(first ?? acting)!.lead}</b> : <><b>{where.lead}</b>{where.rest}</>}
      sub={(going ? undefined : first?.sub) ?? (slip ? <>{slip.line}<span className="offstage"> {slip.why}</span></> : first?.lead === second ? null : second)}
      hint={hint}
      line={desk.line ? <StandLine desk={desk} line={desk.line} onCommand={onCommand} /> : null}
      before={phone ? <OpenBeside desk={desk} which="before" onCommand={onCommand} /> : null}
      after={phone ? <OpenBeside desk={desk} which="after" onCommand={onCommand} /> : null}
      moves={signs || running ? <StandMoves desk={desk} few={!signs} phone={phone} onCommand={onCommand} /> : null}
      tools={
        <>
          {phone ? <PhoneMoves desk={desk} marking={signs} onMarking={() => setMarking(!marking)} onCommand={onCommand} /> : null}
          {signs ? <StandTools desk={desk} onCommand={onCommand} /> : null}
        </>
      }
    />
  );
}
