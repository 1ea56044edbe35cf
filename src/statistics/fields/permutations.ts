import type { SeededRandom } from "../seededRandom.js";
import type { Curves } from "./requireCurves.js";

/** Successive curves that change their label together. */
export interface Block {
  readonly sum: Float64Array;
  readonly count: number;
}

/** What both ways of exchanging need to know. */
export interface Exchange {
  /** Points that have a statistic. */
  readonly formed: readonly boolean[];
  /** What squares of t are multiplied by at each point. */
  readonly scale: Float64Array;
  readonly twoSided: boolean;
  readonly most: number;
  readonly random: SeededRandom;
}

/** The largest statistic along the curve of each permutation, that of the labels as they are first. */
export interface LargestStatistics {
  readonly largest: readonly number[];
  readonly exact: boolean;
}

/** Sums of each `length` successive curves; the last block may be shorter. */
export function blockSums(curves: Curves, length: number): Block[] {
  const blocks: Block[] = [];
  for (let from = 0; from < curves.length; from += length) {
    const own = curves.slice(from, from + length);
    const sum = Float64Array.from(own[0] as ArrayLike<number>);
    for (const curve of own.slice(1)) add(sum, curve, 1);
    blocks.push({ sum, count: own.length });
  }
  return blocks;
}

/** Sets by their number of curves, then by the first value in which they differ. */
export function bySizeThenValue(one: Curves, other: Curves): number {
  if (one.length !== other.length) return one.length - other.length;
  for (let k = 0; k < one.length; k++) {
    const [a, b] = [one[k] as ArrayLike<number>, other[k] as ArrayLike<number>];
    for (let q = 0; q < a.length; q++) if (a[q] !== b[q]) return (a[q] as number) - (b[q] as number);
  }
  return 0;
}

/** Blocks of both sets dealt out anew, as many to each as it had. */
export function relabelled(
  first: readonly Block[],
  second: readonly Block[],
  curves: Curves,
  { formed, scale, twoSided, most, random }: Exchange,
): LargestStatistics {
  const total = curves.length;
  const nodes = formed.length;
  const centre = new Float64Array(nodes);
  for (const curve of curves) add(centre, curve, 1 / total);
  const blocks = [...first, ...second].map(({ sum, count }) => {
    const centred = sum.slice();
    add(centred, centre, -count);
    return { sum: centred, count };
  });
  const measure = statisticOf({ formed, scale }, squaresAbout(centre, curves), total - 2, twoSided);
  const sum = new Float64Array(nodes);
  const dealt = (places: readonly number[]) => {
    sum.fill(0);
    let count = 0;
    for (const place of places) {
      const block = blocks[place] as Block;
      add(sum, block.sum, 1);
      count += block.count;
    }
    return measure(sum, total / (count * (total - count)));
  };
  const size = first.length;
  const exact = combinations(blocks.length, size) <= most;
  const largest: number[] = [];
  const places = Array.from({ length: size }, (_, k) => k);
  if (exact) {
    do largest.push(dealt(places));
    while (nextCombination(places, blocks.length));
    return { largest, exact };
  }
  largest.push(dealt(places));
  const deck = blocks.map((_, k) => k);
  while (largest.length < most) {
    for (let k = 0; k < size; k++) {
      const other = k + Math.floor(random.uniform() * (deck.length - k));
      const held = deck[k] as number;
      deck[k] = deck[other] as number;
      deck[other] = held;
      places[k] = deck[k] as number;
    }
    largest.push(dealt(places));
  }
  return { largest, exact };
}

/** Blocks of one set, or of differences of pairs, with their signs flipped. */
export function flippedSigns(
  blocks: readonly Block[],
  curves: Curves,
  { formed, scale, twoSided, most, random }: Exchange,
): LargestStatistics {
  const total = curves.length;
  const nodes = formed.length;
  const measure = statisticOf(
    { formed, scale },
    squaresAbout(new Float64Array(nodes), curves),
    total - 1,
    twoSided,
  );
  const sum = new Float64Array(nodes);
  const flipped = (isFlipped: (block: number) => boolean) => {
    sum.fill(0);
    blocks.forEach(({ sum: own }, k) => {
      add(sum, own, isFlipped(k) ? -1 : 1);
    });
    return measure(sum, 1 / total);
  };
  const exact = 2 ** blocks.length <= most;
  const largest = [flipped(() => false)];
  const count = exact ? 2 ** blocks.length : most;
  for (let mask = 1; mask < count; mask++) {
    largest.push(flipped(exact ? (k) => ((mask >> k) & 1) === 1 : () => random.uniform() < 0.5));
  }
  return { largest, exact };
}

/**
 * Gives the largest t along the curve from the sums of one label: with x = sum² × weight ÷ all squares, the share of
 * the squares that the labels account for, t² = df x ÷ (1 − x).
 */
function statisticOf(
  { formed, scale }: Pick<Exchange, "formed" | "scale">,
  squares: Float64Array,
  df: number,
  twoSided: boolean,
) {
  const nodes = Array.from(squares, (_, q) => q).filter((q) => formed[q] && (squares[q] as number) > 0);
  return (sum: Float64Array, weight: number): number => {
    let largest = Number.NEGATIVE_INFINITY;
    for (const q of nodes) {
      const value = sum[q] as number;
      const share = Math.min(1 - 1e-15, (value * value * weight) / (squares[q] as number));
      const size = ((scale[q] as number) * share) / (1 - share);
      const signed = twoSided || value > 0 ? size : -size;
      if (signed > largest) largest = signed;
    }
    return Math.sign(largest) * Math.sqrt(df * Math.abs(largest));
  };
}

function squaresAbout(centre: Float64Array, curves: Curves): Float64Array {
  const squares = new Float64Array(centre.length);
  for (const curve of curves)
    for (let q = 0; q < squares.length; q++) {
      const e = (curve[q] as number) - (centre[q] as number);
      squares[q] = (squares[q] as number) + e * e;
    }
  return squares;
}

function add(sum: Float64Array, values: ArrayLike<number>, factor: number): void {
  for (let q = 0; q < sum.length; q++) sum[q] = (sum[q] as number) + factor * (values[q] as number);
}

function combinations(n: number, k: number): number {
  let count = 1;
  for (let i = 1; i <= Math.min(k, n - k); i++) count = (count * (n - Math.min(k, n - k) + i)) / i;
  return Math.round(count);
}

/** Moves on to the next choice of places below `n` in order; whether there is one. */
function nextCombination(places: number[], n: number): boolean {
  let k = places.length - 1;
  while (k >= 0 && places[k] === n - places.length + k) k--;
  if (k < 0) return false;
  places[k] = (places[k] as number) + 1;
  for (let j = k + 1; j < places.length; j++) places[j] = (places[j - 1] as number) + 1;
  return true;
}
