import type { Section } from "../design/filterDesign.js";
import { coefficientsOf, runBlock } from "./runBlock.js";
import { settlingLength } from "./settlingLength.js";
import { steadyState } from "./steadyState.js";

/** A stretch to run forward and back, with what lies before and after it, both counted outwards from it. */
export type Lane = readonly [
  source: Float64Array,
  target: Float64Array,
  head: Float64Array,
  tail: Float64Array,
];

/** Samples taken through all sections before the next block is begun: few enough to stay in the processor's cache. */
const BLOCK = 1024;

/**
 * Prepares a filter to run one or two lanes of a length forward and back. Each starts from the steady state of the
 * outermost sample of its head and turns at that of its tail. Two go side by side: short lanes with each other, a long
 * lane as two halves, each led in over enough of the other for its state to be that of the whole within rounding. So a
 * channel comes out the same alone and in company.
 *
 * @returns A function that runs lanes and tells whether all went through in finite numbers: NaN or infinity anywhere
 * reach the first sample of their lane.
 */
export function bothWays(sections: readonly Section[], length: number): (lanes: readonly Lane[]) => boolean {
  const steady = steadyState(sections);
  const size = steady.length;
  const settling = settlingLength(sections);
  const state = new Float64Array(2 * size);
  const coefficients = coefficientsOf(sections);

  /** Enters from the outermost sample of a stretch, in its steady state, and runs inwards. */
  function enter(place: number, stretch: Float64Array, edge: number): void {
    const outermost = stretch[stretch.length - 1] ?? edge;
    for (let i = 0; i < size; i++) state[place + i] = outermost * (steady[i] as number);
    runBlock(coefficients, state, place, [stretch], [stretch], stretch.length - 1, -1, -1);
  }

  function sideBySide(lanes: readonly Lane[]): boolean {
    const sources = lanes.map(([source]) => source);
    const targets = lanes.map(([, target]) => target);
    const length = (sources[0] as Float64Array).length;
    lanes.forEach(([source, , head], l) => {
      enter(l * size, head, source[0] as number);
    });
    runAll(coefficients, state, sources, targets, 1);
    lanes.forEach(([, target, , tail], l) => {
      runBlock(coefficients, state, l * size, [tail], [tail], 0, tail.length, 1);
      enter(l * size, tail, target[length - 1] as number);
    });
    runAll(coefficients, state, targets, targets, -1);
    return targets.every((target) => Number.isFinite(target[0]));
  }

  function inHalves([source, target, head, tail]: Lane): boolean {
    const half = source.length >> 1;
    const later = source.length - half;
    const after = source.slice(half, half + settling);
    const finite = sideBySide([
      [source.subarray(0, half), target.subarray(0, half), head, after],
      [source.subarray(later), target.subarray(later), source.slice(later - settling, later).reverse(), tail],
    ]);
    // The sample between the halves of an odd number.
    if (half < later) target[half] = after[0] as number;
    return finite;
  }

  return length < 8 * settling ? sideBySide : (lanes) => lanes.every(inHalves);
}

/** Runs over the whole of one or two arrays, block by block, forwards (step 1) or backwards (step −1). */
export function runAll(
  coefficients: Float64Array,
  state: Float64Array,
  sources: readonly Float64Array[],
  targets: readonly Float64Array[],
  step: 1 | -1,
): void {
  const length = (sources[0] as Float64Array).length;
  for (let done = 0; done < length; done += BLOCK) {
    const next = Math.min(done + BLOCK, length);
    // Not a product with the step: that may be −0, which would turn every index into a 64-bit float.
    const at = (place: number) => (step < 0 ? length - 1 - place : place);
    runBlock(coefficients, state, 0, sources, targets, at(done), at(next), step);
  }
}
