import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { butterworth, filterZeroPhase, gustafsson, lowPass } from "../../src/filters/index.js";

const signal = fc
  .array(fc.double({ min: -2000, max: 2000, noNaN: true }), { minLength: 60, maxLength: 300 })
  .map((values) => Float64Array.from(values));
const distance = (a: Float64Array, b: Float64Array) =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number))));

describe("laws", () => {
  it("Gustafsson's states make forward then backward and backward then forward the same", () =>
    fc.assert(
      fc.property(fc.double({ min: 20, max: 300, noNaN: true }), signal, (at, values) => {
        const options = { cutoff: at, sampleRate: 1000, ends: gustafsson };
        const reversed = lowPass(values.slice().reverse(), options);
        expect(distance(reversed.reverse(), lowPass(values, options))).toBeLessThan(1e-7);
      }),
    ));
  it.each([
    [1, "low-pass", 2],
    [2, "low-pass", 4],
    [3, "high-pass", 6],
    [1, "band-pass", 4],
    [2, "band-stop", 8],
  ] as const)(
    "so they do from two samples a pole on: order %i %s, %i samples; fewer are refused",
    (n, type, least) => {
      const band = type.startsWith("band") ? ([50, 200] as const) : 50;
      const design = butterworth({ type, order: n, cutoff: band, sampleRate: 1000 });
      const run = (x: Float64Array) => filterZeroPhase(x, design, { ends: gustafsson });
      for (let count = least; count < 3 * least; count++) {
        const values = Float64Array.from({ length: count }, (_, i) => 700 * Math.sin(i / 3) + ((i * 7) % 5));
        expect(distance(run(values.slice().reverse()).reverse(), run(values))).toBeLessThan(1e-9);
      }
      for (const count of [0, 1, least - 1]) {
        const refused = () => run(new Float64Array(count));
        expect(refused).toThrow(expect.objectContaining({ code: "too-short" }));
        if (count > 0) expect(refused).toThrow(`there are ${count} samples; at least ${least} are needed`);
      }
    },
  );
  it("Gustafsson's states on a long signal, where only its ends are solved for, act at its ends only", () => {
    const long = Float64Array.from({ length: 20_000 }, (_, i) => 800 * Math.sin(i / 30) + ((i * 7919) % 101));
    const solved = lowPass(long, { cutoff: 40, sampleRate: 1000, ends: gustafsson });
    const padded = lowPass(long, { cutoff: 40, sampleRate: 1000 });
    expect(distance(solved.slice(500, -500), padded.slice(500, -500))).toBeLessThan(1e-10);
    const reversed = lowPass(long.slice().reverse(), { cutoff: 40, sampleRate: 1000, ends: gustafsson });
    expect(distance(reversed.reverse(), solved)).toBeLessThan(1e-9);
  });
});
