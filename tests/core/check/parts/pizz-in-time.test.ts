import rule from '../../../../core/check/rules/parts/pizz-in-time.ts';
import { ruleTable } from '../ruleTable.ts';

ruleTable(rule, {
  holds: [
    { title: 'a quarter at 60', music: '{q=60} D5:1 {pizz} E5:1 {arco} F5:1' },
    { title: 'a short note and a rest', music: '{q=120} D5:1/4 r:3/4 {pizz} E5:1' },
    { title: 'fast notes that are all plucked', music: '{q=240} {pizz} D5:1/2 E5:1/2 F5:1/2' },
    { title: 'a fast change in a section that counts on it', music: '{q=120} D5:1/4 {pizz} E5:1', settings: { pizzTime: 0.1 } },
    { title: 'grace notes, whose time nobody has written', music: '{q=60} ^D5:1 {pizz} E5:1' },
  ],
  broken: [
    { title: 'pizz. right after a sixteenth at 120', music: '{q=120} D5:1/4 {pizz} E5:1', finds: [{ message: 'toPizz', severity: 'worthALook', notes: ['m1n1', 'm1n0'], seats: 'all', text: '0.13 s after the last bowed note begins.' }] },
    { title: 'arco right after a plucked sixteenth, no tempo printed', music: '{pizz} D5:1/4 | {arco} E5:1', finds: [{ message: 'toArco', measure: 2, text: '0.17 s after the last plucked note if a quarter goes at 90' }] },
  ],
});
