import type { Note, Part } from '../../core/music/part.ts';

/** A part of quarter notes on one string, four to a measure; note ids run n1, n2, ... with the part's id before them. */
export function smallPart(id = 'P1', name = 'Violin I', measures = 4): Part {
  const note = (index: number): Note => ({
    id: `${id}n${index + 1}`,
    pitch: { step: 'A', alter: 0, octave: 4 },
    midi: 69,
    onset: index % 4,
    duration: 1,
    voice: '1',
    type: 'quarter',
    index: index % 4,
    slurs: [],
    ties: [],
    technical: [],
    articulations: [],
    ornaments: [],
    dynamic: null,
    tempo: null,
  });
  return {
    id,
    name,
    instrument: 'violin',
    transposition: 0,
    measures: Array.from({ length: measures }, (_, index) => ({
      ordinal: index + 1,
      number: String(index),
      start: index * 4,
      length: 4,
      time: { beats: '4', beatType: '4' },
      fifths: 0,
      words: [],
      wedges: [],
      notes: [0, 1, 2, 3].map((beat) => note(index * 4 + beat)),
    })),
    slurs: [],
  };
}
