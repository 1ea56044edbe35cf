import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bandPass,
  bandStop,
  butterworth,
  criticallyDamped,
  filterZeroPhase,
  gustafsson,
  highPass,
  lowPass,
  type Section,
  ZERO_PHASE_DEFAULTS,
} from "../../src/filters/index.js";
import zeroPhase from "../fixtures/filters/zeroPhase.json" with { type: "json" };
import { worst } from "./comparison.js";

const order = fc.integer({ min: 1, max: 6 }).map((half) => 2 * half);
const cutoff = fc.double({ min: 5, max: 450, noNaN: true });
const signal = fc
  .array(fc.double({ min: -2000, max: 2000, noNaN: true }), { minLength: 60, maxLength: 300 })
  .map((values) => Float64Array.from(values));
const ends = fc.constantFrom("odd", "even", "constant", "none" as const);
const setting = fc.record({ order, cutoff, ends });
const distance = (a: Float64Array, b: Float64Array) =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number))));

describe("what the cutoff means", () => {
  /** Net gain for a sine far from the ends, by projection on it over whole periods. */
  function gainAt(frequency: number, run: (wave: Float64Array) => Float64Array): number {
    const wave = Float64Array.from({ length: 40_000 }, (_, i) =>
      Math.sin((2 * Math.PI * frequency * i) / 1000),
    );
    const filtered = run(wave);
    let product = 0;
    let square = 0;
    for (let i = 10_000; i < 30_000; i++) {
      product += (wave[i] as number) * (filtered[i] as number);
      square += (wave[i] as number) ** 2;
    }
    return product / square;
  }
  const close = (got: number) => expect(Math.abs(got - Math.SQRT1_2)).toBeLessThan(1e-9);
  it.each([2, 4, 6, 8, 12])("net order %i is -3 dB at the cutoff, measured on a sine", (net) => {
    close(gainAt(50, (wave) => lowPass(wave, { cutoff: 50, sampleRate: 1000, order: net })));
    close(gainAt(50, (wave) => highPass(wave, { cutoff: 50, sampleRate: 1000, order: net })));
    for (const edge of [50, 200]) {
      close(gainAt(edge, (wave) => bandPass(wave, { cutoff: [50, 200], sampleRate: 1000, order: net })));
      close(gainAt(edge, (wave) => bandStop(wave, { cutoff: [50, 200], sampleRate: 1000, order: net })));
    }
  });
  it("net order 24 is -3 dB at both edges of a band over most of the spectrum", () => {
    for (const edge of [5, 400]) {
      close(gainAt(edge, (wave) => bandPass(wave, { cutoff: [5, 400], sampleRate: 1000, order: 24 })));
      close(gainAt(edge, (wave) => bandStop(wave, { cutoff: [5, 400], sampleRate: 1000, order: 24 })));
    }
  });
  it("a critically damped design for two passes is -3 dB at its cutoff", () => {
    const design = criticallyDamped({ order: 2, cutoff: 50, sampleRate: 1000, passes: 2 });
    close(gainAt(50, (wave) => filterZeroPhase(wave, design)));
  });
  it("each-pass leaves -6 dB at the cutoff", () => {
    const options = { cutoff: 50, sampleRate: 1000, cutoffMeaning: "each-pass" } as const;
    expect(gainAt(50, (wave) => lowPass(wave, options))).toBeCloseTo(0.5, 9);
  });
  it("the default is net fourth order with odd ends", () => {
    const wave = Float64Array.from({ length: 50 }, (_, i) => Math.cos(i));
    const stated = { order: 4, ends: "odd", cutoffMeaning: "net", padLength: 9 } as const;
    expect(lowPass(wave, { cutoff: 50, sampleRate: 1000 })).toEqual(
      lowPass(wave, { cutoff: 50, sampleRate: 1000, ...stated }),
    );
    expect(ZERO_PHASE_DEFAULTS).toEqual({ ...stated, padLength: null, inPlace: false });
  });
  it("the four filters are their designs run by filterZeroPhase", () => {
    const x = Float64Array.from(zeroPhase.inputs.contact);
    const common = { order: 2, sampleRate: 1000, passes: 2 };
    const rate = { sampleRate: 1000 };
    const run = (type: "low-pass" | "high-pass" | "band-pass" | "band-stop", at: number | [number, number]) =>
      filterZeroPhase(x, butterworth({ ...common, type, cutoff: at }));
    expect(lowPass(x, { cutoff: 50, ...rate })).toEqual(run("low-pass", 50));
    expect(highPass(x, { cutoff: 10, ...rate })).toEqual(run("high-pass", 10));
    expect(bandPass(x, { cutoff: [5, 60], ...rate })).toEqual(run("band-pass", [5, 60]));
    expect(bandStop(x, { cutoff: [45, 55], ...rate })).toEqual(run("band-stop", [45, 55]));
  });
});

