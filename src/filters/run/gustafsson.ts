import { fail } from "../../units/index.js";
import { isFirstOrder, type Section } from "../design/filterDesign.js";
import { type Lane, runAll } from "./lanes.js";
import { coefficientsOf } from "./runBlock.js";
import { settlingLength } from "./settlingLength.js";

/**
 * Filters without adding anything beyond the ends: from the initial states for which forward then backward differs
 * least, in the sum of squares, from backward then forward. Passed as `ends` to a zero-phase filter.
 *
 * Formula: with zero states the two orders give y₁ and y₂. A state x₀ at the start adds A x₀ to y₁ − y₂ and a state x₁
 * at the end −A x₁ mirrored; (x₀, x₁) is the least-squares solution. A dies away from the start, and rows beyond 2⁻⁶⁰
 * are left out.
 * Units: none.
 * Limits: a few times the work of a pad. Needs two samples a pole, one for each state to find: 4 for a low-pass of net
 * order 4, 8 for a band. On signals short against 1/cutoff digits are lost as the order grows: 12 samples at order 6 of
 * a pass keep 9 digits at a twentieth of the rate and none at a two-hundredth. It is meant for `ends`, not to be called.
 * Source: Gustafsson F 1996, IEEE Trans. Signal Process. 44:988; agrees with SciPy's `filtfilt(method="gust")`.
 * @param sections - The filter.
 * @param length - Number of samples of each lane.
 * @throws GaitKineticsError `too-short`: fewer samples than two a pole of one pass.
 * @returns A function that runs lanes and tells whether all went through in finite numbers.
 * @example
 * lowPass(new Float64Array(20).fill(700), { cutoff: 50, sampleRate: 1000, ends: gustafsson }).length // 20
 */
export function gustafsson(
  sections: readonly Section[],
  length: number,
): (lanes: readonly Lane[]) => boolean {
  const size = 2 * sections.length;
  // A section of first order has one state.
  const places = sections.flatMap((section, i) => (isFirstOrder(section) ? [2 * i] : [2 * i, 2 * i + 1]));
  const needed = 2 * places.length;
  if (length < needed) {
    fail(
      "too-short",
      `there are ${length} samples; at least ${needed} are needed, two a pole of the filter`,
      {
        argument: "samples",
        values: { length, needed },
      },
    );
  }
  const coefficients = coefficientsOf(sections);
  const rows = Math.min(length, 2 * settlingLength(sections));
  const run = (source: Float64Array, target: Float64Array, step: 1 | -1, state = new Float64Array(size)) => {
    runAll(coefficients, state, [source], [target], step);
    return target;
  };
  // What each state at the start adds: its free response, run backward, less the free response.
  const atStart = places.map((k) => {
    const free = run(
      new Float64Array(rows),
      new Float64Array(rows),
      1,
      new Float64Array(size).fill(1, k, k + 1),
    );
    return difference(run(free, free.slice(), -1), free);
  });
  const columns = [...atStart, ...atStart.map((column) => column.map((value) => -value).reverse())];
  const stateOf = (values: Float64Array) => {
    const state = new Float64Array(size);
    for (const [i, place] of places.entries()) state[place] = values[i] as number;
    return state;
  };
  /** The rows at both ends that a state reaches. */
  const reached = (samples: Float64Array) => {
    const atEnd = Math.floor(rows / 2);
    const kept = samples.slice(0, rows);
    kept.set(samples.subarray(length - atEnd), rows - atEnd);
    return kept;
  };
  return (lanes) =>
    lanes.every(([source, target]) => {
      const work = run(source, new Float64Array(length), 1);
      const forwardFirst = reached(run(work, work, -1));
      const backwardFirst = reached(run(run(source, work, -1), work, 1));
      const states = leastSquares(columns, difference(backwardFirst, forwardFirst));
      run(source, target, 1, stateOf(states.subarray(0, places.length)));
      run(target, target, -1, stateOf(states.subarray(places.length)));
      return Number.isFinite(target[0]);
    });
}

const difference = (a: Float64Array, b: Float64Array): Float64Array =>
  a.map((value, i) => value - (b[i] as number));

/** Solves for the weights of columns that come nearest to a wanted sum, by modified Gram–Schmidt. */
function leastSquares(columns: readonly Float64Array[], wanted: Float64Array): Float64Array {
  const dot = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
  const rest = [...columns.map((column) => column.slice()), wanted];
  const projections = columns.map((column, k) => {
    const axis = rest[k] as Float64Array;
    const square = dot(axis, axis);
    // A column that lies within the span of those before it, such as the unused state of a first-order section, gets none.
    const used = square > 1e-26 * dot(column, column);
    return rest.map((other, j) => {
      const share = used && j > k ? dot(axis, other) / square : 0;
      if (share !== 0)
        for (let i = 0; i < other.length; i++) other[i] = (other[i] as number) - share * (axis[i] as number);
      return share;
    });
  });
  const weights = new Float64Array(columns.length);
  for (let k = columns.length - 1; k >= 0; k--) {
    const row = projections[k] as number[];
    weights[k] = row[columns.length] as number;
    for (let j = k + 1; j < columns.length; j++)
      weights[k] = (weights[k] as number) - (row[j] as number) * (weights[j] as number);
  }
  return weights;
}
