import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  butterworth,
  criticallyDamped,
  type FilterDesign,
  type FilterType,
  filterZeroPhase,
  frequencyResponse,
  passCorrection,
  polesAndZeros,
} from "../../src/filters/index.js";

const refuse = (code: string, run: () => unknown, words?: RegExp) => {
  expect(run).toThrow(expect.objectContaining({ code }));
  if (words) expect(run).toThrow(words);
};
/** The tangent that gives a design its corner, turned back into a frequency. */
const cutoffFor = (designCutoff: number, rate: number, factor: number) =>
  (Math.atan(Math.tan((Math.PI * designCutoff) / rate) * factor) * rate) / Math.PI;

describe("published coefficients", () => {
  it("Winter 2009, sect. 2.2.4.4: order 2, 6 Hz of 60 Hz, all printed digits", () => {
    const [[b0, b1, b2, , a1, a2]] = butterworth({ type: "low-pass", order: 2, cutoff: 6, sampleRate: 60 })
      .sections as unknown as [number[]];
    expect(b0).toBeCloseTo(0.067455, 6);
    expect(b1).toBeCloseTo(0.13491, 5);
    expect(b2).toBeCloseTo(0.067455, 6);
    // Winter writes the denominator with the opposite sign.
    expect(-(a1 as number)).toBeCloseTo(1.14298, 5);
    expect(-(a2 as number)).toBeCloseTo(-0.4128, 5);
  });
  it("Winter 2009, eq. 2.19: C = 0.802 for two passes of order 2, and the tangent divided by it", () => {
    expect(passCorrection(2, 2)).toBeCloseTo(0.802, 3);
    const design = butterworth({ type: "low-pass", order: 2, cutoff: 10, sampleRate: 100, passes: 2 });
    expect(Math.tan((Math.PI * (design.designCutoff as number)) / 100)).toBeCloseTo(
      Math.tan(Math.PI / 10) / 0.8022432629,
      9,
    );
  });
  it.each([
    [1, [0.13672874, 0.13672874], [-0.72654253]],
    [2, [0.02008337, 0.04016673], [-1.56101808, 0.64135154]],
  ])(
    "Duarte & Watanabe, notebook DataFiltering (BMC, CC BY 4.0): order %i at a twentieth of the rate",
    (order, b, a) => {
      const [section] = butterworth({ type: "low-pass", order, cutoff: 5, sampleRate: 100 })
        .sections as unknown as [number[]];
      b.forEach((value, i) => {
        expect(section[i]).toBeCloseTo(value, 8);
      });
      a.forEach((value, i) => {
        expect(section[4 + i]).toBeCloseTo(value, 8);
      });
    },
  );
  it("the same authors' dual pass, critic_damp.py, at their design frequency of 12.465047 Hz of 100 Hz", () => {
    const [[b0, , , , a1, a2]] = butterworth({
      type: "low-pass",
      order: 2,
      cutoff: 12.465047,
      sampleRate: 100,
    }).sections as unknown as [number[]];
    expect(b0).toBeCloseTo(0.09718522, 7);
    expect(a1).toBeCloseTo(-0.94557029, 7);
    expect(a2).toBeCloseTo(0.33431119, 7);
  });
  it("the same, after Robertson & Dowling 2003: critically damped at 22.989592 Hz of 100 Hz", () => {
    const factor = Math.sqrt(2 ** (1 / 2) - 1);
    const cutoff = cutoffFor(22.989592, 100, factor);
    const design = criticallyDamped({ order: 2, cutoff, sampleRate: 100 });
    const [[b0, , , , a1, a2]] = design.sections as unknown as [number[]];
    expect(design.designCutoff).toBeCloseTo(22.989592, 6);
    expect(b0).toBeCloseTo(0.21937845, 7);
    expect(a1).toBeCloseTo(-0.12648588, 7);
    expect(a2).toBeCloseTo(0.00399967, 7);
  });
});

const type = fc.constantFrom<FilterType>("low-pass", "high-pass", "band-pass", "band-stop");
const low = fc.double({ min: 0.01, max: 0.24, noNaN: true });
const width = fc.double({ min: 0.02, max: 0.24, noNaN: true });
const order = fc.integer({ min: 1, max: 12 });
const passes = fc.integer({ min: 1, max: 4 });
const anyDesign = fc.record({ type, low, width, order, passes }).map(({ low, width, ...rest }) =>
  butterworth({
    ...rest,
    sampleRate: 1000,
    cutoff: rest.type.startsWith("band") ? [1000 * low, 1000 * (low + width)] : 1000 * (low + width),
  }),
);
const net = (design: FilterDesign, frequencies: readonly number[]) =>
  [...frequencyResponse(design, frequencies).magnitude].map((magnitude) => magnitude ** design.passes);

