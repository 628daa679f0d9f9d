import { COMPOSER, MOVEMENT, PARTS, TITLE, type PlannedPart } from './plan.ts';
import { element, escape } from './xml.ts';
import { writePart } from './writePart.ts';

const scorePart = ({ id, name, short, sound, program }: PlannedPart, i: number): string =>
  element('score-part', element('part-name', name) + element('part-abbreviation', short)
    + element('score-instrument', element('instrument-name', name) + element('instrument-sound', sound), { id: `${id}-I1` })
    + element('midi-instrument', element('midi-channel', i + 1) + element('midi-program', program), { id: `${id}-I1` }), { id });

/** The invented piece as a MusicXML 4.0 document: five string parts, an upbeat and 84 measures. */
export function demoScore(): string {
  const head = [
    element('work', element('work-title', escape(TITLE))),
    element('movement-number', 'II'),
    element('movement-title', escape(MOVEMENT)),
    element('identification', element('creator', escape(COMPOSER), { type: 'composer' }) + element('rights', 'Invented for this program; MIT licence.') + element('encoding', element('software', 'Bowline'))),
    element('part-list', `\n    ${PARTS.map(scorePart).join('\n    ')}\n  `),
  ];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">',
    element('score-partwise', `\n  ${[...head, ...PARTS.map(writePart)].join('\n  ')}\n`, { version: '4.0' }),
    '',
  ].join('\n');
}
