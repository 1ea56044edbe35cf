import { type Complete, type Fraction, fail, requireNumber, withDefaults } from "../../units/index.js";
import { mean } from "../mean.js";
import type { Interval } from "../meanInterval.js";
import { quantile } from "../quantile.js";
import { requireList } from "../requireList.js";
import { requireValues, type Values } from "../requireValues.js";
import { seededRandom } from "../seededRandom.js";
import { standardDeviation } from "../standardDeviation.js";
import { MOST_RESAMPLES } from "./resampleIndices.js";

/** How blocks are drawn. */
export interface BlockBootstrapOptions {
  /** Values a block; `null` for the whole number next above the cube root of their count. */
  readonly blockLength?: number | null | undefined;
  /** How many, up to 1 000 000; not looked at where `starts` are given. */
  readonly resamples?: number | undefined;
  /** Fixes the blocks; not looked at where `starts` are given. */
  readonly seed?: number | undefined;
  /** First places of the blocks, drawn elsewhere: a row a resample. */
  readonly starts?: readonly ArrayLike<number>[] | null | undefined;
  /** Share of repeats the interval is meant to cover. */
  readonly level?: Fraction | undefined;
}

/** The cube root's order balances what long and short blocks miss (Künsch 1989, from memory). */
export const BLOCK_BOOTSTRAP_DEFAULTS: Complete<BlockBootstrapOptions> = {
  blockLength: null,
  resamples: 4000,
  seed: 1,
  starts: null,
  level: 0.95,
};

/** A mean with its error by resampled blocks. */
export interface BlockBootstrap {
  readonly estimate: number;
  readonly blockLength: number;
  /** Mean of each resample. */
  readonly replicates: readonly number[];
  /** Standard deviation of the replicates. */
  readonly standardError: number;
  /** s/√n, which takes the values as independent. */
  readonly independentStandardError: number;
  /** Quantiles of the replicates. */
  readonly interval: Interval;
}

/**
 * Resamples the mean of values that follow one another in time by moving blocks, so that their correlation is kept.
 *
 * Formula: each resample joins ⌈n/l⌉ blocks of l successive values, drawn with replacement from the n − l + 1 there are, and is
 * cut at n; standard error: standard deviation of the resamples' means; interval: their quantiles.
 * Units: those of the values.
 * Limits: blocks must be long against the correlation and short against the series; still somewhat too narrow.
 * Source: Künsch 1989, Ann. Stat. 17:1217, from memory; given starts of a NumPy run give its replicates.
 * @param values - Finite numbers in their order of time, at least two.
 * @param options - {@link BLOCK_BOOTSTRAP_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two values, or resamples, or too few blocks in a row; `out-of-range`: a block longer
 *   than the series, a start that leaves it no room, an option outside its range; `not-finite`, `wrong-type`, `unknown-option`.
 * @example
 * blockBootstrap([1, 2, 3, 4, 5, 6], { blockLength: 2, starts: [[0, 2, 4], [4, 4, 4]] }).replicates // [3.5, 5.5]
 */
export function blockBootstrap(values: Values, options: BlockBootstrapOptions = {}): BlockBootstrap {
  const settings = withDefaults<BlockBootstrapOptions>(BLOCK_BOOTSTRAP_DEFAULTS, options);
  requireValues("values", values, 2);
  const n = values.length;
  const blockLength = requireNumber("blockLength", settings.blockLength ?? Math.ceil(Math.cbrt(n)), {
    from: 1,
    to: n,
    whole: true,
  });
  requireNumber("level", settings.level, { above: 0, below: 1 });
  const blocks = Math.ceil(n / blockLength);
  const starts = settings.starts ?? drawnStarts(settings, n - blockLength + 1, blocks);
  requireList("starts", starts, "rows");
  const replicates = Array.from(starts, (row, i) => {
    requireStarts(row, i, blocks, n - blockLength);
    return blockMean(values, row, blockLength);
  });
  const standardError = standardDeviation(replicates);
  const tail = (1 - settings.level) / 2;
  return {
    estimate: mean(values),
    blockLength,
    replicates,
    standardError,
    independentStandardError: standardDeviation(values) / Math.sqrt(n),
    interval: {
      low: quantile(replicates, tail),
      high: quantile(replicates, 1 - tail),
      level: settings.level,
    },
  };
}

function drawnStarts(
  { resamples, seed }: Complete<BlockBootstrapOptions>,
  room: number,
  blocks: number,
): readonly ArrayLike<number>[] {
  requireNumber("resamples", resamples, { from: 2, to: MOST_RESAMPLES, whole: true });
  const random = seededRandom(seed);
  return Array.from({ length: resamples }, () =>
    Array.from({ length: blocks }, () => Math.floor(random.uniform() * room)),
  );
}

function requireStarts(row: ArrayLike<number>, i: number, blocks: number, last: number): void {
  requireList(`starts[${i}]`, row, "first places of blocks");
  if (row.length < blocks) {
    fail("too-short", `starts[${i}] holds ${row.length} blocks; ${blocks} are needed to fill the series`, {
      argument: `starts[${i}]`,
      values: { given: row.length, needed: blocks },
    });
  }
  for (let k = 0; k < blocks; k++) {
    requireNumber(`starts[${i}][${k}]`, row[k], { from: 0, to: last, whole: true });
  }
}

function blockMean(values: Values, starts: ArrayLike<number>, blockLength: number): number {
  const n = values.length;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const block = Math.floor(i / blockLength);
    sum += values[(starts[block] as number) + (i - block * blockLength)] as number;
  }
  return sum / n;
}
