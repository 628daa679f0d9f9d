import { CheckSettings } from '../../core/check/settings.ts';
import { fingerLine } from '../../core/fingering/fingerLine.ts';
import { pinsOf } from '../../core/fingering/partLine.ts';
import { instrumentNamed } from '../../core/instruments/instrumentNamed.ts';
import type { Part } from '../../core/music/part.ts';
import { tempoMap } from '../../core/music/seconds.ts';
import { beatsOf } from '../../core/sounding/beats.ts';
import { renderSounding } from '../../core/sounding/render.ts';
import { soundingLine } from '../../core/sounding/soundingLine.ts';
import { passageLine } from '../fingering/passageLine.ts';
import type { Heard, HearQuestion } from './messages.ts';
import { seatBows } from './seatBows.ts';

const RATE = 44_100;

/** A passage of a part as samples. Throws where the part names no string instrument, or nothing in the passage can be played. */
export function hearFor(part: Part, question: HearQuestion): Heard {
  if (part.instrument === null) throw new Error('The part names no string instrument');
  const { bowSeconds, assumedDynamic, assumedTempo } = CheckSettings.parse(question.settings);
  const instrument = instrumentNamed(part.instrument);
  const { line, tempo: given, measures } = passageLine(part, question.from, question.to);
  const inside = new Set(line.map(({ id }) => id));
  const pins = pinsOf(question.marks.filter(({ note }) => inside.has(note)));
  const fingering = question.fingering ?? fingerLine(instrument, line, given ?? assumedTempo, { pins, best: 1 }).fingerings[0];
  if (!fingering) throw new Error('Nothing in the passage can be played');
  const tempo = tempoMap(part, assumedTempo);
  const players = seatBows(part, question, measures, line[0]!.id, { instrument, tempo, table: bowSeconds, assumedDynamic });
  const plucked = new Set(part.measures.slice(measures.from - 1, measures.to).flatMap(({ notes }) => notes.filter(({ pizzicato }) => pizzicato).map(({ id }) => id)));
  const beats = question.click ? beatsOf(part, tempo, measures.from, measures.to) : [];
  const sounding = soundingLine({ instrument, line, fingering, tempo, pace: question.pace, players, plucked, beats });
  return { samples: renderSounding(sounding, part.instrument, RATE), rate: RATE, notes: sounding.notes };
}
