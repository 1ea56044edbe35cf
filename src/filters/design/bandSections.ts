import { withGain } from "./edgeSections.js";
import type { Section } from "./filterDesign.js";

/**
 * Designs one pass of a Butterworth band-pass or band-stop of as many sections as its order.
 *
 * Formula: with w the width of the band and c² the product of its edges, both on the axis tan(π f/fs), each pole p of
 * the prototype gives the two roots of s² − p w s + c²; band-pass and band-stop share them, since the poles of the
 * prototype lie on the unit circle. Zeros: 0 Hz and the Nyquist frequency for band-pass, ± the centre for band-stop.
 * The root of larger size is found by the square root, the other as c² divided by it, so that no digits cancel.
 * The gain of the band-stop is that which lets a constant pass unchanged.
 * Order: the two roots of a pole follow each other, one at either edge, the most damped pole first. A run of sections at
 * one edge of a wide band would raise what lies between and leave its rounding when the other edge takes it away.
 */
export function bandSections(
  type: "band-pass" | "band-stop",
  order: number,
  width: number,
  square: number,
): Section[] {
  const sections: Section[] = [];
  let gain = 1;
  /** Adds the section whose poles have this sum and product on the analogue axis. */
  const add = (sum: number, product: number) => {
    const denominator = 1 - sum + product;
    const a1 = (2 * (product - 1)) / denominator;
    const a2 = (1 + sum + product) / denominator;
    const b1 = type === "band-pass" ? 0 : (2 * (square - 1)) / (square + 1);
    gain *= type === "band-pass" ? width / denominator : (1 + a1 + a2) / (2 + b1);
    sections.push([1, b1, type === "band-pass" ? -1 : 1, 1, a1, a2]);
  };
  if (order % 2 === 1) add(-width, square);
  for (let pair = order >> 1; pair > 0; pair--) {
    const angle = (Math.PI * (2 * pair - 1 + order)) / (2 * order);
    const real = (width / 2) * Math.cos(angle);
    const imaginary = (width / 2) * Math.sin(angle);
    const [rootReal, rootImaginary] = squareRoot(
      real * real - imaginary * imaginary - square,
      2 * real * imaginary,
    );
    const sign = real * rootReal + imaginary * rootImaginary < 0 ? -1 : 1;
    const sum = 2 * (real + sign * rootReal);
    const product = (real + sign * rootReal) ** 2 + (imaginary + sign * rootImaginary) ** 2;
    add(sum, product);
    add((square * sum) / product, (square * square) / product);
  }
  return withGain(sections, gain);
}

/** Principal square root of a complex number, without cancellation. */
function squareRoot(real: number, imaginary: number): readonly [number, number] {
  const size = Math.sqrt((Math.hypot(real, imaginary) + Math.abs(real)) / 2);
  const other = size === 0 ? 0 : imaginary / (2 * size);
  return real >= 0 ? [size, other] : [Math.abs(other), imaginary < 0 ? -size : size];
}
