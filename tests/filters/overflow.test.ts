import { expect, it } from "vitest";
import {
  cumulativeIntegral,
  derivative,
  detrend,
  integral,
  interpolate,
  powerSpectralDensity,
  removeOffset,
  resample,
  residualAnalysis,
  secondDerivative,
} from "../../src/filters/index.js";

/** Finite, but their sums, differences and squares are not. */
const blocks = Float64Array.from({ length: 400 }, (_, i) => ((i >> 2) % 2 === 0 ? 1.7e308 : -1.7e308));
const held = new Float64Array(400).fill(1.7e308);
/** Finite and filtered in finite numbers, but with squares that are not. */
const large = Float64Array.from({ length: 400 }, (_, i) => 1e200 * Math.sin(i * i));

it.each<[string, () => unknown]>([
  ["derivative", () => derivative(blocks, 1000)],
  ["secondDerivative", () => secondDerivative(blocks, 1000)],
  ["cumulativeIntegral", () => cumulativeIntegral(held, 1000)],
  ["cumulativeIntegral, Simpson", () => cumulativeIntegral(held, 1000, { rule: "simpson" })],
  ["integral", () => integral(held, 1000)],
  ["detrend", () => detrend(held)],
  ["removeOffset", () => removeOffset(held, 1000, 0, 0.1)],
  ["resample", () => resample(blocks, { from: 1000, to: 1500 })],
  ["interpolate", () => interpolate(Float64Array.of(0, 1), Float64Array.of(1.7e308, -1.7e308), [0.5])],
  ["powerSpectralDensity", () => powerSpectralDensity(large, 1000)],
  ["residualAnalysis", () => residualAnalysis(large, 1000)],
])("%s refuses finite samples on which it overflows", (_, run) => {
  expect(run).toThrow(expect.objectContaining({ code: "not-finite" }));
  expect(run).toThrow(/so large that they overflow/);
});
