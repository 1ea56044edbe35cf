import { fail } from "../../units/index.js";

/** Largest numerator and denominator allowed. */
const LARGEST = 10_000;

/** Finds a ratio in lowest terms by its continued fraction, to 10⁻¹² relative. */
export function rationalRatio(ratio: number): readonly [up: number, down: number] {
  let [before, up] = [0, 1];
  let [downBefore, down] = [1, 0];
  let rest = ratio;
  while (up <= LARGEST && down <= LARGEST) {
    const whole = Math.floor(rest);
    [before, up] = [up, whole * up + before];
    [downBefore, down] = [down, whole * down + downBefore];
    if (Math.abs(up / down - ratio) <= 1e-12 * ratio) break;
    rest = 1 / (rest - whole);
  }
  if (!(up <= LARGEST && down <= LARGEST && up > 0)) {
    fail("out-of-range", `to / from is ${ratio}; a ratio of whole numbers up to ${LARGEST} is needed`, {
      argument: "to",
      values: { ratio },
    });
  }
  return [up, down];
}
