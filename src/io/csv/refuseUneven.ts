import { fail } from "../../units/index.js";

/** A step from here on, in median steps, leaves out rows; below the other it is one of too many. Half a step either way. */
const LONG = 1.5;
const SHORT = 0.5;
/** How far a step may lie from the median step and be of the same grid, as a share of it. */
const SAME = 0.25;
/** Share of the steps that gaps may be; more are another rate. A judgement, as the numbers above. */
const MOST_GAPS = 0.2;

/**
 * Refuses times that are not even, and says what is the matter with them: rows that are missing at one place or several, or
 * an unevenness that is everywhere. The median step tells the two apart: beside a gap the rate of first and last time is that
 * of no row.
 *
 * @param times - Stamps, s, rising.
 * @param odd - The first stamp off the grid.
 * @param off - What is wrong with it, in words.
 */
export function refuseUneven(
  times: Float64Array,
  odd: number,
  off: string,
  whereOf: (index: number) => string,
): never {
  const steps = Float64Array.from({ length: times.length - 1 }, (_, i) => stepTo(times, i + 1));
  const sorted = steps.slice().sort();
  const median = sorted[Math.floor(sorted.length / 2)] as number;
  const isSame = (step: number) => Math.abs(step / median - 1) <= SAME;
  const isLong = (step: number) => step >= LONG * median;
  const longest = steps.indexOf(sorted.at(-1) as number);
  const gaps = steps.filter(isLong).length;
  // A grid is there, but for a few steps.
  if (gaps > 0 && gaps <= MOST_GAPS * steps.length && steps.filter(isSame).length >= steps.length / 2) {
    refuseGap(steps[longest] as number, median, gaps, whereOf(longest + 1));
  }
  const hasJumps = gaps > 0 || (sorted[0] as number) < SHORT * median;
  const way = hasJumps
    ? "find out what the recorder did there, and even the samples out"
    : "even the samples out first, or leave the time out with ignore and state sampleRate";
  const where = whereOf(odd);
  fail("uneven-time", `${where}: time ${times[odd]} s ${off}: ${way}`, { argument: "time", where });
}

/** Time from the row above. */
function stepTo(times: Float64Array, index: number): number {
  return (times[index] as number) - (times[index - 1] as number);
}

function refuseGap(step: number, median: number, gaps: number, where: string): never {
  const periods = step / median;
  const missing = Math.max(1, Math.round(periods) - 1);
  const more =
    gaps === 1 ? "" : `, and at ${gaps - 1} other ${gaps === 2 ? "place" : "places"} shorter or as long`;
  fail(
    "uneven-time",
    `${where}: time is ${Number(step.toPrecision(4))} s after the row above, ${Number(periods.toPrecision(4))} sampling periods of ${Number(median.toPrecision(4))} s: ${missing === 1 ? "a row is" : `${missing} rows are`} missing there${more}; give each a row with its time and blank cells, or cut the file there and take one part`,
    { argument: "time", where, values: { step, period: median, missing, gaps } },
  );
}