describe("laws", () => {
  it("a constant passes low-pass and band-stop, and comes out of high-pass and band-pass as nothing", () =>
    fc.assert(
      fc.property(setting, fc.double({ min: 1e-9, max: 5000, noNaN: true }), (options, value) => {
        const constant = new Float64Array(90).fill(value);
        const all = { sampleRate: 1000, ...options };
        const band = { ...all, cutoff: [options.cutoff, options.cutoff + 40] as const };
        for (const sample of lowPass(constant, all)) expect(Math.abs(sample / value - 1)).toBeLessThan(1e-9);
        for (const sample of bandStop(constant, band))
          expect(Math.abs(sample / value - 1)).toBeLessThan(1e-9);
        for (const sample of highPass(constant, all)) expect(Math.abs(sample / value)).toBeLessThan(1e-9);
        for (const sample of bandPass(constant, band)) expect(Math.abs(sample / value)).toBeLessThan(1e-9);
      }),
    ));
  it("a constant passes a cutoff of a two-thousandth of the rate unchanged but for rounding", () => {
    for (const sample of lowPass(new Float64Array(500).fill(700), { cutoff: 0.5, sampleRate: 1000 })) {
      // The recursion multiplies roundings of 2^-53 by up to 1 / tangent^2 = 4e5.
      expect(Math.abs(sample / 700 - 1)).toBeLessThan(4.5e-11);
    }
  });
  it("a straight line comes out as the same line with odd ends and a pad longer than the filter remembers", () => {
    const line = Float64Array.from({ length: 600 }, (_, i) => 3 * i - 100);
    expect(distance(lowPass(line, { cutoff: 20, sampleRate: 1000, padLength: 590 }), line)).toBeLessThan(
      1e-9,
    );
  });
  it("linear: the filter of a sum is the sum of the filtered", () =>
    fc.assert(
      fc.property(setting, signal, fc.double({ min: -3, max: 3, noNaN: true }), (options, a, factor) => {
        const b = a.map((_, i) => 500 * Math.sin(i / 7));
        const run = (x: Float64Array) => lowPass(x, { sampleRate: 1000, ...options });
        const [filteredA, filteredB] = [run(a), run(b)];
        const together = run(a.map((value, i) => value * factor + (b[i] as number)));
        const sum = filteredA.map((value, i) => value * factor + (filteredB[i] as number));
        expect(distance(together, sum)).toBeLessThan(1e-7);
      }),
    ));
  it("linear over bands of any width: three times a signal comes out three times as large", () => {
    const wave = Float64Array.from({ length: 3000 }, (_, i) => 800 * Math.sin(i / 30) + ((i * 7919) % 101));
    const bands = fc.record({
      cutoff: fc.tuple(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 220, max: 498, noNaN: true }),
      ),
      order: fc.integer({ min: 1, max: 12 }).map((half) => 2 * half),
    });
    fc.assert(
      fc.property(bands, fc.constantFrom(bandPass, bandStop), (options, run) => {
        const once = run(wave, { ...options, sampleRate: 1000 });
        const thrice = run(
          wave.map((value) => 3 * value),
          { ...options, sampleRate: 1000 },
        );
        // Relative to the input: the rounding of 2^-53 over the squared tangent of the lowest edge is 1.1e-11.
        const apart = distance(
          thrice,
          once.map((value) => 3 * value),
        );
        expect(apart / 2700).toBeLessThan(1.2e-11);
      }),
      {
        numRuns: 200,
        examples: [
          [{ cutoff: [1, 400], order: 24 }, bandPass],
          [{ cutoff: [91, 493], order: 24 }, bandStop],
        ],
      },
    );
  });
  it("time reversal: a signal between quiet ends filtered backwards in time is the filtered one backwards", () =>
    fc.assert(
      fc.property(
        fc.record({ order, cutoff: fc.double({ min: 20, max: 450, noNaN: true }) }),
        signal,
        (options, values) => {
          const quiet = new Float64Array(values.length + 4000);
          quiet.set(values, 2000);
          const filtered = lowPass(quiet, { sampleRate: 1000, ...options });
          const reversed = lowPass(quiet.slice().reverse(), { sampleRate: 1000, ...options });
          expect(distance(reversed.reverse(), filtered)).toBeLessThan(1e-8);
        },
      ),
    ));
  it("a channel comes out bit for bit the same alone and in company, short or long", () =>
    fc.assert(
      fc.property(
        setting,
        signal,
        fc.integer({ min: 1, max: 5 }),
        fc.constantFrom(1, 20),
        (options, values, count, times) => {
          const long = Float64Array.from(
            { length: times * values.length },
            (_, i) => values[i % values.length] as number,
          );
          const channels = Array.from({ length: count }, (_, c) => long.map((value) => value * (c + 1)));
          const filtered = lowPass(channels, { sampleRate: 1000, ...options });
          expect(filtered).toHaveLength(count);
          channels.forEach((channel, c) => {
            expect(filtered[c]).toEqual(lowPass(channel, { sampleRate: 1000, ...options }));
          });
        },
      ),
    ));
  it.each([
    [4999, 3],
    [5000, 3],
    [20_000, 12],
    [50_000, 30],
  ])(
    "%i samples at order %i a pass, in halves and blocks, equal the filter written out sample by sample",
    (count, pass) => {
      const values = Float64Array.from(
        { length: count },
        (_, i) => 800 * Math.sin(i / 30) + ((i * 7919) % 101),
      );
      const { sections } = butterworth({ type: "low-pass", order: pass, cutoff: 90, sampleRate: 1000 });
      const wanted = [...plainBothWays(values, sections)];
      const options = {
        cutoff: 90,
        sampleRate: 1000,
        order: 2 * pass,
        cutoffMeaning: "each-pass",
        ends: "none",
      } as const;
      expect(worst(lowPass(values, options), wanted)).toBeLessThan(1e-13);
      expect(worst(lowPass(values.slice(), { ...options, inPlace: true }), wanted)).toBeLessThan(1e-13);
    },
  );
  it("dies away to nothing over zeros instead of going on in subnormal numbers", () => {
    const impulse = new Float64Array(40_000);
    impulse[20_000] = 700;
    const filtered = lowPass(impulse, { cutoff: 50, sampleRate: 1000 });
    expect(filtered[20_000]).toBeGreaterThan(50);
    expect(filtered.slice(0, 10_000).every((value) => value === 0)).toBe(true);
    expect(filtered.slice(30_000).every((value) => value === 0)).toBe(true);
  });
});

