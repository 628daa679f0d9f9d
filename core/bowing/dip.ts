/** A bow change's dip in level. Medians over 1,820 separate bows of recorded violin: 6.8 dB deep, 36 ms below -3 dB (measured). */
export interface DipShape {
  /** Decibels, more than 3. */
  depth: number;
  /** Seconds the level stays 3 dB or more below. */
  below3: number;
}

export const BOW_CHANGE: DipShape = { depth: 6.8, below3: 0.036 };
/** Scatter of changes meant for the same moment, standard deviation in seconds; 0 is the worst case, for rules. */
export const SCATTER = 0.03;
/** Decibels a dip must reach to be noticed: one, or half where it is exposed, or 1.6 in a dense section (just-noticeable difference of level). */
export const THRESHOLDS = { strict: 0.5, ordinary: 1, dense: 1.6 } as const;
/** Below so many players staggering cannot hide a change: one silent player is then 1 dB or more (computed). */
export const FEWEST_THAT_HIDE = 5;

/** The model's numbers for one change. */
interface Change {
  /** Standard deviation of the dip itself, seconds. */
  sd: number;
  /** The same with scatter. */
  s: number;
  /** Share of the player's power lost at the middle, 0 to 1. */
  a: number;
}

export interface Audibility extends Change {
  /** Share of the section's power lost at the worst moment, 0 to 1. */
  loss: number;
  /** Decibels at the worst moment, 0 or more. */
  dL: number;
  /** In units of the threshold. */
  B: number;
  /** 0 (nobody) to 1 (everybody notices); 0.5 at the threshold. */
  index: number;
}

/** Steps of the sums below; chosen: a hundred times finer than the third decimal needs. */
const STEPS = 4000;

/** Seconds from the beginning of a dip to its end, a raised cosine in decibels. Example: 0.067 for BOW_CHANGE. */
export function dipSeconds({ depth, below3 }: DipShape): number {
  return (below3 * Math.PI) / Math.acos(6 / depth - 1);
}

/** Seconds of full silence that lose as much as the dip. Example: 0.040 for BOW_CHANGE. */
function equivalentWidth(shape: DipShape): number {
  const { depth } = shape;
  const whole = dipSeconds(shape);
  let sum = 0;
  for (let k = 0; k < STEPS; k++) sum += 1 - 10 ** ((-depth / 20) * (1 + Math.cos(2 * Math.PI * ((k + 0.5) / STEPS - 0.5))));
  return (whole * sum) / STEPS / (1 - 10 ** (-depth / 10));
}

function changeOf(shape: DipShape, scatter: number): Change {
  const sd = equivalentWidth(shape) / Math.sqrt(2 * Math.PI);
  const s = Math.hypot(sd, scatter);
  return { sd, s, a: ((1 - 10 ** (-shape.depth / 10)) * sd) / s };
}

const lossAt = (time: number, times: readonly number[], players: number, { s, a }: Change): number =>
  times.reduce((sum, change) => sum + a * Math.exp(-((time - change) ** 2) / (2 * s * s)), 0) / players;

const decibels = (loss: number): number => (loss <= 0 ? 0 : -10 * Math.log10(1 - Math.min(loss, 1 - 1e-12)));

/**
 * The section's level over time while players change bow, in decibels below the full level: equally loud players, power adds, each
 * change a bell of the dip's equivalent width. Leaves out accents, scratches, distance and the room.
 * @param changes seconds of every change of every player
 * @param players of the section, 1 or more
 * @param at seconds at which the level is wanted
 * @returns decibels, 0 or more, one for each of `at`. Example: one of twelve at its own moment without scatter: 0.30.
 */
export function levelDip(changes: readonly number[], players: number, at: readonly number[], scatter = SCATTER, shape: DipShape = BOW_CHANGE): number[] {
  const change = changeOf(shape, scatter);
  return at.map((time) => decibels(lossAt(time, changes, players, change)));
}

/**
 * How audible a set of bow changes is, at its worst moment.
 * @param changes seconds; order does not matter
 * @param players of the section, 1 or more
 * @param threshold decibels, more than 0
 * @returns the numbers of the model; invariants: dL grows with the number of changes and falls with `players`; without scatter and at
 * one moment it depends on their ratio only. Example: 6 of 12 at once without scatter: dL 2.19.
 */
export function bowChangeAudibility(changes: readonly number[], players: number, scatter = SCATTER, shape: DipShape = BOW_CHANGE, threshold: number = THRESHOLDS.ordinary): Audibility {
  const change = changeOf(shape, scatter);
  // The sum of equal bells peaks at, or between, their middles; a fine walk around each middle finds it.
  const near = changes.flatMap((time) => Array.from({ length: 41 }, (_, k) => time + ((k - 20) / 10) * change.s));
  const loss = near.reduce((worst, time) => Math.max(worst, lossAt(time, changes, players, change)), 0);
  const dL = decibels(loss);
  const B = dL / threshold;
  return { ...change, loss, dL, B, index: 1 - 2 ** -(B * B) };
}

/** What to tell a section of so few; nothing where staggering helps. */
export function hidingAdvice(players: number): string | undefined {
  if (players >= FEWEST_THAT_HIDE) return undefined;
  return `${players} ${players === 1 ? 'player' : 'players'} cannot hide a bow change by staggering: each change is heard. Change smoothly and slowly, or where the music breathes.`;
}
