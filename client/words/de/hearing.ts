import type { Words } from '../en.ts';

/** Sentences about hearing a passage. */
export const hearing = {
  title: 'Hören',
  hear: 'hören',
  section: 'die Gruppe hören',
  planned: 'die Gruppe mit diesem Plan hören',
  stands: 'hören, wie es dasteht',
  preparing: 'Die Stelle wird zum Hören vorbereitet.',
  other: (letter) => `den anderen hören, ${letter}`,
  stop: 'anhalten',
  pace: 'Tempo',
  percent: (pace) => (pace === 100 ? 'wie geschrieben' : `${pace} %`),
  loop: 'immer wieder',
  click: 'mit Schlägen',
  working: 'Die Stelle wird zum Hören vorbereitet. Die Leertaste bricht ab.',
  begun: { one: 'Die Stelle klingt, wie sie bezeichnet ist; die Leertaste hält an.', section: 'Die Gruppe spielt die Stelle, jeder mit den Strichen seines Platzes; die Leertaste hält an.' },
  failed: 'Diese Stelle ließ sich nicht hören. Wählen Sie eine andere, oder drücken Sie noch einmal die Leertaste.',
} satisfies Words['hearing'];
