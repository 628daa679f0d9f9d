/** A step this much rarer than the commonest from the same place begins to count, and none counts beyond e to this. Chosen on the training works. */
const COMMON = 0.1;
const MOST = 20;

/** The likeliest step from each state of the layer before. */
function commonest(likely: Float64Array, width: number, from: number): number {
  let top = 0;
  for (let step = from * width; step < (from + 1) * width; step += 1) if (likely[step]! > top) top = likely[step]!;
  return top;
}

const rarity = (likely: number, top: number): number => (likely >= COMMON * top ? 0 : Math.min(MOST, Math.log((COMMON * top) / likely)));

/** How rare one step is, `step` its index in `likely`; as `rareSteps` has it. */
export function rareStep(likely: Float64Array, width: number, step: number): number {
  return rarity(likely[step]!, commonest(likely, width, Math.floor(step / width)));
}

/**
 * How rare each step is among professionals who hold the note before in the same way: 0 where it is a tenth as common as the commonest or more, else the
 * natural log of what is lacking, at most 20. `likely` as `marginals.steps`, `width` the states of the layer it leads to. Linear.
 * Example: one in a thousand beside nine in ten costs ln 90, about 4.5: a mixture of two good fingerings is no good one.
 */
export function rareSteps(likely: Float64Array, width: number): Float64Array {
  const rare = new Float64Array(likely.length);
  for (let from = 0; from * width < likely.length; from += 1) {
    const top = commonest(likely, width, from);
    for (let step = from * width; step < (from + 1) * width; step += 1) rare[step] = rarity(likely[step]!, top);
  }
  return rare;
}
