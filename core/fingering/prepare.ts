import { costsToEnd, type CostsToEnd } from '../search/costsToEnd.ts';
import type { Lattice } from '../search/lattice.ts';
import { marginalsOf, stepFactors, type Chain, type Marginals } from '../search/marginals.ts';
import { type Stretch, stretchesOf } from '../music/stretches.ts';
import { balanceOf, HAND, OPEN_LIKELIHOOD, type Balance, type OpenStrings } from './aims.ts';
import { fittedChain } from './fit/chain.ts';
import { settleBariolage } from './bariolage.ts';
import { settleCelloScales } from './celloScales.ts';
import { contextsOf } from './fit/context.ts';
import type { Place } from './frame.ts';
import { handLattice, type Setting } from './handCosts.ts';
import { layersNear, leanOn } from './leaning.ts';
import { layerOf, layersOf, type Layer, type Refusal } from './layers.ts';
import type { LineNote } from './line.ts';
import { notePlaces } from './notePlaces.ts';
import { keepsTo, type Pin } from './pin.ts';
import { rareSteps } from './rare.ts';
import type { FingeringRequest } from './request.ts';
import { sequenceCosts } from './sequences.ts';
import { settleTurnedChords } from './turnedChords.ts';
import { unusualSteps } from './unusual.ts';

/** A line ready to be fingered: its states, what each costs, and the cheapest way on from each. */
export interface Prepared {
  request: FingeringRequest;
  setting: Setting;
  balance: Balance;
  layers: Layer[];
  refusals: Refusal[];
  /** Log potentials; all zero where no professionals are known. Pinned states are -Infinity. */
  chain: Chain;
  factors: Float64Array[];
  marginals: Marginals;
  /** Layers that a pin says something about. */
  nearPins: ReadonlySet<number>;
  /** What a state costs because the same figure elsewhere takes other fingers, by layer. */
  sequences: ReadonlyMap<number, Float64Array>;
  hand: Lattice;
  lattice: Lattice;
  toEnd: CostsToEnd;
}

const ALLOWED = (states: Float64Array): Float64Array => states.map((value) => (value === -Infinity ? Infinity : 0));

/** Whether the step to layer `at` is judged by where the hand moves. */
export const isByMoves = ({ balance, nearPins }: Pick<Prepared, 'balance' | 'nearPins'>, at: number): boolean => balance.byMoves && !nearPins.has(at);

/** Professionals' probabilities and the hand's costs as one lattice, over the layers `from` to `to`; the others are taken from `before`. */
function joined(prepared: Omit<Prepared, 'lattice' | 'toEnd'>, from: number, to: number, before?: Lattice): Lattice {
  const { chain, layers, marginals, hand, balance, sequences } = prepared;
  const [states, steps] = [before ? [...before.states] : [], before ? [...before.steps] : []];
  for (let i = from; i <= to; i += 1) {
    const barred = ALLOWED(chain.states[i]!);
    const sequence = sequences.get(i);
    states[i] = hand.states[i]!.map((cost, s) => barred[s]! + cost + (sequence === undefined ? 0 : balance.sequence * sequence[s]!) + (balance.trust === 0 ? 0 : balance.trust * (1 - marginals.states[i]![s]!)));
    if (balance.trust === 0) steps[i] = hand.steps[i]!;
    else {
      const unusual = unusualSteps(layers, marginals, i, isByMoves(prepared, i));
      const rare = balance.rare > 0 ? rareSteps(marginals.steps[i]!, states[i]!.length) : null;
      steps[i] = hand.steps[i]!.map((cost, s) => cost + balance.trust * unusual[s]! + (rare === null ? 0 : balance.rare * rare[s]!));
    }
  }
  return { states, steps };
}

function availablePlaces(request: FingeringRequest, index: number, all: boolean): Place[] {
  const note = request.line[index]!;
  const pin = request.pins.get(note.id);
  const breadth = all ? 'all' : request.aim === 'smoothest' ? 'reaches' : 'usual';
  const usual = notePlaces(request.instrument, note, breadth);
  if (pin === undefined) return usual;
  const kept = usual.filter((place) => keepsTo(request.instrument, place, pin));
  return kept.length > 0 ? kept : notePlaces(request.instrument, note, 'all').filter((place) => keepsTo(request.instrument, place, pin));
}

const zeros = (layers: readonly Layer[]): Chain => ({
  states: layers.map((layer) => new Float64Array(layer.states.length)),
  steps: layers.map((layer, i) => new Float64Array(i === 0 ? 0 : layers[i - 1]!.states.length * layer.states.length)),
});

function addPrior(chain: Chain, hand: Lattice, weight: number): void {
  chain.states.forEach((values, i) => values.forEach((_, s) => (values[s]! -= weight * hand.states[i]![s]!)));
  chain.steps.forEach((values, i) => values.forEach((_, s) => (values[s]! -= weight * hand.steps[i]![s]!)));
}

/** An open string that begins a line stands out less than one between stopped notes: chosen, not measured. */
const FIRST_OPEN = 0.5;

/** What the section has settled about open strings is known before the professionals are asked, or their habit of playing them would be all they say. */
function settleOpenStrings(chain: Chain, layers: readonly Layer[], setting: OpenStrings = 'free'): void {
  const each = OPEN_LIKELIHOOD[setting];
  if (each !== 0) chain.states.forEach((values, i) => layers[i]!.states.forEach((state, s) => (values[s]! += (i === 0 ? FIRST_OPEN : 1) * each * state.filter(({ finger }) => finger === 0).length)));
}

