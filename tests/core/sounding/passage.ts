import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import type { PlainFingering } from '../../../core/fingering/output.ts';
import { lineOfPart } from '../../../core/fingering/partLine.ts';
import type { Pin } from '../../../core/fingering/pin.ts';
import { violin } from '../../../core/instruments/violin.ts';
import type { Part } from '../../../core/music/part.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { soundingLine, type SoundingRequest } from '../../../core/sounding/soundingLine.ts';
import type { SoundingLine } from '../../../core/sounding/sound.ts';

/** The best violin fingering of a part that keeps to the pins. */
export function fingered(part: Part, pins: Record<string, Pin>): { line: ReturnType<typeof lineOfPart>['line']; fingering: PlainFingering } {
  const { line } = lineOfPart(part, 1, part.measures.length);
  const [fingering] = fingerLine(violin, line, 60, { pins: new Map(Object.entries(pins)), best: 1 }).fingerings;
  return { line, fingering: fingering! };
}

/** The passage as it sounds at 60 a minute; one player without signs of the bow where nothing else is said. */
export function heardFrom(part: Part, pins: Record<string, Pin>, more: Partial<SoundingRequest> = {}): SoundingLine {
  return soundingLine({ instrument: violin, ...fingered(part, pins), tempo: tempoMap(part, 60), pace: 1, players: [{ seat: '1o', bows: [] }], ...more });
}