describe("laws of a design", () => {
  it("every type is -3 dB at every cutoff, whatever the order and the number of passes", () =>
    fc.assert(
      fc.property(anyDesign, (design) => {
        for (const gain of net(design, [design.cutoff].flat()))
          expect(Math.abs(gain - Math.SQRT1_2)).toBeLessThan(1e-9);
      }),
      { numRuns: 400 },
    ));
  it("the published magnitude holds at any frequency", () =>
    fc.assert(
      fc.property(anyDesign, fc.double({ min: 0.001, max: 0.499, noNaN: true }), (design, part) => {
        const t = Math.tan(Math.PI * part);
        const edges = [design.cutoff].flat().map((f) => Math.tan((Math.PI * f) / 1000)) as [number, number];
        const x = {
          "low-pass": () => t / edges[0],
          "high-pass": () => edges[0] / t,
          "band-pass": () => Math.abs(t * t - edges[0] * edges[1]) / ((edges[1] - edges[0]) * t),
          "band-stop": () => ((edges[1] - edges[0]) * t) / Math.abs(t * t - edges[0] * edges[1]),
        }[design.type]();
        const factor = passCorrection(design.passes, design.order);
        const wanted = (1 + (factor * x) ** (2 * design.order)) ** (-design.passes / 2);
        expect(Math.abs((net(design, [1000 * part])[0] as number) - wanted)).toBeLessThan(1e-9);
      }),
      { numRuns: 300 },
    ));
  it("critically damped designs are -3 dB at the cutoff and answer a step without overshoot", () =>
    fc.assert(
      fc.property(order, passes, fc.double({ min: 0.01, max: 0.4, noNaN: true }), (n, p, part) => {
        const design = criticallyDamped({ order: n, passes: p, cutoff: 1000 * part, sampleRate: 1000 });
        expect(Math.abs((net(design, [1000 * part])[0] as number) - Math.SQRT1_2)).toBeLessThan(1e-9);
      }),
    ));
  it("every pole lies inside the unit circle, up to order 100, and down to a cutoff of a ten-millionth", () => {
    for (const n of [1, 2, 7, 24, 51, 100]) {
      // Order 51 at 0.1 Hz and order 100 at 1 Hz are the lowest round numbers whose gain is not too small.
      for (const cutoff of [n < 51 ? 0.00011 : n < 100 ? 0.1 : 1, 50, 499]) {
        for (const one of ["low-pass", "high-pass"] as const) {
          const { poles } = polesAndZeros(butterworth({ type: one, order: n, cutoff, sampleRate: 1000 }));
          expect(poles).toHaveLength(n);
          for (const { real, imaginary } of poles) expect(Math.hypot(real, imaginary)).toBeLessThan(1);
        }
      }
      for (const one of ["band-pass", "band-stop"] as const) {
        const { poles } = polesAndZeros(
          butterworth({ type: one, order: n, cutoff: [48, 52], sampleRate: 1000 }),
        );
        expect(poles).toHaveLength(2 * n);
        for (const { real, imaginary } of poles) expect(Math.hypot(real, imaginary)).toBeLessThan(1);
      }
    }
  });
  it("poles, zeros and gain make up the response", () =>
    fc.assert(
      fc.property(anyDesign, fc.double({ min: 0.01, max: 0.49, noNaN: true }), (design, part) => {
        const { poles, zeros, gain } = polesAndZeros(design);
        const angle = 2 * Math.PI * part;
        const size = (roots: typeof poles) =>
          roots.reduce(
            (product, root) =>
              product * Math.hypot(Math.cos(angle) - root.real, Math.sin(angle) - root.imaginary),
            1,
          );
        const wanted = frequencyResponse(design, [1000 * part]).magnitude[0] as number;
        // First-order sections have one root less above and below alike.
        expect(Math.abs((gain * size(zeros)) / size(poles) - wanted)).toBeLessThan(1e-6);
      }),
    ));
  it("a pole at 0 counts: edges a quarter of the rate apart, and a critically damped filter at that cutoff", () => {
    const band = butterworth({ type: "band-pass", order: 1, cutoff: [201, 451], sampleRate: 1000 });
    const { poles, zeros } = polesAndZeros(band);
    expect(Math.min(...poles.map(({ real, imaginary }) => Math.hypot(real, imaginary)))).toBeLessThan(1e-15);
    expect(poles).toHaveLength(2);
    expect(zeros.map(({ real }) => real).sort()).toEqual([-1, 1]);
    const flat = criticallyDamped({ order: 2, cutoff: 250, sampleRate: 1000 });
    const atZero = { ...flat, sections: [[0.25, 0.5, 0.25, 1, 0, 0]] } as const;
    expect(polesAndZeros(atZero).poles.map(({ real, imaginary }) => real || imaginary)).toEqual([0, 0]);
    // Both have the pad of a second-order section, 9.
    const ten = new Float64Array(10).map((_, i) => Math.cos(i));
    for (const design of [band, atZero])
      expect(filterZeroPhase(ten, design)).toEqual(filterZeroPhase(ten, design, { padLength: 9 }));
  });
  it("sections run from the most damped pair to the one nearest to the unit circle, the gain in the first", () => {
    const { sections } = butterworth({ type: "low-pass", order: 7, cutoff: 50, sampleRate: 1000 });
    expect(sections.map(([b0]) => b0 === 1)).toEqual([false, true, true, true]);
    const radii = sections.map(([, , , , a1, a2]) => (a2 === 0 ? Math.abs(a1) : Math.sqrt(a2)));
    expect(radii).toEqual([...radii].sort((a, b) => a - b));
  });
});

