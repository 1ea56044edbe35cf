import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/events/index.js";
import {
  averageLoadingRate,
  earlyLoadingRate,
  instantaneousLoadingRate,
} from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";
import { sampledRun } from "../runs.js";

const BW = 70 * 9.80665;
const contact = contactOver(0, 0.24);
const groundWith = (up: ArrayLike<number>): ReturnType<typeof groundOf> => groundOf({ up, sampleRate: 1000 });
/** A straight 1.5 BW in 30 ms, then a trough, then an active peak. */
const straight = Array.from(
  { length: 241 },
  (_, i) => 1.5 * BW * (i <= 30 ? i / 30 : 0.8 + Math.abs(i - 60) / 150),
);
/** A half sine of 2.4 BW over 240 ms and a raised cosine of 1.2 BW over the first 50 ms. */
const rounded = Array.from(
  { length: 241 },
  (_, i) =>
    BW * (2.4 * Math.sin((Math.PI * i) / 240) + (i <= 50 ? 0.6 * (1 - Math.cos((2 * Math.PI * i) / 50)) : 0)),
);
const halfSine = Array.from({ length: 241 }, (_, i) => 2.4 * BW * Math.sin((Math.PI * i) / 240));

describe("averageLoadingRate", () => {
  const rate = (up: readonly number[], window = {}): number =>
    averageLoadingRate(groundWith(up), { contact }, window) ?? Number.NaN;
  it("published definition (doi:10.1055/s-0042-107248, method B) by hand: a straight 1.5 BW in 30 ms is 50 BW/s", () => {
    expect(rate(straight) / BW).toBeCloseTo(50, 10);
  });
  it("on a rounded rise, by hand: peak at the 28 ms sample; 91.8 BW/s, and 72.1 over the whole rise", () => {
    const force = (ms: number): number => {
      const i = Math.floor(ms);
      return (rounded[i] as number) + (ms - i) * ((rounded[i + 1] as number) - (rounded[i] as number));
    };
    expect(rate(rounded)).toBeCloseTo((force(22.4) - force(5.6)) / 0.0168, 6);
    expect(rate(rounded) / BW).toBeCloseTo(91.8, 1);
    expect(rate(rounded, { from: 0, to: 1 }) / BW).toBeCloseTo(72.1, 1);
  });
  it("closing law: rates of adjoining windows average, by width, to the rate of the whole rise", () => {
    const part = (from: number, to: number): number => (to - from) * rate(rounded, { from, to });
    expect((part(0, 0.3) + part(0.3, 1)) / part(0, 1)).toBeCloseTo(1, 12);
  });
  it("property: proportional to force", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), (k) => {
        expect(rate(rounded.map((f) => k * f)) / (k * rate(rounded))).toBeCloseTo(1, 9);
      }),
    ));
  it("takes another rule for the impact peak", () => {
    expect(averageLoadingRate(groundWith(straight), { contact }, { impactPeak: { before: 0.1 } })).toBeNull();
  });
});

describe("earlyLoadingRate", () => {
  it("published definition (Schmida et al. 2022, 3 to 12 % of contact) by hand: a straight 1.5 BW in 30 ms is 50 BW/s", () => {
    expect(earlyLoadingRate(groundWith(straight), { contact }) / BW).toBeCloseTo(50, 10);
  });
  it("exists without an impact peak: 2.4 BW sin(π t/t_c) between 3 and 12 %, within what 1 kHz explains", () => {
    const exact = (2.4 * (Math.sin(0.12 * Math.PI) - Math.sin(0.03 * Math.PI))) / (0.09 * 0.24);
    expect(earlyLoadingRate(groundWith(halfSine), { contact }) / BW / exact).toBeCloseTo(1, 4);
  });
  it("takes another window", () => {
    expect(earlyLoadingRate(groundWith(straight), { contact }, { from: 0, to: 0.25 }) / BW).toBeCloseTo(
      (1.5 * (0.8 + 0)) / 0.06,
      9,
    );
  });
});