/** Direct form I, one section after the other, written for clarity; starts from the steady state of the first sample. */
function plainBothWays(values: Float64Array, sections: readonly Section[]): Float64Array {
  const pass = (input: Float64Array) =>
    sections.reduce((x, [b0, b1, b2, , a1, a2]) => {
      const y = new Float64Array(x.length);
      const rest = ((x[0] as number) * (b0 + b1 + b2)) / (1 + a1 + a2);
      const at = (array: Float64Array, i: number, before: number) => (i < 0 ? before : (array[i] as number));
      for (let i = 0; i < x.length; i++) {
        const fed = b0 * at(x, i, 0) + b1 * at(x, i - 1, x[0] as number) + b2 * at(x, i - 2, x[0] as number);
        y[i] = fed - a1 * at(y, i - 1, rest) - a2 * at(y, i - 2, rest);
      }
      return y;
    }, input);
  return pass(pass(values).reverse()).reverse();
}

describe("input and output", () => {
  const values = Float64Array.from({ length: 64 }, (_, i) => Math.round(1000 * Math.sin(i / 5)));
  const options = { cutoff: 60, sampleRate: 1000 };
  const refuse = (code: string, run: () => unknown, words: RegExp) => {
    expect(run).toThrow(expect.objectContaining({ code }));
    expect(run).toThrow(words);
  };
  it("leaves its argument alone, and writes over it on request", () => {
    const given = values.slice();
    const fresh = lowPass(given, options);
    expect(given).toEqual(values);
    const same = lowPass(given, { ...options, inPlace: true });
    expect(same).toBe(given);
    expect(same).toEqual(fresh);
  });
  it("takes 32-bit samples and gives 64-bit ones", () => {
    const filtered = lowPass(Float32Array.from(values), options);
    expect(filtered).toBeInstanceOf(Float64Array);
    expect(filtered).toEqual(lowPass(values, options));
  });
  it("gives no channels for no channels", () => expect(lowPass([], options)).toEqual([]));
  it("writes over each of several channels on request, whatever the ends", () => {
    for (const ends of ["odd", "none", gustafsson] as const) {
      const channels = [values.slice(), values.map((value) => -value), values.map((value) => value + 5)];
      const fresh = lowPass(channels, { ...options, ends });
      const same = lowPass(channels, { ...options, ends, inPlace: true });
      same.forEach((channel, i) => {
        expect(channel).toBe(channels[i]);
        expect(channel).toEqual(fresh[i]);
      });
    }
  });
  it("takes 10 samples at order 4 and refuses 9, as SciPy does", () => {
    for (const { samples, refused } of zeroPhase.refused) {
      const run = () => lowPass(new Float64Array(samples), options);
      if (refused) refuse("too-short", run, new RegExp(`there are ${samples} samples; more than 9`));
      else expect(run()).toHaveLength(samples);
    }
    expect(lowPass(new Float64Array(1), { ...options, ends: "none" })).toHaveLength(1);
    refuse("too-short", () => lowPass(new Float64Array(0), { ...options, ends: "none" }), /there are 0/);
  });

  it.each([0, -5, 1e-9, 1e-4, 500, 900])("refuses the cutoff %d Hz of 1000 Hz", (wrong) =>
    refuse(
      "out-of-range",
      () => lowPass(values, { cutoff: wrong, sampleRate: 1000 }),
      /cutoff is .* above 0.0001 and below 500 Hz/,
    ),
  );
  it.each([0, -1000])("refuses the rate %d Hz", (wrong) =>
    refuse(
      "out-of-range",
      () => lowPass(values, { cutoff: 50, sampleRate: wrong }),
      /sampleRate is .* above 0/,
    ),
  );
  it.each([3, 5])("refuses the odd order %i with the reason", (wrong) =>
    refuse(
      "out-of-range",
      () => lowPass(values, { ...options, order: wrong }),
      /must be even, as both passes share it/,
    ),
  );
  it("refuses an order at which the gain would sink among the smallest numbers", () =>
    refuse(
      "out-of-range",
      () => lowPass(values, { ...options, cutoff: 0.0002, order: 100 }),
      /order is too high/,
    ));
  it("refuses an order that is no whole number", () =>
    refuse("out-of-range", () => lowPass(values, { ...options, order: 2.5 }), /whole number/));
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "says where %d stands",
    (wrong) => {
      for (const at of [0, 3, 31, 63]) {
        for (const inPlace of [false, true]) {
          const spoilt = values.slice();
          spoilt[at] = wrong;
          refuse("not-finite", () => lowPass(spoilt, { ...options, inPlace }), new RegExp(`sample ${at};`));
          const channels = [values.slice(), values.slice(), values.slice(), spoilt.slice()];
          refuse(
            "not-finite",
            () => lowPass(channels, { ...options, inPlace }),
            new RegExp(`channel 3 holds .* sample ${at};`),
          );
        }
      }
    },
  );
  it("refuses finite numbers on which the filter overflows", () =>
    refuse(
      "out-of-range",
      () =>
        lowPass(
          new Float64Array(20).map((_, i) => (i % 2 ? 1.7e308 : -1.7e308)),
          options,
        ),
      /overflow/,
    ));
  it("refuses channels of different lengths", () =>
    refuse("unequal-lengths", () => lowPass([values, values.slice(1)], options), /channel 1 has 63/));
  it("refuses what is no array of samples", () => {
    refuse("wrong-type", () => lowPass("signal" as unknown as Float64Array, options), /Float64Array/);
    refuse("wrong-type", () => lowPass([[1, 2]] as unknown as Float64Array[], options), /Float64Array/);
    refuse("wrong-type", () => lowPass(undefined as unknown as Float64Array, options), /undefined/);
  });
  it("refuses 32-bit samples in place", () =>
    refuse(
      "wrong-type",
      () => lowPass(Float32Array.from(values), { ...options, inPlace: true }),
      /Float64Array/,
    ));
  it("refuses unknown options and words", () => {
    refuse("unknown-option", () => lowPass(values, { ...options, passes: 2 } as typeof options), /passes/);
    refuse("out-of-range", () => lowPass(values, { ...options, ends: "cyclic" as "odd" }), /"odd" or "even"/);
    refuse(
      "out-of-range",
      () => lowPass(values, { ...options, cutoffMeaning: "x" as "net" }),
      /"net" or "each-pass"/,
    );
    refuse("out-of-range", () => lowPass(values, { ...options, padLength: -1 }), /padLength/);
  });
  it("refuses no options at all", () =>
    refuse(
      "wrong-type",
      () => lowPass(values, undefined as unknown as typeof options),
      /sampleRate is undefined/,
    ));
  it("refuses edges that are none", () => {
    const band = (edges: unknown) => () =>
      bandPass(values, { cutoff: edges as [number, number], sampleRate: 1000 });
    refuse("out-of-range", band([60, 60]), /must rise/);
    refuse("out-of-range", band([60, 20]), /must rise/);
    refuse("out-of-range", band([0, 20]), /cutoff\[0\] is 0 Hz/);
    refuse("out-of-range", band([60, 60 + 1e-5]), /more than 0.0001 Hz apart/);
    refuse("out-of-range", band([1e-6, 60]), /cutoff\[0\] is 0.000001 Hz/);
    refuse("out-of-range", band([20, 500]), /cutoff\[1\] is 500 Hz/);
    refuse("wrong-type", band(20), /two edges/);
    refuse("wrong-type", band([1, 2, 3]), /two edges/);
    refuse(
      "wrong-type",
      () => bandStop(values, { cutoff: "20" as unknown as [number, number], sampleRate: 1000 }),
      /two edges/,
    );
  });
  it("refuses what is no design", () => {
    const run = (design: unknown) => () => filterZeroPhase(values, design as ReturnType<typeof butterworth>);
    refuse("wrong-type", run(undefined), /design has no sections/);
    refuse("wrong-type", run({ sections: [] }), /design has no sections/);
    refuse("wrong-type", run({ sections: [[1, 2, 1, 1, 0.5]] }), /section 0 .* is needed/);
    refuse("wrong-type", run({ sections: [[1, 2, 1, 2, 0.5, 0.1]] }), /section 0/);
    refuse("wrong-type", run({ sections: [[1, 2, 1, 1, Number.NaN, 0.1]] }), /section 0/);
  });
});