/** Pins given from the start lean on what is around them as pins set later do. */
function settlePins(chain: Chain, layers: readonly Layer[], { line, pins }: FingeringRequest): void {
  if (pins.size === 0) return;
  layers.forEach((layer, at) => layer.notes.forEach((note, k) => {
    if (pins.has(line[note]!.id)) leanOn(chain.states, layers, line, at, note, placesKept(layer, k, layer.states.map(() => true)));
  }));
}

/** The weights know the violin's pitches: the viola's line is read a fifth higher. */
function asFitted({ instrument, line }: FingeringRequest): readonly LineNote[] {
  return instrument.name === 'viola' ? line.map((note) => ({ ...note, midi: note.midi + 7, step: note.step + 4 })) : line;
}

/**
 * Finds every way to hold each note or chord of a line, weighs them, and solves the way from each to the end. Pins are hard: only places that keep to
 * them are states. O(notes x places^2). A note that cannot be played is among the refusals and in no layer. Deterministic.
 */
export function prepare(request: FingeringRequest): Prepared {
  const { layers, refusals } = layersOf(request.instrument, request.line, (index, all) => availablePlaces(request, index, all));
  const player = { instrument: request.instrument, hand: request.hand, players: request.players, sliding: request.sliding };
  const setting: Setting = { player, line: request.line, tempo: request.tempo };
  const balance = balanceOf(request.aim, request.instrument.name, request.weights !== null, request.openStrings);
  const chain = request.weights === null ? zeros(layers) : fittedChain(request.weights, contextsOf(asFitted(request)), layers);
  if (request.weights !== null) {
    settleBariolage(chain, layers, request.line, request.instrument.openStrings);
    settleTurnedChords(chain, layers, request.line);
    if (request.instrument.name === 'cello') settleCelloScales(chain, layers, request.line);
    settleOpenStrings(chain, layers, request.openStrings);
    settlePins(chain, layers, request);
  }
  if (balance.prior > 0) addPrior(chain, handLattice(setting, HAND, layers), balance.prior);
  const factors = stepFactors(chain);
  const marginals = marginalsOf(chain, factors);
  const hand = handLattice(setting, balance.terms, layers);
  const nearPins = new Set(layers.flatMap(({ notes }, at) => (notes.some((note) => request.pins.has(request.line[note]!.id)) ? layersNear(layers, at) : [])));
  const sequences = balance.sequence > 0 ? sequenceCosts(layers, request.line, marginals) : new Map<number, Float64Array>();
  const base = { request, setting, balance, layers, refusals, chain, factors, marginals, nearPins, sequences, hand };
  const lattice = joined(base, 0, layers.length - 1);
  return { ...base, lattice, toEnd: costsToEnd(lattice) };
}

/**
 * The same line with one more pin, solved again only where the pin can change something: probabilities are worked in until they settle (1e-12), then
 * the costs. Null where the note has no state left that keeps to the pin beside the pins there are; `prepare` with the pin then looks further afield.
 * Oracle: `prepare` with the pin.
 */
export function withPin(prepared: Prepared, note: string, pin: Pin): Prepared | null {
  const { request, layers } = prepared;
  const index = request.line.findIndex((other) => other.id === note);
  const at = layerOf(layers, index);
  const layer = layers[at];
  if (layer === undefined) return null;
  const k = layer.notes.indexOf(index);
  const kept = layer.states.map((state, s) => prepared.chain.states[at]![s] !== -Infinity && keepsTo(request.instrument, state[k]!, pin));
  if (!kept.includes(true)) return null;
  const states = [...prepared.chain.states];
  states[at] = states[at]!.map((value, s) => (kept[s] ? value : -Infinity));
  const stretches = prepared.balance.trust > 0 ? leanOn(states, layers, request.line, at, index, placesKept(layer, k, kept)) : [{ from: at, to: at }];
  const pinned = { ...prepared, request: { ...request, pins: new Map(request.pins).set(note, pin) }, chain: { states, steps: prepared.chain.steps }, nearPins: new Set([...prepared.nearPins, ...layersNear(layers, at)]) };
  return stretches.reduce(solvedAgain, pinned);
}

const placesKept = (layer: Layer, k: number, kept: readonly boolean[]): Place[] => {
  const places = new Map<string, Place>();
  layer.states.forEach((state, s) => kept[s] && places.set(`${state[k]!.string} ${state[k]!.position} ${state[k]!.finger} ${state[k]!.off}`, state[k]!));
  return [...places.values()];
};

/** The same with what a change of the potentials of some layers can change. */
function solvedAgain(prepared: Prepared, stretch: Stretch): Prepared {
  const { chain, factors, marginals, balance, layers, request } = prepared;
  const changed = balance.trust > 0 ? marginalsOf(chain, factors, { ...stretch, before: marginals }) : { ...marginals, span: stretch };
  const [from, to] = [changed.span.from, Math.min(layers.length - 1, changed.span.to + 1)];
  const sequences = balance.sequence > 0 ? sequenceCosts(layers, request.line, changed, from, to) : new Map<number, Float64Array>();
  const elsewhere = [...sequences.keys()].filter((i) => (i < from || i > to) && isOther(sequences.get(i)!, prepared.sequences.get(i)!));
  const base = { ...prepared, marginals: changed, sequences: new Map([...prepared.sequences, ...sequences]) };
  return [{ from, to }, ...stretchesOf(elsewhere)].reduce((solved: Prepared, part) => {
    const lattice = joined(base, part.from, part.to, solved.lattice);
    return { ...base, lattice, toEnd: costsToEnd(lattice, { ...part, before: solved.toEnd }) };
  }, prepared);
}

const isOther = (costs: Float64Array, before: Float64Array): boolean => costs.some((cost, s) => Math.abs(cost - before[s]!) > 1e-12);
