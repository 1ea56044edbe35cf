import type { Section } from "../design/filterDesign.js";

/**
 * A section the sizes of whose states sum to less than this goes to rest, or dying away over zeros it would go on in slow subnormal
 * numbers. It is asked at every sample, so that blocks make no difference.
 */
const NOTHING = 1e-300;

/**
 * Lays the numbers of sections out one after the other, six a section. Numbers read from a typed array are known to the
 * compiler of any engine as 64-bit ones; read from arrays of arrays they are checked again at every sample.
 */
export function coefficientsOf(sections: readonly Section[]): Float64Array {
  const coefficients = new Float64Array(6 * sections.length);
  sections.forEach((section, index) => {
    coefficients.set(section, 6 * index);
  });
  return coefficients;
}

/**
 * Runs sections over one block of several channels, forwards (step 1) or backwards (step −1). Two channels go side by
 * side, so that the processor works on one while the other waits for its recurrence; either way each sum is formed in
 * the same order, so that a channel comes out bit for bit the same alone and in company, in one block and in several.
 * Source and target may be the same arrays. Nothing is allocated per sample.
 *
 * @param coefficients - The filter, from {@link coefficientsOf}.
 * @param state - Two numbers a section and channel, channel by channel; holds the state after the block on return.
 * @param place - Where in `state` that of the first channel begins.
 * @param sources - One array a channel.
 * @param targets - Where the output goes, at the same indices.
 * @param from - First index.
 * @param to - One step beyond the last index.
 * @param step - 1 or −1.
 */
export function runBlock(
  coefficients: Float64Array,
  state: Float64Array,
  place: number,
  sources: readonly Float64Array[],
  targets: readonly Float64Array[],
  from: number,
  to: number,
  step: number,
): void {
  const stride = coefficients.length / 3;
  for (let channel = 0; channel < targets.length; channel += 2) {
    const targetA = targets[channel] as Float64Array;
    const targetB = targets[channel + 1];
    let sourceA = sources[channel] as Float64Array;
    let sourceB = sources[channel + 1] as Float64Array;
    let own = place + channel * stride;
    for (let first = 0; first < coefficients.length; first += 6) {
      if (targetB === undefined) runOne(coefficients, first, state, own, sourceA, targetA, from, to, step);
      else
        runTwo(
          coefficients,
          first,
          state,
          own,
          own + stride,
          sourceA,
          targetA,
          sourceB,
          targetB,
          from,
          to,
          step,
        );
      sourceA = targetA;
      sourceB = targetB as Float64Array;
      own += 2;
    }
  }
}

function runOne(
  coefficients: Float64Array,
  first: number,
  state: Float64Array,
  place: number,
  source: Float64Array,
  target: Float64Array,
  from: number,
  to: number,
  step: number,
): void {
  const b0 = coefficients[first] as number;
  const b1 = coefficients[first + 1] as number;
  const b2 = coefficients[first + 2] as number;
  const a1 = coefficients[first + 4] as number;
  const a2 = coefficients[first + 5] as number;
  let s1 = state[place] as number;
  let s2 = state[place + 1] as number;
  for (let i = from; i !== to; i += step) {
    const input = source[i] as number;
    const output = b0 * input + s1;
    s1 = b1 * input + s2 - a1 * output;
    s2 = b2 * input - a2 * output;
    if (Math.abs(s1) + Math.abs(s2) < NOTHING) s1 = s2 = 0;
    target[i] = output;
  }
  state[place] = s1;
  state[place + 1] = s2;
}

function runTwo(
  coefficients: Float64Array,
  first: number,
  state: Float64Array,
  placeA: number,
  placeB: number,
  sourceA: Float64Array,
  targetA: Float64Array,
  sourceB: Float64Array,
  targetB: Float64Array,
  from: number,
  to: number,
  step: number,
): void {
  const b0 = coefficients[first] as number;
  const b1 = coefficients[first + 1] as number;
  const b2 = coefficients[first + 2] as number;
  const a1 = coefficients[first + 4] as number;
  const a2 = coefficients[first + 5] as number;
  let s1A = state[placeA] as number;
  let s2A = state[placeA + 1] as number;
  let s1B = state[placeB] as number;
  let s2B = state[placeB + 1] as number;
  for (let i = from; i !== to; i += step) {
    const inputA = sourceA[i] as number;
    const inputB = sourceB[i] as number;
    const outputA = b0 * inputA + s1A;
    const outputB = b0 * inputB + s1B;
    s1A = b1 * inputA + s2A - a1 * outputA;
    s1B = b1 * inputB + s2B - a1 * outputB;
    s2A = b2 * inputA - a2 * outputA;
    s2B = b2 * inputB - a2 * outputB;
    if (Math.abs(s1A) + Math.abs(s2A) < NOTHING) s1A = s2A = 0;
    if (Math.abs(s1B) + Math.abs(s2B) < NOTHING) s1B = s2B = 0;
    targetA[i] = outputA;
    targetB[i] = outputB;
  }
  state[placeA] = s1A;
  state[placeA + 1] = s2A;
  state[placeB] = s1B;
  state[placeB + 1] = s2B;
}
