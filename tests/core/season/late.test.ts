import { describe, expect, it } from 'vitest';
import type { Proposal, Stage } from '../../../core/agreement/state.ts';
import type { ProgrammeDay } from '../../../core/agreement/wire/programme.ts';
import { daysBefore, daysBetween, firstDay } from '../../../core/season/days.ts';
import { deadlinesOf } from '../../../core/season/deadlines.ts';
import { nextDue, waitedFor } from '../../../core/season/late.ts';

const day = (kind: ProgrammeDay['kind'], date: string): ProgrammeDay => ({ kind, date, time: null, words: '' });
const days = [day('rehearsal', '2027-03-30'), day('rehearsal', '2027-03-29'), day('concert', '2027-04-02')];

describe('days of a programme', () => {
  it('the first of a kind is the earliest, in whatever order they stand', () => {
    expect([firstDay(days, 'rehearsal'), firstDay(days, 'concert'), firstDay([], 'concert')]).toEqual(['2027-03-29', '2027-04-02', null]);
  });

  it('are counted over months, leap days and changes of the clock', () => {
    expect([daysBetween('2027-02-28', '2027-03-01'), daysBetween('2028-02-28', '2028-03-01'), daysBetween('2027-03-30', '2027-03-26'), daysBefore('2028-03-01', 1)]).toEqual([1, 2, -4, '2028-02-29']);
  });
});

describe('deadlines', () => {
  // By a calendar of 2027: the 29th of March is a Monday, so are all of these.
  it('stand twelve, six, three and two weeks before the first rehearsal', () => {
    expect(deadlinesOf(days, {})).toEqual([
      { stage: 'withPrincipal', date: '2027-01-04' },
      { stage: 'roundSection', date: '2027-02-15' },
      { stage: 'inkedIn', date: '2027-03-08' },
      { stage: 'onStands', date: '2027-03-15' },
    ]);
  });

  it('a chosen day holds, a stage may have none, and one more may be given', () => {
    expect(deadlinesOf(days, { withPrincipal: null, inkedIn: '2027-03-01', printed: '2027-03-10', roundSection: null })).toEqual([
      { stage: 'inkedIn', date: '2027-03-01' },
      { stage: 'printed', date: '2027-03-10' },
      { stage: 'onStands', date: '2027-03-15' },
    ]);
  });

  it('without a rehearsal there are only those that were chosen', () => {
    expect(deadlinesOf([day('concert', '2027-04-02')], { inkedIn: '2027-03-01' })).toEqual([{ stage: 'inkedIn', date: '2027-03-01' }]);
  });
});

describe('what is due of a part', () => {
  const deadlines = deadlinesOf(days, {});
  it.each<[Stage, string, string | null, number | null]>([
    ['pulled', '2027-01-01', 'withPrincipal', 3],
    ['pulled', '2027-01-04', 'withPrincipal', 0],
    ['pulled', '2027-01-05', 'withPrincipal', -1],
    ['pulled', '2027-03-20', 'withPrincipal', -75],
    ['withPrincipal', '2027-02-16', 'roundSection', -1],
    ['roundSection', '2027-03-01', 'inkedIn', 7],
    ['inkedIn', '2027-03-16', 'onStands', -1],
    ['printed', '2027-03-15', 'onStands', 0],
    ['onStands', '2027-04-01', null, null],
  ])('%s on %s: %s, %s days left', (stage, today, due, left) => {
    const found = nextDue(stage, deadlines, today);
    expect([found?.stage ?? null, found?.days ?? null]).toEqual([due, left]);
  });
});

describe('who is waited for', () => {
  const [ilya, mona, jon, ada] = ['Ilya', 'Mona', 'Jon', 'Ada'].map((name) => ({ id: name.toLowerCase(), name }));
  const section = { principal: ilya!, seats: [{ seat: '1o', person: ilya! }, { seat: '1i', person: mona! }, { seat: '2o', person: jon! }, { seat: '2i', person: null }, { seat: '3o', person: ada! }] };
  const slip = (by: string, votes: Proposal['votes'] = {}, status: Proposal['status'] = 'open') => ({ status, votes, proposed: { by } }) as Proposal;
  const turn = (stage: Stage, slips: Proposal[] = [], where: Parameters<typeof waitedFor>[1] = section) => waitedFor({ stage, proposals: Object.fromEntries(slips.map((one, i) => [String(i), one])) }, where);

  it.each<[Stage, string]>([['pulled', 'principal'], ['withPrincipal', 'principal'], ['roundSection', 'principal'], ['inkedIn', 'librarian'], ['printed', 'librarian'], ['onStands', 'nobody']])('%s, with nothing open: the %s', (stage, who) => {
    expect(turn(stage).turn).toBe(who);
  });

  it('round the section: whoever has not voted on some open slip, front to back, and then the principal', () => {
    expect(turn('roundSection', [slip('mona', { 3: { jon: 'against' } })])).toEqual({ turn: 'players', players: [ada], principal: ilya });
    expect(turn('roundSection', [slip('mona', { 3: { jon: 'for' }, 4: { ada: 'for' } }), slip('ilya', { 9: { mona: 'for' } })])).toEqual({ turn: 'players', players: [jon, ada], principal: ilya });
  });

  it('when all have voted, or nothing is open any more, the principal decides', () => {
    expect(turn('roundSection', [slip('mona', { 3: { jon: 'for', ada: 'for' } })])).toEqual({ turn: 'principal', principal: ilya });
    expect(turn('roundSection', [slip('mona', {}, 'adopted'), slip('jon', {}, 'withdrawn')])).toEqual({ turn: 'principal', principal: ilya });
  });

  it('a section that nobody leads and a part without a section wait for the librarian to see to that', () => {
    expect(turn('withPrincipal', [], { ...section, principal: null })).toEqual({ turn: 'noPrincipal' });
    expect(turn('pulled', [], null)).toEqual({ turn: 'noSection' });
    expect(turn('printed', [], null)).toEqual({ turn: 'librarian' });
  });
});
