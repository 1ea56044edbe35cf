import type { Section } from "../design/filterDesign.js";
import { runBlock } from "./runBlock.js";
import { settlingLength } from "./settlingLength.js";
import { steadyState } from "./steadyState.js";

/** A stretch to run forward and back, with what lies before and after it, both counted outwards from it. */
export interface Lane {
  readonly source: Float64Array;
  readonly target: Float64Array;
  readonly head: Float64Array;
  readonly tail: Float64Array;
}

/** Samples taken through all sections before the next block is begun: few enough to stay in the processor's cache. */
const BLOCK = 1024;

/** States below this become zero between blocks, or a filter dying away over zeros would go on in slow subnormal numbers. */
const NOTHING = 1e-300;

/**
 * Runs one or two lanes of the same length forward and back, side by side. Each starts from the steady state of the
 * outermost sample of its head and turns at that of its tail. A long lane without a partner is cut into halves that go
 * side by side, each led in over enough of the other for its state to be that of the whole within rounding.
 *
 * @returns Whether all went through in finite numbers; NaN or infinity anywhere reach the first sample.
 */
export function bothWays(sections: readonly Section[], lanes: readonly Lane[]): boolean {
  const [{ source, target, head, tail }, partner] = lanes as readonly [Lane, Lane?];
  const length = source.length;
  const half = Math.floor(length / 2);
  const settling = settlingLength(sections);
  if (partner || half < 4 * settling) return sideBySide(sections, lanes);
  const middle = (array: Float64Array, from: number) => array.subarray(from, from + half);
  const last = Float64Array.of(...source.subarray(2 * half), ...tail);
  const finite = sideBySide(sections, [
    { source: middle(source, 0), target: middle(target, 0), head, tail: source.slice(half, half + settling) },
    {
      source: middle(source, half),
      target: middle(target, half),
      head: source.slice(half - settling, half).reverse(),
      tail: last,
    },
  ]);
  target.set(last.subarray(0, length - 2 * half), 2 * half);
  return finite;
}

function sideBySide(sections: readonly Section[], lanes: readonly Lane[]): boolean {
  const steady = steadyState(sections);
  const size = steady.length;
  const sources = lanes.map(({ source }) => source);
  const targets = lanes.map(({ target }) => target);
  const length = (sources[0] as Float64Array).length;
  const state = new Float64Array(size * lanes.length);
  const states = lanes.map((_, l) => state.subarray(l * size, (l + 1) * size));
  lanes.forEach(({ source, head }, l) => {
    enter(sections, steady, states[l] as Float64Array, head, source[0] as number);
  });
  runAll(sections, state, sources, targets, 0, length, 1);
  lanes.forEach(({ target, tail }, l) => {
    runBlock(sections, states[l] as Float64Array, [tail], [tail], 0, tail.length, 1);
    enter(sections, steady, states[l] as Float64Array, tail, target[length - 1] as number);
  });
  runAll(sections, state, targets, targets, length - 1, -1, -1);
  return targets.every((target) => Number.isFinite(target[0]));
}

/** Enters from the outermost sample of a stretch, in its steady state, and runs inwards. */
function enter(
  sections: readonly Section[],
  steady: Float64Array,
  state: Float64Array,
  stretch: Float64Array,
  edge: number,
): void {
  const outermost = stretch.at(-1) ?? edge;
  state.set(steady.map((value) => value * outermost));
  runBlock(sections, state, [stretch], [stretch], stretch.length - 1, -1, -1);
}

/** Runs over the whole of the arrays, block by block. */
export function runAll(
  sections: readonly Section[],
  state: Float64Array,
  sources: readonly Float64Array[],
  targets: readonly Float64Array[],
  from: number,
  to: number,
  step: 1 | -1,
): void {
  for (let begin = from; begin !== to; ) {
    const end = Math.abs(to - begin) > BLOCK ? begin + step * BLOCK : to;
    runBlock(sections, state, sources, targets, begin, end, step);
    for (let i = 0; i < state.length; i++) if (Math.abs(state[i] as number) < NOTHING) state[i] = 0;
    begin = end;
  }
}