describe("instantaneousLoadingRate", () => {
  const rate = (up: readonly number[], window = {}): number | null =>
    instantaneousLoadingRate(groundWith(up), { contact }, window);
  it("published window (Schmida et al. 2022) by hand: the largest of the slopes between samples 6 and 22 of 28", () => {
    const slopes = rounded.slice(6, 22).map((f, i) => ((rounded[i + 7] as number) - f) * 1000);
    expect(rate(rounded)).toBeCloseTo(Math.max(...slopes), 6);
  });
  it("a steeper piece outside the window does not count", () => {
    const up = straight.map((f, i) => (i >= 1 && i <= 3 ? 0.3 * BW : i >= 27 && i < 30 ? 1.3 * BW : f));
    expect((rate(up) as number) / BW).toBeCloseTo(50, 9);
    expect((rate(up, { from: 0, to: 1 }) as number) / BW).toBeGreaterThan(100);
  });
  it("nor does the interval that the window ends in: 22 to 23 ms for 80 % of 28 ms", () => {
    const up = rounded.map((f, i) => (i >= 23 ? f + BW : f));
    const slopes = up.slice(6, 22).map((f, i) => ((up[i + 7] as number) - f) * 1000);
    expect(rate(up)).toBeCloseTo(Math.max(...slopes), 6);
  });
  it("property: wherever the contact begins, a window up to the peak holds the last interval, the steepest", () =>
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }), (start) => {
        const at = Math.ceil(start * 1000);
        const up = Float64Array.from({ length: 900 }, (_, i) => {
          const since = i - at;
          return since < 0
            ? 0
            : BW * (since <= 20 ? 0.02 * since + (since === 20 ? 1 : 0) : 1 + Math.abs(since - 40) / 50);
        });
        const step = { contact: contactOver(start, start + 0.24) };
        expect(instantaneousLoadingRate(groundWith(up), step, { from: 0.5, to: 1 })).toBeCloseTo(
          1020 * BW,
          5,
        );
      }),
    ));
  it("property: never below the average over the same window, beyond what its fractional ends hold", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0.6, max: 1, noNaN: true }),
        (from, to) => {
          // On a rise that begins and ends flat, the ends of the window are never the steepest.
          const up = Array.from(
            { length: 241 },
            (_, i) => BW * (i <= 60 ? 0.75 * (1 - Math.cos((Math.PI * i) / 30)) : (i - 60) / 90),
          );
          const average = averageLoadingRate(groundWith(up), { contact }, { from, to }) as number;
          expect(rate(up, { from, to })).toBeGreaterThanOrEqual(average);
        },
      ),
    ));
  it("at a rate too low for two samples in the window: the slope between its ends", () => {
    const coarse = groundOf({ up: [0, 1000, 800, 2000, 0], sampleRate: 20 });
    const step = { contact: contactOver(0, 0.2) };
    expect(instantaneousLoadingRate(coarse, step)).toBeCloseTo(20_000, 6);
  });
});

describe("null without an impact peak", () => {
  it.each([averageLoadingRate, instantaneousLoadingRate])("%o", (metric) => {
    expect(metric(groundWith(halfSine), { contact })).toBeNull();
  });
});

describe.each([
  ["averageLoadingRate", averageLoadingRate],
  ["earlyLoadingRate", earlyLoadingRate],
  ["instantaneousLoadingRate", instantaneousLoadingRate],
] as const)("%s refuses", (_name, metric) => {
  it.each([
    [{ from: 0.8, to: 0.2 }, "to"],
    [{ from: 0.5, to: 0.5 }, "to"],
    [{ to: Number.NaN }, "to"],
    [{ to: 1.1 }, "to"],
    [{ from: -0.1 }, "from"],
    [{ from: 1, to: 1 }, "from"],
  ])("the window %o, for its %s", (window, argument) =>
    expect(() => metric(groundWith(straight), { contact }, window)).toThrow(
      expect.objectContaining({ code: "out-of-range", argument }),
    ),
  );
  it("a contact outside the recording", () =>
    expect(() => metric(groundWith(straight), { contact: contactOver(0.1, 0.3) })).toThrow(
      expect.objectContaining({ code: "out-of-range", argument: "contact" }),
    ));
  it("an option it does not know", () =>
    expect(() => metric(groundWith(straight), { contact }, { form: 0.1 } as object)).toThrow(
      expect.objectContaining({ code: "unknown-option" }),
    ));
});

describe("averageLoadingRate by its published variants (Schmida et al. 2022, abstract), NumPy 2.4.6 on the sampled run at 20 N", () => {
  const { ground: run, steps } = sampledRun();
  const smooth = { contact: contactOver(0, 0.24) };
  it.each([
    ["right", 0, 40338.2806035608, 29237.927899816],
    ["left", 1, 47328.9864159307, 34331.3050768989],
  ] as const)("%s foot: 20 to 80 %% of the peak's force, and the whole rise", (_side, k, ofForce, whole) => {
    const step = steps[k] as Step;
    expect(averageLoadingRate(run, step, { of: "force" })).toBeCloseTo(ofForce, 6);
    expect(averageLoadingRate(run, step, { from: 0, to: 1 })).toBeCloseTo(whole, 6);
    expect(averageLoadingRate(run, step, { from: 0, to: 1, of: "force" })).toBeCloseTo(whole, 6);
  });
  it("13 % of contact time stands in for a peak that is not there: the half sine's slope, by hand", () => {
    expect(averageLoadingRate(groundWith(halfSine), smooth)).toBeNull();
    const at = (time: number) => 2.4 * BW * Math.sin((Math.PI * time) / 0.24);
    const rise = 0.13 * 0.24;
    const byHand = (at(0.8 * rise) - at(0.2 * rise)) / (0.6 * rise);
    const rate = averageLoadingRate(groundWith(halfSine), smooth, { withoutPeak: 0.13 }) as number;
    expect(Math.abs(rate / byHand - 1)).toBeLessThan(1e-4);
  });
  it("a peak that is there is not replaced", () => {
    const step = steps[0] as Step;
    expect(averageLoadingRate(run, step, { withoutPeak: 0.13 })).toBe(averageLoadingRate(run, step));
  });
  it.each([
    [{ of: "impulse" as never }, "out-of-range"],
    [{ withoutPeak: 0 }, "out-of-range"],
    [{ withoutPeak: 2 }, "out-of-range"],
    [{ withoutPeak: Number.NaN }, "not-finite"],
  ])("refuses %o", (options, code) =>
    expect(() => averageLoadingRate(run, steps[0] as Step, options)).toThrow(
      expect.objectContaining({ code }),
    ),
  );
});
