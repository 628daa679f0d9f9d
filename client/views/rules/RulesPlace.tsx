import { useEffect, useRef, type ReactNode } from 'react';
import type { Place } from '../../router.ts';
import { Head } from '../../ui/Head.tsx';
import { Ledge } from '../../ui/Ledge.tsx';
import { words } from '../../words/words.ts';
import { families } from './families.ts';
import { OneRule } from './OneRule.tsx';
import { RuleIndex } from './RuleIndex.tsx';

/** What the checker looks for: all rules, or one of them. An unknown rule shows them all. */
export function RulesPlace({ place }: { place: Extract<Place, { at: 'rules' }> }): ReactNode {
  const all = families();
  const rule = all.flatMap(({ rules }) => rules).find(({ id }) => id === place.rule);
  const page = useRef<HTMLElement>(null);
  useEffect(() => {
    page.current?.scrollTo(0, 0);
    page.current?.focus({ preventScroll: true });
  }, [place.rule]);
  return (
    <>
      <main className="pages rules" ref={page} tabIndex={-1}>
        <Head left={words.places.rules} middle={rule ? words.rules.families[rule.id.split('/')[0]!] : words.rules.middle} />
        {rule ? <OneRule rule={rule} /> : <RuleIndex families={all} />}
      </main>
      <Ledge here={place} sentence={<b>{rule ? words.rules.one : words.rules.where(all.flatMap(({ rules }) => rules).length)}</b>} sub={rule ? words.rules.oneSub : words.rules.sub} />
    </>
  );
}
