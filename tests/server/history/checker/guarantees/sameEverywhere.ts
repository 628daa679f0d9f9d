import { isDeepStrictEqual } from 'node:util';
import { comesTo } from '../comesTo.ts';
import { slipsOf } from '../ownReplay.ts';
import type { Guarantee } from '../told.ts';

export const sameEverywhere: Guarantee = {
  id: 4,
  says: 'every connected quiet client has what the log comes to, and so has the server',
  broken({ of, logs }) {
    const states = new Map([...logs].map(([part, rows]) => [part, comesTo(rows)]));
    const clients = of('final').flatMap((one) => {
      if (one.status !== 'live') return [{ what: `a page did not come to rest: ${one.status}`, shown: [one] }];
      const should = states.get(one.part);
      return one.state === should ? [] : [{ what: 'a quiet page has another state than the log', shown: [one, { should, rows: logs.get(one.part)?.length }] }];
    });
    const servers = of('shown').flatMap(({ part, slips, state }) => {
      const own = slipsOf(logs.get(part) ?? []);
      const odd = [...new Set([...Object.keys(own), ...Object.keys(slips)])].filter((id) => !isDeepStrictEqual(dropEmpty(own[id]), dropEmpty(slips[id])));
      const seen = odd.slice(0, 3).map((id) => ({ what: `proposal ${id} stands otherwise than its log says`, shown: [{ part, server: slips[id] ?? null, log: own[id] ?? null }] }));
      const should = states.get(part);
      return state === should ? seen : [...seen, { what: 'the server shows another state than the log', shown: [{ part, state, should }] }];
    });
    return [...clients, ...servers];
  },
};

/** A vote taken back leaves a measure without votes, which is the same as none. */
const dropEmpty = <T extends { votes: Record<string, object> }>(slip: T | undefined) =>
  slip && { ...slip, votes: Object.fromEntries(Object.entries(slip.votes).filter(([, votes]) => Object.keys(votes).length > 0)) };
