import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { seededRandom } from "../seededRandom.js";
import { type FieldTTestOptions, fieldTTest, setsOf } from "./fieldTTest.js";
import { type Block, blockSums, bySizeThenValue, flippedSigns, relabelled } from "./permutations.js";
import type { Curves } from "./requireCurves.js";

/** How {@link fieldPermutation} is done. */
export interface FieldPermutationOptions extends FieldTTestOptions {
  /** Share of permutations that may cross the threshold, above 0, at most 0.3. */
  readonly level?: number | undefined;
  /** The largest |t| rather than the largest t. */
  readonly twoSided?: boolean | undefined;
  /**
   * Successive curves that are exchanged whole, at most those of the shorter set; `null`: 1, or with `correlated` as
   * many as one independent curve is worth.
   */
  readonly blockLength?: number | null | undefined;
  /** Most permutations; all there are where these are fewer. */
  readonly permutations?: number | undefined;
  /** Whole number from 0 to 4294967295. */
  readonly seed?: number | undefined;
}

/** Two sides, one curve of twenty, a thousand permutations. */
export const FIELD_PERMUTATION_DEFAULTS: Complete<FieldPermutationOptions> = {
  paired: false,
  correlated: false,
  pooled: true,
  leastSpread: 0.01,
  level: 0.05,
  twoSided: true,
  blockLength: null,
  permutations: 1000,
  seed: 1,
};

/** A threshold by permutation, and what it rests on. */
export interface FieldPermutation {
  /** `null` where there are too few different permutations for the level. */
  readonly threshold: number | null;
  /** Probability of a largest statistic as large as the one seen. */
  readonly p: number;
  /** How many were tried, the one seen among them. */
  readonly permutations: number;
  /** Whether these are all there are. */
  readonly exact: boolean;
  readonly blockLength: number;
}

/**
 * Gives a threshold for the whole curve from the curves themselves: the largest t that arises when their labels are
 * exchanged.
 *
 * Formula: of two sets, curves are dealt out anew to both; of pairs and of one sample, signs are flipped. The t of a
 * permutation is the pooled one. The threshold is the largest t along the curve that no more than the level of
 * permutations exceed, the one seen among them. Blocks of successive curves are exchanged whole where these resemble
 * each other, as many curves as one independent one is worth, so far as six blocks of a set remain; t is scaled by
 * how much such blocks vary at the correlation r of neighbours, where {@link fieldTTest} scales it by how much the
 * whole series does; where memory is longer blocks vary more, and the threshold comes out higher.
 * Units: none.
 * Limits: needs neither normal nor evenly smooth curves, but curves (or blocks) that could be exchanged without a
 * true difference. Two sets of three have ten different permutations, too few for 0.05: then the threshold is `null`.
 * Of few successive curves it is too low by itself, or where correlation changes along the curve: take the larger of
 * it and {@link fieldThreshold}.
 * Source: Nichols & Holmes 2002, Hum. Brain Mapp. 15:1, from memory; definition, held to full enumeration in NumPy.
 * @param first - Curves, one a row.
 * @param second - The other set; `null` for one sample.
 * @param options - {@link FIELD_PERMUTATION_DEFAULTS} where left out.
 * @throws GaitKineticsError as {@link fieldTTest}.
 * @example
 * fieldPermutation([[1, 2], [2, 1], [3, 3], [2, 2]], [[5, 4], [6, 5], [4, 6], [5, 5]]).permutations // 70
 */
export function fieldPermutation(
  first: Curves,
  second: Curves | null,
  options: FieldPermutationOptions = {},
): FieldPermutation {
  const settings = withDefaults<FieldPermutationOptions>(FIELD_PERMUTATION_DEFAULTS, options);
  const { paired, correlated, pooled, leastSpread } = settings;
  const { level, twoSided, permutations } = settings;
  requireNumber("level", level, { above: 0, to: 0.3 });
  requireNumber("permutations", permutations, { from: 20, to: 1e6, whole: true });
  const random = seededRandom(settings.seed);
  const test = fieldTTest(first, second, { paired, correlated, pooled, leastSpread });
  const sets = setsOf(first, second, paired, 2);
  const shortest = Math.min(...sets.map(({ length }) => length));
  if (settings.blockLength !== null) {
    const hint = "no more than the curves of the shorter set";
    requireNumber("blockLength", settings.blockLength, { from: 1, to: shortest, whole: true, hint });
  }
  const blockLength = settings.blockLength ?? blockLengthFor(test.lowShare, shortest);
  // One order for two sets, so that swapping them changes nothing: the label of a set means nothing here.
  const ordered = sets.length > 1 && !twoSided ? sets : [...sets].sort(bySizeThenValue);
  const blocks = ordered.map((curves) => blockSums(curves, blockLength));
  const about = {
    formed: test.formed,
    scale: test.neighbourShare.map((share) => scaleOf(share, blockLength)),
    twoSided,
    most: permutations,
    random,
  };
  const ones = blocks[0] as readonly Block[];
  const others: readonly Block[] | undefined = blocks[1];
  const { largest, exact } =
    others === undefined
      ? flippedSigns(ones, ordered.flat(), about)
      : relabelled(ones, others, ordered.flat(), about);
  // The same labels the other way round give the same |t|: exact lists then hold each value twice.
  const twice = exact && twoSided && (others === undefined || ones.length === others.length);
  const sorted = Float64Array.from(largest).sort();
  const seen = test.statistic.reduce((most, t) => Math.max(most, twoSided ? Math.abs(t) : t), -Infinity);
  const reached = largest.filter((value) => value >= seen * (seen < 0 ? 1 + 1e-9 : 1 - 1e-9)).length;
  const least = (twice ? 2 : 1) / sorted.length;
  return {
    threshold:
      least > level * (1 + 1e-9)
        ? null
        : (sorted[Math.ceil((1 - level) * sorted.length - 1e-9) - 1] as number),
    p: Math.max(1, reached) / sorted.length,
    permutations: sorted.length,
    exact,
    blockLength,
  };
}

/** Blocks that a set is left with at least, so that there are enough permutations. */
const LEAST_BLOCKS = 6;

/** As many curves as one independent curve is worth, so far as enough blocks remain. */
function blockLengthFor(share: number, curves: number): number {
  const wanted = Math.ceil(1 / share - 1e-9);
  return Math.max(1, Math.min(wanted, Math.floor(curves / LEAST_BLOCKS)));
}

/**
 * What squares of t are multiplied by where blocks of b curves are exchanged. Their sums vary 1 + 2 Σ (1 − k/b) rᵏ, k
 * from 1 to b − 1, times as much as those of independent curves, and not (1 + r)/(1 − r) times, as the series does
 * whose t was scaled by its effective number: without this the threshold comes out a sixth too low at r 0.3 and
 * blocks of two.
 */
function scaleOf(share: number, blockLength: number): number {
  const r = (1 - share) / (1 + share);
  let variance = 1;
  for (let k = 1; k < blockLength; k++) variance += 2 * (1 - k / blockLength) * r ** k;
  return 1 / variance;
}