describe("frequencyResponse", () => {
  const design = butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 });
  it("zero phase is the square of one pass, without phase", () => {
    const one = frequencyResponse(design, [0, 20, 50, 400, 500]);
    const both = frequencyResponse(design, [0, 20, 50, 400, 500], { zeroPhase: true });
    one.magnitude.forEach((value, i) => {
      expect(both.magnitude[i]).toBeCloseTo(value ** 2, 15);
      expect(both.phase[i]).toBe(0);
    });
  });
  it("an order-2 Butterworth delays its cutoff by a quarter turn", () =>
    expect(frequencyResponse(design, [50]).phase[0]).toBeCloseTo(-Math.PI / 2, 12));
  it("slow changes are delayed by sqrt 2 / (2 pi fc)", () => {
    const slow = frequencyResponse(
      butterworth({ type: "low-pass", order: 2, cutoff: 20, sampleRate: 10_000 }),
      [0.1],
    );
    expect(-(slow.phase[0] as number) / (2 * Math.PI * 0.1)).toBeCloseTo(Math.SQRT2 / (2 * Math.PI * 20), 6);
  });
  it("refuses frequencies beyond half the rate, and what is no design", () => {
    refuse("out-of-range", () => frequencyResponse(design, [10, 501]), /frequencies\[1\]/);
    refuse("out-of-range", () => frequencyResponse(design, [-1]));
    refuse("not-finite", () => frequencyResponse(design, [Number.NaN]));
    refuse("wrong-type", () => frequencyResponse({} as FilterDesign, [1]));
    refuse("wrong-type", () => polesAndZeros(null as unknown as FilterDesign));
    refuse("unknown-option", () => frequencyResponse(design, [1], { passes: 2 } as object));
  });
});

describe("bad input", () => {
  const good = { type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 } as const;
  it.each([
    ["out-of-range", { type: "all-pass" }, /"low-pass" or/],
    ["out-of-range", { order: 0 }, /order is 0/],
    ["out-of-range", { order: 101 }, /order is 101/],
    ["out-of-range", { order: 2.5 }, /whole/],
    ["wrong-type", { order: "2" }, /order is "2"/],
    ["out-of-range", { cutoff: 500 }, /below 500/],
    ["not-finite", { cutoff: Number.NaN }, /cutoff is NaN/],
    ["wrong-type", { cutoff: [20, 50] }, /needs one number/],
    ["wrong-type", { type: "band-pass" }, /two edges/],
    ["out-of-range", { type: "band-stop", cutoff: [50, 20] }, /must rise/],
    ["out-of-range", { sampleRate: -1 }, /sampleRate/],
    ["out-of-range", { passes: 0 }, /passes/],
  ])("%s for %o", (code, wrong, words) =>
    refuse(code, () => butterworth({ ...good, ...wrong } as typeof good), words),
  );
  it("refuses no options and bad critically damped designs", () => {
    refuse("out-of-range", () => butterworth(undefined as unknown as typeof good), /type is undefined/);
    refuse("wrong-type", () => criticallyDamped(undefined as unknown as typeof good), /order is undefined/);
    refuse("out-of-range", () => criticallyDamped({ ...good, order: 0 }));
    refuse("out-of-range", () => criticallyDamped({ ...good, cutoff: 500 }));
    refuse("out-of-range", () => criticallyDamped({ ...good, passes: 1.5 }));
    refuse("out-of-range", () => passCorrection(0, 2));
    refuse("out-of-range", () => passCorrection(2, 0));
  });
});
