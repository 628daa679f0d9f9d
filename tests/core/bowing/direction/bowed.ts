import { type StrokeFacts, strokeFacts } from '../../../../core/bowing/direction/facts.ts';
import { type Bowing, inferDirections } from '../../../../core/bowing/direction/inferDirections.ts';
import { BOW_LIMIT, bowUsed } from '../../../../core/bowing/bowLength.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import type { Part } from '../../../../core/music/part.ts';
import { partOf } from '../../../support/partBuilder.ts';
import type { ShortMark } from '../../check/ruleTable.ts';
import { bowsIn } from '../bowing.ts';

/** A line of text in a time signature, e.g. `inTime('4/4', ...)`; a short first measure is a pick-up. */
export function inTime(time: string, music: string): Part {
  const part = partOf(music);
  const [beats, beatType] = time.split('/') as [string, string];
  return { ...part, measures: part.measures.map((measure) => ({ ...measure, time: { beats, beatType } })) };
}

export function factsIn(part: Part, marks: ShortMark[] = []): StrokeFacts[] {
  return strokeFacts(part, bowsIn(part, marks).strokes, 'mf', (stroke) => bowUsed(stroke, instrumentNamed('violin'), BOW_LIMIT, 'mf'));
}

export const bowings = (part: Part, marks: ShortMark[] = [], count = 1): Bowing[] => inferDirections(factsIn(part, marks), count);

/** "d u d", a split slur as "d+". */
export const asSigns = ({ strokes }: Bowing): string => strokes.map(({ direction, split }) => `${direction[0]}${split ? '+' : ''}`).join(' ');

export const bestIn = (part: Part, marks: ShortMark[] = []): string => asSigns(bowings(part, marks)[0]!);
