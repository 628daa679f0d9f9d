import type { Asking } from './askings.ts';

interface OldProgramme {
  firstRehearsal?: string | null;
  concert?: string | null;
}

/** The two days that a programme had became the first of its days. */
function withDays({ firstRehearsal, concert, ...programme }: OldProgramme): object {
  if (firstRehearsal === undefined || concert === undefined) return programme;
  const day = (kind: string, date: string | null) => (date === null ? [] : [{ kind, date, time: null, words: '' }]);
  return { ...programme, days: [...day('rehearsal', firstRehearsal), ...day('concert', concert)], season: '', conductor: '', deadlines: {}, seatings: [] };
}

/** An answer of an earlier version as it must be given now: each way in which forms have changed since stands here with its reason. What only came to it is not named. */
export function asSaidNow({ path, answer }: Asking): unknown {
  if (path !== '/api/shelf') return answer;
  const { programmes, ...shelf } = answer as { programmes: OldProgramme[] };
  return { ...shelf, programmes: programmes.map(withDays) };
}
