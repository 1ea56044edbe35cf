import { fail, type Newtons } from "../../units/index.js";

/** How many times farther down than up a force that points down reaches. */
const DOWN = 2;

/**
 * Refuses a vertical force that points down.
 * @param whose - What the message calls it, such as `the vertical force of "left"`.
 * @param advice - How to put it right.
 * @param least - A force that stays less far down shows nothing, N.
 * @throws GaitKineticsError `unknown-axes`.
 */
export function refuseUpsideDown(up: Float64Array, whose: string, advice: string, least: Newtons): void {
  let sum = 0;
  let lowest = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < up.length; i++) {
    const value = up[i] as number;
    sum += value;
    if (value < lowest) lowest = value;
    if (value > most) most = value;
  }
  if (!(sum < 0 && -lowest > DOWN * most && -lowest >= least)) return;
  const mean = sum / up.length;
  fail(
    "unknown-axes",
    `${whose} points down (mean ${mean.toFixed(0)} N, ${lowest.toFixed(0)} to ${most.toFixed(0)} N); forces are those of the ground on the runner, "up" positive: ${advice}`,
    { argument: "up", values: { mean, least: lowest, most } },
  );
}
