/** Words of the pictures: the fingerboard, two fingerings side by side, the past of a measure. */
export const board = {
  title: (name: string) => `The hand on the fingerboard, ${name}`,
  none: 'Put the rosin on a note of this passage, or point at one, to see the hand on the fingerboard.',
  thumb: 'thumb position',
  string: (name: string) => `${name} string`,
  open: (string: string, position: string, low: number, high: number) => `${string}, open. The hand waits in ${position}, from ${low} to ${high} mm.`,
  stopped: (string: string, finger: string, mm: number, position: string, low: number, high: number) => `${string}, ${finger}, ${mm} mm from the nut; the hand is in ${position}, from ${low} to ${high} mm.`,
  reach: (mm: number) => `The finger lies ${mm} mm outside the hand.`,
  unit: 'mm',
};
