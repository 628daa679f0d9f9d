import rule from '../../../../core/check/rules/parts/mute-in-time.ts';
import { partOf } from '../../../support/partBuilder.ts';
import { ruleTable } from '../ruleTable.ts';

function saying(music: string, ...words: [measure: number, at: number, text: string][]) {
  const part = partOf(music);
  for (const [measure, at, text] of words) part.measures[measure - 1]!.words.push({ text, at });
  return part;
}

ruleTable(rule, {
  holds: [
    { title: 'mutes on from the beginning', music: saying('{q=60} D5:4 | E5:4', [1, 0, 'con sord.']) },
    { title: 'mutes on after a rest of two seconds', music: saying('{q=60} D5:2 r:2 | E5:4', [2, 0, 'con sordino']) },
    { title: 'a rest that begins with the words', music: saying('{q=60} D5:2 r:2 | E5:4', [1, 2, 'mit Dämpfer']) },
    { title: 'a reminder', music: saying('{q=60} D5:4 | E5:4', [1, 0, 'con sord.'], [2, 0, 'sempre con sord.']) },
    { title: 'words that take off what is not on', music: saying('{q=60} D5:4 | E5:4', [2, 0, 'senza sord.']) },
    { title: 'a section that changes by desks and has said so', music: saying('{q=60} D5:4 | E5:4', [2, 0, 'con sord.']), settings: { muteTime: 0 } },
  ],
  broken: [
    { title: 'mutes on without a rest', music: saying('{q=60} D5:4 | E5:4', [2, 0, 'con sord.']), finds: [{ message: 'on', severity: 'worthALook', measure: 2, notes: ['m2n0', 'm1n0'], seats: 'all', text: '0 s of silence, where a section needs about 1.5 s' }] },
    { title: 'mutes off in a rest that is too short', music: saying('{q=60} D5:3 r:1 | E5:4', [1, 0, 'con sord.'], [2, 0, 'senza sordini']), finds: [{ message: 'off', measure: 2, text: '1 s of silence' }] },
    { title: 'French words, no tempo printed', music: saying('D5:4 | E5:4', [2, 0, 'mettez les sourdines']), finds: [{ message: 'on', text: 'if a quarter goes at 90' }] },
    { title: 'German words', music: saying('{q=60} D5:4 | E5:4 | F5:4', [1, 0, 'mit Dämpfern'], [3, 0, 'Dämpfer weg']), finds: [{ message: 'off', measure: 3 }] },
  ],
});
