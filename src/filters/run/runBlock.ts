import type { Section } from "../design/filterDesign.js";

/**
 * Runs sections over one block of several channels, forwards (step 1) or backwards (step −1). Two channels go side by
 * side, so that the processor works on one while the other waits for its recurrence; either way each sum is formed in
 * the same order, so that a channel comes out bit for bit the same alone and in company, in one block and in several.
 * Source and target may be the same arrays. Nothing is allocated per sample.
 *
 * @param sections - The filter.
 * @param state - Two numbers a section and channel, channel by channel; holds the state after the block on return.
 * @param place - Where in `state` that of the first channel begins.
 * @param sources - One array a channel.
 * @param targets - Where the output goes, at the same indices.
 * @param from - First index.
 * @param to - One step beyond the last index.
 * @param step - 1 or −1.
 */
export function runBlock(
  sections: readonly Section[],
  state: Float64Array,
  place: number,
  sources: readonly Float64Array[],
  targets: readonly Float64Array[],
  from: number,
  to: number,
  step: number,
): void {
  const stride = 2 * sections.length;
  for (let channel = 0; channel < targets.length; channel += 2) {
    const targetA = targets[channel] as Float64Array;
    const targetB = targets[channel + 1];
    let sourceA = sources[channel] as Float64Array;
    let sourceB = sources[channel + 1] as Float64Array;
    let own = place + channel * stride;
    for (const section of sections) {
      if (targetB === undefined) runOne(section, state, own, sourceA, targetA, from, to, step);
      else runTwo(section, state, own, own + stride, sourceA, targetA, sourceB, targetB, from, to, step);
      sourceA = targetA;
      sourceB = targetB as Float64Array;
      own += 2;
    }
  }
}

function runOne(
  section: Section,
  state: Float64Array,
  place: number,
  source: Float64Array,
  target: Float64Array,
  from: number,
  to: number,
  step: number,
): void {
  const [b0, b1, b2, , a1, a2] = section;
  let s1 = state[place] as number;
  let s2 = state[place + 1] as number;
  for (let i = from; i !== to; i += step) {
    const input = source[i] as number;
    const output = b0 * input + s1;
    s1 = b1 * input + s2 - a1 * output;
    s2 = b2 * input - a2 * output;
    target[i] = output;
  }
  state[place] = s1;
  state[place + 1] = s2;
}

function runTwo(
  section: Section,
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
  const [b0, b1, b2, , a1, a2] = section;
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
    targetA[i] = outputA;
    targetB[i] = outputB;
  }
  state[placeA] = s1A;
  state[placeA + 1] = s2A;
  state[placeB] = s1B;
  state[placeB + 1] = s2B;
}
