import type { Of, Slip } from '../record/happened.ts';

type Rows = Of<'log'>['rows'];

/** What a log says of its proposals, read without any code of the house: who votes what, which revision counts, how each ended. */
export function slipsOf(rows: Rows): Record<string, Slip> {
  const slips: Record<string, Slip> = {};
  const at = (id: string): Slip => (slips[id] ??= { status: 'never laid', revision: 0, votes: {} });
  for (const { events, by } of rows) {
    for (const event of events) {
      if (event.type === 'proposed') slips[event.id] = { status: 'open', revision: 1, votes: {} };
      if (event.type === 'revised') slips[event.id] = { status: 'open', revision: at(event.id).revision + 1, votes: {} };
      if (event.type === 'withdrawn') at(event.id).status = 'withdrawn';
      if (event.type === 'adopted') at(event.proposal).status = 'adopted';
      if (event.type === 'setAside') at(event.proposal).status = 'setAside';
      if (event.type === 'voteCast') {
        const measure = (at(event.proposal).votes[event.measure] ??= {});
        if (event.vote) measure[by] = event.vote;
        else delete measure[by];
      }
    }
  }
  return slips;
}
