import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { interpolate, resample, timeNormalise } from "../../src/filters/index.js";

const refuse = (code: string, run: () => unknown, words?: RegExp) => {
  expect(run).toThrow(expect.objectContaining({ code }));
  if (words) expect(run).toThrow(words);
};
const distance = (a: ArrayLike<number>, b: ArrayLike<number>) =>
  Math.max(...Array.from(a, (value, i) => Math.abs(value - (b[i] as number))));

describe("resample", () => {
  const ratio = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }));
  it("a constant stays the same constant, to the last sample, with any ends but none", () =>
    fc.assert(
      fc.property(ratio, fc.constantFrom("odd", "even", "constant" as const), ([up, down], ends) => {
        const got = resample(new Float64Array(300).fill(700), { from: down, to: up, ends });
        expect(got).toHaveLength(Math.ceil((300 * up) / down));
        // Each of the phases between two samples has its own sum of taps; they differ by what the window leaves.
        for (const value of got) expect(Math.abs(value / 700 - 1)).toBeLessThan(1e-3);
      }),
    ));
  it("linear: the resampled sum is the sum of the resampled", () =>
    fc.assert(
      fc.property(ratio, fc.double({ min: -3, max: 3, noNaN: true }), ([up, down], factor) => {
        const a = Float64Array.from({ length: 200 }, (_, i) => Math.sin(i / 9) * 500);
        const b = Float64Array.from({ length: 200 }, (_, i) => ((i * 7919) % 101) - 50);
        const run = (x: Float64Array) => resample(x, { from: down, to: up });
        const [ra, rb] = [run(a), run(b)];
        expect(
          distance(
            run(a.map((value, i) => value + factor * (b[i] as number))),
            ra.map((value, i) => value + factor * (rb[i] as number)),
          ),
        ).toBeLessThan(1e-9);
      }),
    ));
  it("keeps a slow sine and its times: 1000 to 240 Hz within 0.1 %", () => {
    const wave = Float64Array.from({ length: 4000 }, (_, i) => Math.sin((2 * Math.PI * 5 * i) / 1000));
    const got = resample(wave, { from: 1000, to: 240 });
    expect(got).toHaveLength(960);
    const wanted = got.map((_, k) => Math.sin((2 * Math.PI * 5 * k) / 240));
    expect(distance(got.slice(50, -50), wanted.slice(50, -50))).toBeLessThan(1e-3);
  });
  it("takes out what the new rate could not hold: 200 Hz of 1000 is gone at 240", () => {
    const wave = Float64Array.from({ length: 4000 }, (_, i) => Math.sin((2 * Math.PI * 200 * i) / 1000));
    expect(Math.max(...resample(wave, { from: 1000, to: 240 }).slice(50, -50).map(Math.abs))).toBeLessThan(
      2e-3,
    );
  });
  it("the same rate gives a copy, no samples give none, rates may be broken numbers", () => {
    const x = new Float64Array([1, 5, 2]);
    const same = resample(x, { from: 1000, to: 1000 });
    expect(same).toEqual(x);
    expect(same).not.toBe(x);
    expect(resample(new Float64Array(0), { from: 1000, to: 240 })).toHaveLength(0);
    expect(resample(new Float64Array(3000), { from: 59.94, to: 60 })).toHaveLength(
      Math.ceil((3000 * 1000) / 999),
    );
  });
  it("refuses rates without a ratio, too few samples, NaN", () => {
    const x = new Float64Array(100);
    refuse(
      "out-of-range",
      () => resample(x, { from: 1000, to: 1000 * Math.sqrt(2) }),
      /ratio of whole numbers/,
    );
    refuse("out-of-range", () => resample(x, { from: 0, to: 240 }), /from is 0/);
    refuse("out-of-range", () => resample(x, { from: 1000, to: -1 }), /to is -1/);
    refuse("too-short", () => resample(new Float64Array(10), { from: 1000, to: 240 }), /more than 42/);
    expect(resample(new Float64Array(10), { from: 1000, to: 240, ends: "constant" })).toHaveLength(3);
    refuse("not-finite", () => resample(new Float64Array([1, Number.NaN]), { from: 1, to: 2 }));
    refuse("out-of-range", () => resample(x, { from: 1, to: 2, ends: "wrap" as "odd" }));
    refuse("unknown-option", () =>
      resample(x, { from: 1, to: 2, window: "hann" } as { from: number; to: number }),
    );
    refuse("wrong-type", () => resample(x, undefined as unknown as { from: number; to: number }));
  });
});

