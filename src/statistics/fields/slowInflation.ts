import { logGammaLead } from "../distributions/gammaTails.js";
import type { Curves } from "./requireCurves.js";

/** Waves over a set that are looked at: its number of curves to this power, at least {@link LEAST_WAVES}. */
const WAVES_POWER = 0.65;
const LEAST_WAVES = 3;
/** Memory that is tried, from successive curves that alternate to such as hardly ever forget. */
const LEAST_MEMORY = -0.3;
const MOST_MEMORY = 0.45;
const MEMORY_STEP = 0.01;
/** Part of the curve about each point whose own memory is looked at. */
const OWN_PART = 1 / 2;

/** Squares below this share of the largest along the curve are rounding, of which the order tells nothing. */
export const ROUNDING = 1e-20;

/** Power of the slow waves of one set: one row a wave, over the points that have a statistic. */
interface SlowPowers {
  readonly curves: number;
  readonly rows: readonly Float64Array[];
}

/**
 * Gives how many times larger the variance of the difference of means is than that of independent curves, at each
 * point, from how slowly the curves wander along their sets: what the correlation of each curve with the next does
 * not show.
 *
 * Formula: residuals are taken apart into cosines of j = 1, 2, … half waves over a set (the discrete cosine
 * transform of second kind), so many as n to the power of 0.65; their squares over the variance, Pⱼ, are 1 where curves
 * are independent. Where memory is long Pⱼ falls as j^(−2d). d is the value from −0.3 to 0.45 with the largest Σ −½
 * [ln(c j^(−2d)) + Pⱼ ÷ (c j^(−2d))], c = mean of Pⱼ j^(2d) of each set (local Whittle estimation). The mean itself is
 * the wave of j = 0, where the same law gives c π^(2d) Γ(1 − 2d) sin(πd) ÷ (πd (2d + 1)), the set of fewer curves
 * with the more weight. Larger of two: Pⱼ as its mean over the whole curve, d raised by its standard error, 1 ÷ √(2 B
 * Σ(ln j − mean)²), B = 1 + length over FWHM; and Pⱼ as its mean over the half of the curve about the point.
 * Source: Robinson 1995, Ann. Stat. 23:1630 for the estimator and Beran 1994, Statistics for Long-Memory Processes, for
 * the variance of a mean, both from memory; how it is used here is a rule of this library, held to simulation.
 */
export function slowInflation(
  residuals: readonly Curves[],
  formed: readonly boolean[],
  fullWidthAtHalfMaximum: number,
): Float64Array {
  const points = Array.from(formed, (_, q) => q).filter((q) => formed[q]);
  const sets = residuals.map((set) => slowPowers(set, points));
  const memories = memoriesFor(sets);
  const all = points.length;
  const lengths = 1 + Math.max(0, all - 1) / fullWidthAtHalfMaximum;
  const over = sets.map(({ rows }) => rows.map(sumsBefore));
  const between = (from: number, to: number) =>
    over.map((rows) => rows.map((sums) => ((sums[to] as number) - (sums[from] as number)) / (to - from)));
  const whole = inflationOf(between(0, all), sets, memories, lengths);
  const reach = Math.round((OWN_PART * (all - 1)) / 2);
  const inflation = new Float64Array(formed.length).fill(1);
  points.forEach((q, k) => {
    const near = between(Math.max(0, k - reach), Math.min(all, k + reach + 1));
    inflation[q] = Math.max(whole, inflationOf(near, sets, memories, null));
  });
  return inflation;
}

