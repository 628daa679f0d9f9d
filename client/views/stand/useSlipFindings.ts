import { useEffect, useState } from 'react';
import { withProposals } from '../../../core/agreement/inForce.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { heard } from '../../../core/agreement/heard.ts';
import { added } from '../../checking/added.ts';
import type { Desk } from './desk.ts';

/** For each slip under the open measure: what there would be to watch if it were inked in, that is not there now. */
export function useSlipFindings({ checker, state, facts, view, found, seats }: Desk, slips: readonly string[]): Record<string, Finding[]> {
  const [bySlip, setBySlip] = useState<Record<string, Finding[]>>({});
  const ids = slips.join(' ');
  useEffect(() => {
    if (!checker || !ids) return;
    let current = true;
    const settings = view.section?.settings ?? {};
    void Promise.all(
      ids.split(' ').map(async (id) => {
        const marks = withProposals(state, [id], facts);
        return [id, heard(added(found, await checker.check({ seats, marks, settings })), state.mutes)] as const;
      }),
    ).then(
      (pairs) => current && setBySlip(Object.fromEntries(pairs)),
      () => current && setBySlip({}),
    );
    return () => {
      current = false;
    };
  }, [checker, ids, state, facts, view.section, found, seats]);
  return bySlip;
}