describe("interpolate", () => {
  const points = fc
    .array(
      fc.tuple(
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        fc.double({ min: -100, max: 100, noNaN: true }),
      ),
      {
        minLength: 2,
        maxLength: 30,
      },
    )
    .map((rows) => {
      let time = 0;
      const times = Float64Array.from(rows, ([step]) => {
        time += step;
        return time;
      });
      return { times, values: Float64Array.from(rows, ([, value]) => value) };
    });
  const method = fc.constantFrom("linear", "cubic", "pchip" as const);
  it("goes through its points, whatever the method", () =>
    fc.assert(
      fc.property(points, method, ({ times, values }, how) => {
        expect(distance(interpolate(times, values, times, { method: how }), values)).toBeLessThan(1e-9);
      }),
    ));
  it("pchip and lines stay between the two points next to them", () =>
    fc.assert(
      fc.property(
        points,
        fc.constantFrom("linear", "pchip" as const),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ times, values }, how, part) => {
          const piece = Math.min(Math.floor(part * (times.length - 1)), times.length - 2);
          const [t0, t1, x0, x1] = [times[piece], times[piece + 1], values[piece], values[piece + 1]] as [
            number,
            number,
            number,
            number,
          ];
          const at = Array.from({ length: 9 }, (_, i) => t0 + ((t1 - t0) * i) / 8).map((t) =>
            Math.min(t, t1),
          );
          for (const value of interpolate(times, values, at, { method: how })) {
            expect(value).toBeGreaterThanOrEqual(Math.min(x0, x1) - 1e-9);
            expect(value).toBeLessThanOrEqual(Math.max(x0, x1) + 1e-9);
          }
        },
      ),
    ));
  it("a cubic is exact through the spline, a line through every method", () => {
    const times = Float64Array.of(0, 0.5, 2, 2.2, 4, 5);
    const at = Array.from({ length: 51 }, (_, i) => i / 10);
    const cubic = (t: number) => t ** 3 - 4 * t * t + 2 * t - 7;
    expect(
      distance(interpolate(times, times.map(cubic), at, { method: "cubic" }), at.map(cubic)),
    ).toBeLessThan(1e-12);
    for (const how of ["linear", "cubic", "pchip"] as const) {
      expect(
        distance(
          interpolate(
            times,
            times.map((t) => 3 * t + 1),
            at,
            { method: how },
          ),
          at.map((t) => 3 * t + 1),
        ),
      ).toBeLessThan(1e-12);
    }
  });
  it("error order: half the spacing leaves a quarter for lines and a sixteenth for the spline", () => {
    const error = (count: number, how: "linear" | "cubic") => {
      const times = Float64Array.from({ length: count + 1 }, (_, i) => i / count);
      const at = Array.from({ length: 1000 }, (_, i) => 0.2 + (0.6 * i) / 999);
      return distance(
        interpolate(
          times,
          times.map((t) => Math.sin(3 * t)),
          at,
          { method: how },
        ),
        at.map((t) => Math.sin(3 * t)),
      );
    };
    expect(error(40, "linear") / error(80, "linear")).toBeCloseTo(4, 0);
    expect(error(40, "cubic") / error(80, "cubic")).toBeGreaterThan(15);
    expect(error(40, "cubic") / error(80, "cubic")).toBeLessThan(17);
  });
  it("takes times in any order", () => {
    const times = Float64Array.from({ length: 100 }, (_, i) => i);
    const at = [98.5, 0.25, 50, 49.75, 99, 0];
    expect([...interpolate(times, times, at)]).toEqual(at);
  });
  it("refuses times that do not rise, times beyond the points, unequal numbers, NaN", () => {
    const [t, x] = [Float64Array.of(0, 1, 2), Float64Array.of(5, 6, 7)];
    refuse(
      "uneven-time",
      () => interpolate(Float64Array.of(0, 1, 1), x, [0.5]),
      /times\[2\] is 1 s after 1 s/,
    );
    refuse("out-of-range", () => interpolate(t, x, [0.5, 2.5]), /at\[1\] is 2.5 s/);
    refuse("out-of-range", () => interpolate(t, x, [Number.NaN]), /at\[0\]/);
    refuse("unequal-lengths", () => interpolate(t, x.slice(1), [0.5]));
    refuse("too-short", () => interpolate(t.slice(2), x.slice(2), [2]));
    refuse("not-finite", () => interpolate(t, Float64Array.of(1, Number.NaN, 2), [0.5]));
    refuse("not-finite", () => interpolate(Float64Array.of(1, Number.NaN, 2), x, [0.5]));
    refuse("out-of-range", () => interpolate(t, x, [0.5], { method: "akima" as "cubic" }));
  });
});

describe("timeNormalise keeps what a plot needs", () => {
  it("the length of the stretch does not matter to a curve in per cent", () => {
    const curve = (count: number) =>
      Float64Array.from({ length: count }, (_, i) => Math.sin((Math.PI * i) / (count - 1)));
    const [short, long] = [curve(251), curve(1001)];
    expect(distance(timeNormalise(short, 1000, 0, 0.25), timeNormalise(long, 1000, 0, 1))).toBeLessThan(3e-5);
  });
});
