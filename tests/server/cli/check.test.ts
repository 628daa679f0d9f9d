import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/check/finding.ts';

const folder = mkdtempSync(join(tmpdir(), 'bowline-check-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, content: unknown): string => {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
};

const note = (step: string, octave: number, extra = '') => `<note><pitch><step>${step}</step><octave>${octave}</octave></pitch><duration>4</duration><type>whole</type>${extra}</note>`;
const slur = (type: string) => `<notations><slur type="${type}" number="1"/></notations>`;
/** Four slow measures in piano under one slur, for a violin and for something that is no string instrument. */
const SCORE = file(
  'line.musicxml',
  `<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
  <part-list><score-part id="P1"><part-name>Violin I</part-name></score-part><score-part id="P2"><part-name>Flute</part-name></score-part></part-list>
  <part id="P1">
    <measure number="10"><attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>
      <direction><direction-type><dynamics><pp/></dynamics></direction-type><sound tempo="80"/></direction>${note('B', 4, slur('start'))}</measure>
    <measure number="11">${note('C', 5)}</measure>
    <measure number="12">${note('D', 5)}</measure>
    <measure number="13">${note('E', 5, slur('stop'))}</measure>
  </part>
  <part id="P2"><measure number="10"><attributes><divisions>1</divisions></attributes>${note('C', 5)}</measure><measure number="11">${note('C', 5)}</measure><measure number="12">${note('C', 5)}</measure><measure number="13">${note('C', 5)}</measure></part>
</score-partwise>
`,
);

function bowline(...args: string[]): { code: number | null; findings: Finding[]; complaint: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(import.meta.dirname, '../../../server/cli/bowline.mjs'), 'check', ...args], { encoding: 'utf8' });
  return { code: status, findings: stdout ? (JSON.parse(stdout) as { findings: Finding[] }).findings : [], complaint: stderr };
}

const marks = (name: string, list: unknown[]) => file(name, { marks: list });
const change = (measure: number, after: string, seats: string[]) => ({ part: 'P1', measure, note: 0, change: { after }, seats });

describe('bowline check', () => {
  it('finds nothing in a line that fits on one bow, and exits with 0', () => {
    expect(bowline(SCORE, '--part', 'P1')).toEqual({ code: 0, findings: [], complaint: '' });
  });

  it('prints what marks cause, and exits with 1', () => {
    const { code, findings } = bowline(SCORE, '--part', 'P1', '--marks', marks('zero.json', [{ part: 'P1', measure: 2, note: 0, finger: 0, string: 2 }]));
    expect(code).toBe(1);
    expect(findings).toMatchObject([{ rule: 'fingering/zero-is-open', message: 'stoppedPitch', severity: 'cannotPlay', measure: 2, seats: 'all' }]);
    expect(findings[0]!.text).toContain('measure 11');
  });

  it('takes the seats from the marks where no section is given', () => {
    const { findings } = bowline(SCORE, '--part', 'P1', '--marks', marks('desk.json', [change(2, '1/2', ['3o', '3i'])]));
    expect(findings.map(({ rule, seats }) => [rule, seats])).toEqual([['desk/partners-change-together', ['3o', '3i']], ['section/too-many-at-once', ['3o', '3i']]]);
  });

  it('takes players, seats and settings from the section file', () => {
    const plan = marks('plan.json', [change(2, '1/2', ['1o']), change(2, '1/2', ['2o'])]);
    const rules = (section: unknown) => bowline(SCORE, '--part', 'P1', '--marks', plan, '--section', file('section.json', section)).findings.map(({ rule }) => rule);
    expect(rules({ players: 12 })).toEqual(['section/too-many-at-once']);
    expect(rules({ players: 16 })).toEqual([]);
    expect(rules({ seats: ['1o', '1i', '2o'], settings: { togetherShare: 0.7 } })).toEqual([]);
  });

  it.each([
    ['a part that is not there', () => [SCORE, '--part', 'P9'], /no part "P9".*P1 \(Violin I\)/],
    ['a part that is no string part', () => [SCORE, '--part', 'P2'], /Part P2 \(Flute\).*\{"instrument":"violin"\}/],
    ['no part named', () => [SCORE], /--part is missing/],
    ['a setting of wrong form', () => [SCORE, '--part', 'P1', '--section', file('wrong.json', { players: 4, settings: { partnersApart: 'far' } })], /settings\.partnersApart/],
    ['a lowest string that is none', () => [SCORE, '--part', 'P1', '--section', file('string.json', { settings: { lowestString: 60 }, instrument: 'viola' })], /lowestString/],
    ['a setting that does not exist', () => [SCORE, '--part', 'P1', '--section', file('unknown.json', { settings: { partnersApartt: 1 } })], /partnersApartt/],
    ['a section that is no JSON', () => [SCORE, '--part', 'P1', '--section', file('broken.json', '{')], /no JSON/],
    ['both players and seats', () => [SCORE, '--part', 'P1', '--section', file('both.json', { players: 2, seats: ['1o'] })], /not both/],
    ['a mark for nobody in the section', () => [SCORE, '--part', 'P1', '--marks', marks('nobody.json', [change(2, '1/2', ['9o'])]), '--section', file('four.json', { players: 4 })], /9o.*only 1o, 1i, 2o, 2i/],
  ] as const)('refuses %s, says so and exits with 2', (_, args, complaint) => {
    expect(bowline(...args())).toEqual({ code: 2, findings: [], complaint: expect.stringMatching(complaint) as unknown });
  });

  it('checks a part of unknown name as the instrument the section file names', () => {
    expect(bowline(SCORE, '--part', 'P2', '--section', file('viola.json', { instrument: 'viola' })).code).toBe(0);
  });
});
