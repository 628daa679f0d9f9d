/** Words for the finger: a passage by two touches, and the ledge of a phone. */
export const touch = {
  passage: 'passage',
  reach: 'The passage begins at the note in hand. Tap its last note.',
  openBefore: (measure: string) => `Open measure before: ${measure}`,
  openAfter: (measure: string) => `Next open measure: ${measure}`,
  hear: 'hear',
  say: 'say',
  myPart: 'my part',
  mark: 'mark',
};
