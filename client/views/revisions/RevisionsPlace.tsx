import { useMemo, type ReactNode } from 'react';
import { numberAt } from '../../../core/music/printedNumber.ts';
import { measuresOf } from '../../../core/agreement/difference.ts';
import type { PartView } from '../../../core/agreement/wire/http.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { fetchDifference, fetchRevision, fetchRevisions } from '../../library/archive.ts';
import { getJson, troubleText } from '../../library/http.ts';
import { keptText } from '../../library/kept/library.ts';
import { useFolderOf } from '../../library/useFolderOf.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { go, type Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { LedgeWord } from '../../ui/ledgeParts.tsx';
import { usePlaceKeys } from '../../ui/usePlaceKeys.ts';
import { useSay } from '../../ui/useSay.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';
import { Differences } from './Differences.tsx';
import { GoBack } from './GoBack.tsx';
import { compared, stateName, statesOf, stepped } from './states.ts';
import { StatesLine } from './StatesLine.tsx';
import { StatesList } from './StatesList.tsx';

/** Every state of a part: two of them are compared, laid on paper as change slips, and the earlier one gone back to. */
export function RevisionsPlace({ place }: { place: Extract<Place, { at: 'revisions' }> }): ReactNode {
  const { part } = place;
  const { said, attempt } = useSay();
  const view = useLoaded(`view ${part}`, () => getJson<PartView>(`/parts/${part}`));
  useFolderOf(view.value?.work.id ?? null);
  const known = useLoaded(`states ${part}`, () => fetchRevisions(part));
  const text = useLoaded(`engraving ${part}`, () => keptText(`/parts/${part}/engraving`));
  const states = useMemo(() => statesOf(known.value?.revisions ?? []), [known.value]);
  const { from, to } = compared(states, place.between);
  const found = useLoaded(`difference ${part} ${from} ${to} ${known.value?.head ?? ''}`, async () => {
    const [{ changes }, before, after] = await Promise.all([fetchDifference(part, from, to), fetchRevision(part, from), fetchRevision(part, to)]);
    return { changes, before: before.marks, after: after.marks };
  });
  const choose = (which: 'from' | 'to', seq: number) => go({ at: 'revisions', part, between: { from, to, [which]: seq } }, { replace: true });
  const step = (which: 'from' | 'to', by: 1 | -1) => choose(which, stepped(states, which === 'from' ? from : to, by));
  usePlaceKeys({
    ArrowLeft: () => step('to', -1),
    ArrowRight: () => step('to', 1),
    'Shift+ArrowLeft': () => step('from', -1),
    'Shift+ArrowRight': () => step('from', 1),
    Escape: () => go({ at: 'stand', part, measure: null }),
  });
  const { width, height } = useWindowSize();
  const { music, spacing } = sizesFor(width, height);

  const act = (work: () => Promise<string | null | void>) =>
    attempt(async () => {
      const sentence = await work();
      view.again();
      known.again();
      go({ at: 'revisions', part, between: null }, { replace: true });
      return sentence;
    });
  const fault = view.fault ?? known.fault ?? found.fault;
  const score = view.value?.part;
  const number = (ordinal: number): string => numberAt(score ?? { measures: [] }, ordinal);
  const name = (seq: number): string => stateName(states.find((state) => state.seq === seq)!, number);
  const sentence = fault ? troubleText(fault) : found.value ? words.revisions.sum(found.value.changes.length, measuresOf(found.value.changes).length) : words.revisions.fetched;
  const leads = view.value?.roles.includes('principal') ?? false;
  return (
    <>
      <main className="pages revisions">
        <Head left={score?.name ?? ''} middle={view.value ? words.revisions.middle(view.value.work.title) : ''} right={words.places.revisions} />
        {known.value && score ? (
          <>
            <StatesLine states={states} from={from} to={to} onChoose={(seq) => choose(seq < from ? 'from' : 'to', seq)} />
            <StatesList states={states} from={from} to={to} number={number} onChoose={choose} />
            <h2 className="slips-title">{words.revisions.slips(score.name)}</h2>
            <p className="slips-between">
              <span>{words.revisions.choose(words.revisions.before, name(from))}</span> <span>{words.revisions.choose(words.revisions.after, name(to))}</span>
            </p>
            {found.value && text.value ? <Differences {...found.value} part={score} text={text.value} width={music} spacing={spacing} number={number} /> : null}
            {leads && found.value?.changes.length ? <GoBack part={part} seq={from} name={name(from)} act={act} /> : null}
          </>
        ) : null}
      </main>
      <Ledge
        here={place} sentence={<b>{said ?? sentence}</b>} sub={<span className="by-key">{words.revisions.sub}</span>}
        tools={
          <div className="word-row">
            <LedgeWord word={words.revisions.print} cap={`${words.keys.caps.Ctrl} P`} onPress={() => window.print()} />
          </div>
        }
      />
    </>
  );
}
