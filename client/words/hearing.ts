/** Sentences about hearing a passage. */
export const hearing = {
  title: 'Hearing',
  hear: 'hear',
  section: 'hear the section',
  planned: 'hear the section with this plan',
  stands: 'hear it as it stands',
  preparing: 'The passage is being prepared for hearing.',
  other: (letter: string) => `hear the other, ${letter}`,
  stop: 'stop',
  pace: 'tempo',
  percent: (pace: number) => (pace === 100 ? 'as written' : `${pace} %`),
  loop: 'again and again',
  click: 'with the beat',
  working: 'The passage is being prepared for hearing. Space leaves it.',
  begun: { one: 'The passage is played as it is marked; Space stops it.', section: 'The section plays the passage, everybody with the bows of their seat; Space stops it.' },
  failed: 'This passage could not be heard. Choose another one, or press Space again.',
};
