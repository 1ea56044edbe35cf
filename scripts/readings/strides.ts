import type { SeededRandom } from "../../src/statistics/index.js";
import { PRIMARY_IDS, TYPICAL, trialOf } from "../../tests/compare/trialOf.js";

/** What moves slowly under the strides of a pair, in standard deviations of the strides. */
export type Slow =
  | { readonly kind: "none" }
  /** In each trial by itself from a common level: a straight line whose change over the trial is normal with this size. */
  | { readonly kind: "line"; readonly size: number }
  /** In each trial by itself: a first-order autoregression of this size with correlation 0.95. */
  | { readonly kind: "wave"; readonly size: number }
  /** Both cut from one run of 400 strides, apart: an autoregression of this size with correlation 0.99. */
  | { readonly kind: "cut"; readonly size: number }
  /** One behind the other from one run that drifts straight on, by a change of this size in 400 strides. */
  | { readonly kind: "run"; readonly size: number };

/** Strides whose correlation falls off more slowly than that of a first-order autoregression. */
export type LongMemory =
  /** An autoregression on the last stride and the one before. */
  | { readonly kind: "second order"; readonly first: number; readonly second: number }
  /** Fractionally integrated noise with this d, of a memory cut at 600 strides. */
  | { readonly kind: "fractional"; readonly d: number };

/** What a pair of trials is drawn from. */
export interface Condition {
  readonly strides: number;
  /** Of each stride with the next, of first order, without what moves slowly. */
  readonly correlation: number;
  readonly slow: Slow;
  /** Takes the place of `correlation`. */
  readonly memory?: LongMemory;
}

/** Length of the run that both trials are cut from. */
const RUN = 400;

/** A first-order autoregression with standard deviation 1. */
function correlated(random: SeededRandom, n: number, r: number): number[] {
  let x = random.normal();
  return Array.from({ length: n }, () => {
    const here = x;
    x = r * x + Math.sqrt(1 - r * r) * random.normal();
    return here;
  });
}

/** Strides back to which fractional noise remembers. */
const MEMORY = 600;

/** Strides of long memory with standard deviation 1. */
function remembering(random: SeededRandom, n: number, memory: LongMemory): number[] {
  if (memory.kind === "fractional") {
    const weights = [1];
    for (let k = 1; k < MEMORY; k++) weights.push(((weights[k - 1] as number) * (k - 1 + memory.d)) / k);
    const sd = Math.sqrt(weights.reduce((sum, weight) => sum + weight * weight, 0));
    const noise = Array.from({ length: n + MEMORY }, () => random.normal());
    return Array.from(
      { length: n },
      (_, i) => weights.reduce((sum, weight, k) => sum + weight * (noise[i + MEMORY - k] as number), 0) / sd,
    );
  }
  const { first, second } = memory;
  const sd = Math.sqrt((1 - second) / ((1 + second) * ((1 - second) ** 2 - first * first)));
  let [last, before] = [0, 0];
  return Array.from({ length: n + START }, () => {
    [last, before] = [first * last + second * before + random.normal(), last];
    return last / sd;
  }).slice(START);
}

/** Strides that a second-order autoregression takes from its start at zero to its own spread. */
const START = 300;

/** One metric's strides in both trials, in standard deviations, without any true difference. */
function seriesPair(
  random: SeededRandom,
  { strides: n, correlation, slow, memory }: Condition,
): [number[], number[]] {
  const trial = () =>
    memory === undefined ? correlated(random, n, correlation) : remembering(random, n, memory);
  const pair: [number[], number[]] = [trial(), trial()];
  const add = (more: [(i: number) => number, (i: number) => number]) =>
    pair.map((series, k) => series.map((x, i) => x + (more[k] as (i: number) => number)(i))) as typeof pair;
  switch (slow.kind) {
    case "none":
      return pair;
    case "line": {
      const [a, b] = [slow.size * random.normal(), slow.size * random.normal()];
      return add([(i) => (a * i) / (n - 1), (i) => (b * i) / (n - 1)]);
    }
    case "wave": {
      const [a, b] = [correlated(random, n, 0.95), correlated(random, n, 0.95)];
      return add([(i) => slow.size * (a[i] as number), (i) => slow.size * (b[i] as number)]);
    }
    case "cut": {
      const run = correlated(random, RUN, 0.99);
      const later = n + Math.floor(random.uniform() * (RUN - 2 * n + 1));
      return add([(i) => slow.size * (run[i] as number), (i) => slow.size * (run[later + i] as number)]);
    }
    case "run": {
      const slope = (slow.size * random.normal()) / RUN;
      return add([(i) => slope * i, (i) => slope * (n + i)]);
    }
  }
}

/**
 * A pair of trials whose three primaries are independent of each other: the worst case for the verdict. Means and standard
 * deviations are those of {@link TYPICAL}.
 *
 * @param factors - By metric id: what the mean of the changed trial is multiplied by.
 * @param speed - Of both; without one there is nothing per kilometre.
 */
export function trialPair(
  random: SeededRandom,
  condition: Condition,
  factors: Readonly<Record<string, number>> = {},
  speed: number | null = null,
): [ReturnType<typeof trialOf>, ReturnType<typeof trialOf>] {
  const strides = PRIMARY_IDS.map((id) => {
    const [mean, sd] = TYPICAL[id] as readonly [number, number];
    const [a, b] = seriesPair(random, condition);
    return [
      [id, a.map((x) => mean + sd * x)],
      [id, b.map((x) => mean * (factors[id] ?? 1) + sd * x)],
    ] as const;
  });
  const side = (k: 0 | 1) => trialOf(Object.fromEntries(strides.map((pair) => pair[k])), { speed });
  return [side(0), side(1)];
}
