import { butterworth, type FilterDesign, type FilterType } from "../../src/filters/index.js";

/** One case of a comparison: how far off, and how far off it may be. */
export interface Case {
  readonly name: string;
  readonly error: number;
  readonly allowed: number;
}

/** What is compared with what, case by case. Errors are relative to the largest magnitude wanted. */
export interface Comparison {
  readonly what: string;
  readonly against: string;
  /** Why `allowed` is what it is. */
  readonly because: string;
  readonly cases: readonly Case[];
}

/** Largest difference over the largest magnitude wanted; infinite where lengths differ. */
export function worst(got: ArrayLike<number>, wanted: readonly number[]): number {
  if (got.length !== wanted.length) return Number.POSITIVE_INFINITY;
  const scale = Math.max(...wanted.map(Math.abs)) || 1;
  return Math.max(0, ...wanted.map((value, i) => Math.abs((got[i] as number) - value))) / scale;
}

const typeOf = (kind: string) =>
  ({ lowpass: "low-pass", highpass: "high-pass", bandpass: "band-pass", bandstop: "band-stop" })[
    kind
  ] as FilterType;

/** A design as a fixture states it. */
export const designOf = (item: {
  kind: string;
  order: number;
  cutoff: number | number[];
  sampleRate: number;
}): FilterDesign =>
  butterworth({
    type: typeOf(item.kind),
    order: item.order,
    cutoff: item.cutoff as number | [number, number],
    sampleRate: item.sampleRate,
  });

/** The name of a case. */
export const describe = (item: {
  kind: string;
  order: number;
  cutoff: number | number[];
  sampleRate: number;
}): string =>
  `${item.kind} order ${item.order}, ${[item.cutoff].flat().join(" to ")} of ${item.sampleRate} Hz`;

/** What rounding the coefficients to 53 bits does at the lowest edge: 2^-53 over its squared tangent, a section. */
export function roundingAt(item: { cutoff: number | number[]; sampleRate: number; order: number }): number {
  const tangent = Math.tan((Math.PI * Math.min(...[item.cutoff].flat())) / item.sampleRate);
  return (2 ** -53 * Math.max(item.order / 2, 1)) / tangent ** 2;
}
