import type { Words } from '../en.ts';

/** Sentences about hearing a passage. */
export const hearing = {
  title: 'Écoute',
  hear: 'écouter',
  section: 'écouter le pupitre',
  planned: 'écouter le pupitre avec ce plan',
  stands: 'écouter tel quel',
  preparing: 'Le passage est préparé pour l’écoute.',
  other: (letter) => `écouter l’autre, ${letter}`,
  stop: 'arrêter',
  pace: 'tempo',
  percent: (pace) => (pace === 100 ? 'comme écrit' : `${pace} %`),
  loop: 'encore et encore',
  click: 'avec les temps',
  working: 'Le passage est préparé pour l’écoute. Espace y renonce.',
  begun: { one: 'Le passage est joué tel qu’il est noté ; Espace l’arrête.', section: 'Le pupitre joue le passage, chacun avec les coups d’archet de sa place ; Espace l’arrête.' },
  failed: 'Ce passage n’a pas pu être écouté. Choisissez-en un autre, ou appuyez encore sur Espace.',
} satisfies Words['hearing'];