function slowPowers(residuals: Curves, points: readonly number[]): SlowPowers {
  const n = residuals.length;
  const waves = Math.max(LEAST_WAVES, Math.round(n ** WAVES_POWER));
  const squares = points.map((q) => residuals.reduce((sum, curve) => sum + (curve[q] as number) ** 2, 0));
  const least = ROUNDING * squares.reduce((a, b) => Math.max(a, b), 0);
  const rows = Array.from({ length: waves }, (_, wave) => {
    const sums = new Float64Array(points.length);
    residuals.forEach((curve, k) => {
      const weight = Math.cos((Math.PI * (wave + 1) * (k + 0.5)) / n);
      points.forEach((q, place) => {
        sums[place] = (sums[place] as number) + weight * (curve[q] as number);
      });
    });
    return sums.map((sum, place) => {
      const all = squares[place] as number;
      return all > least ? ((2 / n) * sum * sum * (n - 1)) / all : 1;
    });
  });
  return { curves: n, rows };
}

/** d and j^(2d) for as many waves as any set has. */
interface Memory {
  readonly d: number;
  readonly powers: Float64Array;
}

function memoriesFor(sets: readonly SlowPowers[]): Memory[] {
  const waves = Math.max(...sets.map(({ rows }) => rows.length));
  const steps = Math.round((MOST_MEMORY - LEAST_MEMORY) / MEMORY_STEP);
  return Array.from({ length: steps + 1 }, (_, k) => memoryOf(LEAST_MEMORY + k * MEMORY_STEP, waves));
}

function memoryOf(d: number, waves: number): Memory {
  return { d, powers: Float64Array.from({ length: waves }, (_, j) => (j + 1) ** (2 * d)) };
}

/** `lengths`: independent stretches whose scatter d is raised by; `null` for none. */
function inflationOf(
  powers: readonly (readonly number[])[],
  sets: readonly SlowPowers[],
  memories: readonly Memory[],
  lengths: number | null,
): number {
  let memory = memories[0] as Memory;
  let best = Number.POSITIVE_INFINITY;
  for (const tried of memories) {
    let misfit = 0;
    for (const own of powers) {
      misfit += own.length * (Math.log(levelOf(own, tried)) - 2 * tried.d * meanLogarithm(own.length));
    }
    if (misfit < best) {
      best = misfit;
      memory = tried;
    }
  }
  if (lengths !== null) {
    const spread = powers.reduce((sum, { length }) => sum + spreadOfLogarithms(length), 0);
    const raised = Math.min(MOST_MEMORY, memory.d + 1 / Math.sqrt(2 * lengths * spread));
    memory = memoryOf(raised, Math.max(...powers.map(({ length }) => length)));
  }
  let sum = 0;
  let weights = 0;
  powers.forEach((own, k) => {
    const weight = 1 / (sets[k] as SlowPowers).curves;
    sum += weight * levelOf(own, memory);
    weights += weight;
  });
  return (sum / weights) * ratioOfMean(memory.d);
}

/** c: what Pⱼ is at j = 1. */
function levelOf(powers: readonly number[], { powers: factors }: Memory): number {
  let sum = 0;
  for (let j = 0; j < powers.length; j++) sum += (powers[j] as number) * (factors[j] as number);
  return Math.max(Number.MIN_VALUE, sum / powers.length);
}

/** Variance of the mean of curves of memory d, over what c of them would make of it. */
export function ratioOfMean(d: number): number {
  const gamma = Math.exp(-1 - logGammaLead(1 - 2 * d, 1));
  const x = Math.PI * d;
  const sine = Math.abs(x) < 1e-8 ? 1 : Math.sin(x) / x;
  return (Math.PI ** (2 * d) * gamma * sine) / (2 * d + 1);
}

function meanLogarithm(waves: number): number {
  let sum = 0;
  for (let j = 1; j <= waves; j++) sum += Math.log(j);
  return sum / waves;
}

function spreadOfLogarithms(waves: number): number {
  const mean = meanLogarithm(waves);
  let sum = 0;
  for (let j = 1; j <= waves; j++) sum += (Math.log(j) - mean) ** 2;
  return sum;
}

/** Sums of all values before each place, one more than there are values. */
function sumsBefore(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  values.forEach((value, k) => {
    sums[k + 1] = (sums[k] as number) + value;
  });
  return sums;
}
