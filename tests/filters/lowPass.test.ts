import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lowPassSections } from "../../src/filters/design/lowPassSections.js";
import { lowPass, passCorrection, ZERO_PHASE_DEFAULTS } from "../../src/filters/index.js";
import { steadyState } from "../../src/filters/run/steadyState.js";
import scipy from "../fixtures/filters/scipy.json" with { type: "json" };

const tangentOf = (cutoff: number, sampleRate: number) => Math.tan((Math.PI * cutoff) / sampleRate);

/** Largest difference, relative to the largest magnitude of what is wanted. */
function worst(got: ArrayLike<number>, wanted: readonly number[]): number {
  expect(got.length).toBe(wanted.length);
  const scale = Math.max(...wanted.map(Math.abs));
  return Math.max(...wanted.map((value, i) => Math.abs((got[i] as number) - value))) / scale;
}

/** |H| of sections at a frequency, by complex arithmetic on the unit circle. */
function magnitude(sections: ReturnType<typeof lowPassSections>, angle: number): number {
  const size = (c0: number, c1: number, c2: number) =>
    Math.hypot(
      c0 + c1 * Math.cos(angle) + c2 * Math.cos(2 * angle),
      c1 * Math.sin(angle) + c2 * Math.sin(2 * angle),
    );
  return sections.reduce(
    (product, [b0, b1, b2, a0, a1, a2]) => (product * size(b0, b1, b2)) / size(a0, a1, a2),
    1,
  );
}

describe("design against SciPy 1.17.1 butter(output='sos')", () => {
  const even = scipy.designs.filter(({ order }) => order % 2 === 0);
  it.each(even)("sections of order $order, $cutoffHz Hz of $sampleRateHz Hz", (design) => {
    const tangent = tangentOf(design.cutoffHz, design.sampleRateHz);
    const sections = lowPassSections(design.order, tangent);
    expect(sections.length).toBe(design.sos.length);
    // The file has 15 digits. The gain, read from rounded denominators, has an error of 2^-53 / tangent^2 a pole pair.
    const gainError = 1e-13 + (2 ** -52 * design.order) / tangent ** 2;
    sections.forEach((section, s) => {
      const wanted = design.sos[s] as number[];
      expect(worst(section.slice(3), wanted.slice(3))).toBeLessThan(5e-15);
      expect(worst(section.slice(0, 3), wanted.slice(0, 3))).toBeLessThan(gainError);
    });
    expect(worst(steadyState(sections), design.zi.flat())).toBeLessThan(gainError);
  });
  it.each(scipy.designs)("response of order $order, $cutoffHz Hz of $sampleRateHz Hz", (design) => {
    const tangent = tangentOf(design.cutoffHz, design.sampleRateHz);
    const sections = lowPassSections(design.order, tangent);
    const got = design.frequencyHz.map((f) => magnitude(sections, (2 * Math.PI * f) / design.sampleRateHz));
    expect(worst(got, design.magnitude)).toBeLessThan(1e-13 + (2 ** -52 * design.order) / tangent ** 2);
  });
});

describe("correction for passes", () => {
  it("Winter 2009, eq. 2.19: 0.802 for two passes of order 2", () =>
    expect(passCorrection(2, 2)).toBeCloseTo(0.802, 3));
  it.each(scipy.correctionFactors)(
    "NumPy: $passes passes of order $orderPerPass",
    ({ passes, orderPerPass, factor }) =>
      expect(passCorrection(passes, orderPerPass)).toBeCloseTo(factor, 13),
  );
  it.each(scipy.correctionChecks)("SciPy: design frequency for $wantedHz Hz of $sampleRateHz Hz", (check) => {
    const tangent = tangentOf(check.wantedHz, check.sampleRateHz) / passCorrection(2, check.orderPerPass);
    expect((Math.atan(tangent) * check.sampleRateHz) / Math.PI / check.adjustedHz).toBeCloseTo(1, 13);
    const got = lowPassSections(check.orderPerPass, tangent).flat();
    expect(worst(got, check.sosAdjusted.flat())).toBeLessThan(1e-14);
  });
});

describe("zero-phase run against SciPy 1.17.1 sosfiltfilt", () => {
  const rules = [
    ["odd", "sosfiltfilt"],
    ["even", "sosfiltfilt_even"],
    ["constant", "sosfiltfilt_constant"],
    ["none", "sosfiltfilt_none"],
  ] as const;
  const cases = scipy.zeroPhase.flatMap((item) =>
    rules.map(([ends, field]) => ({ ...item, ends, wanted: item[field] })),
  );
  it.each(cases)("$name, ends $ends", ({ order, cutoffHz, sampleRateHz, input, ends, wanted }) => {
    const options = {
      cutoff: cutoffHz,
      sampleRate: sampleRateHz,
      order: 2 * order,
      ends,
      cutoffMeaning: "each-pass",
    } as const;
    expect(worst(lowPass(Float64Array.from(input), options), wanted)).toBeLessThan(2e-12);
  });
  it("order 2 in each pass takes 10 samples and refuses 9, as SciPy does", () => {
    for (const { samples, throws } of scipy.tooShort.cases) {
      const run = () => lowPass(new Float64Array(samples), { cutoff: 50, sampleRate: 1000 });
      expect(throws).toBe(true);
      expect(run).toThrow(expect.objectContaining({ code: "too-short" }));
    }
    expect(lowPass(new Float64Array(10), { cutoff: 50, sampleRate: 1000 })).toHaveLength(10);
  });
});

describe("what the cutoff means", () => {
  /** Net gain for a sine far from the ends, by projection on it over whole periods. */
  function gainAt(frequency: number, options: Parameters<typeof lowPass>[1]): number {
    const { sampleRate } = options;
    const count = 40_000;
    const wave = Float64Array.from({ length: count }, (_, i) =>
      Math.sin((2 * Math.PI * frequency * i) / sampleRate),
    );
    const filtered = lowPass(wave, options);
    let product = 0;
    let square = 0;
    for (let i = 10_000; i < 30_000; i++) {
      product += (wave[i] as number) * (filtered[i] as number);
      square += (wave[i] as number) ** 2;
    }
    return product / square;
  }
  it.each([2, 4, 6, 8, 12])("net order %i is -3 dB at the cutoff, measured on a sine", (order) =>
    expect(Math.abs(gainAt(50, { cutoff: 50, sampleRate: 1000, order }) - Math.SQRT1_2)).toBeLessThan(1e-9),
  );
  it("each-pass leaves -6 dB at the cutoff", () =>
    expect(gainAt(50, { cutoff: 50, sampleRate: 1000, cutoffMeaning: "each-pass" })).toBeCloseTo(0.5, 9));
  it("the default is net fourth order with odd ends", () => {
    const wave = Float64Array.from({ length: 50 }, (_, i) => Math.cos(i));
    const stated = lowPass(wave, {
      cutoff: 50,
      sampleRate: 1000,
      order: 4,
      ends: "odd",
      cutoffMeaning: "net",
      padLength: 9,
    });
    expect(lowPass(wave, { cutoff: 50, sampleRate: 1000 })).toEqual(stated);
    expect(ZERO_PHASE_DEFAULTS).toEqual({
      order: 4,
      cutoffMeaning: "net",
      ends: "odd",
      padLength: null,
      inPlace: false,
    });
  });
});

const order = fc.integer({ min: 1, max: 6 }).map((half) => 2 * half);
const cutoff = fc.double({ min: 5, max: 450, noNaN: true });
const signal = fc.array(fc.double({ min: -2000, max: 2000, noNaN: true }), { minLength: 40, maxLength: 300 });
const ends = fc.constantFrom("odd", "even", "constant", "none" as const);
const setting = fc.record({ order, cutoff, ends });
const distance = (a: Float64Array, b: Float64Array) =>
  Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number))));

describe("laws", () => {
  it("a constant comes out as the same constant", () =>
    fc.assert(
      fc.property(setting, fc.double({ min: 1e-9, max: 5000, noNaN: true }), (options, value) => {
        const filtered = lowPass(new Float64Array(60).fill(value), { sampleRate: 1000, ...options });
        for (const sample of filtered)
          expect(Math.abs(sample - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value));
      }),
    ));
  it("a constant passes a cutoff of a two-thousandth of the rate unchanged to 1e-12", () => {
    for (const sample of lowPass(new Float64Array(500).fill(700), { cutoff: 0.5, sampleRate: 1000 })) {
      expect(Math.abs(sample / 700 - 1)).toBeLessThan(1e-12);
    }
  });
  it("a straight line comes out as the same line with odd ends", () => {
    const line = Float64Array.from({ length: 200 }, (_, i) => 3 * i - 100);
    expect(distance(lowPass(line, { cutoff: 20, sampleRate: 1000, padLength: 190 }), line)).toBeLessThan(
      1e-3,
    );
  });
  it("linear: the filter of a sum is the sum of the filtered", () =>
    fc.assert(
      fc.property(setting, signal, fc.double({ min: -3, max: 3, noNaN: true }), (options, values, factor) => {
        const a = Float64Array.from(values);
        const b = a.map((_, i) => 500 * Math.sin(i / 7));
        const run = (x: Float64Array) => lowPass(x, { sampleRate: 1000, ...options });
        const [filteredA, filteredB] = [run(a), run(b)];
        const together = run(a.map((value, i) => value * factor + (b[i] as number)));
        expect(
          distance(
            together,
            filteredA.map((value, i) => value * factor + (filteredB[i] as number)),
          ),
        ).toBeLessThan(1e-6);
      }),
    ));
  it("channels filtered side by side are those filtered alone, within rounding", () =>
    fc.assert(
      fc.property(setting, signal, fc.integer({ min: 1, max: 7 }), (options, values, count) => {
        const channels = Array.from({ length: count }, (_, c) =>
          Float64Array.from(values, (value) => value * (c + 1)),
        );
        const filtered = lowPass(channels, { sampleRate: 1000, ...options });
        expect(filtered).toHaveLength(count);
        channels.forEach((channel, c) => {
          const alone = lowPass(channel, { sampleRate: 1000, ...options });
          expect(distance(filtered[c] as Float64Array, alone)).toBeLessThan(1e-8);
        });
      }),
    ));
  it("blocks of the run do not show: a long signal equals the same filter written out sample by sample", () => {
    const values = Float64Array.from({ length: 5000 }, (_, i) => 800 * Math.sin(i / 30) + ((i * 7919) % 101));
    const sections = lowPassSections(3, tangentOf(40, 1000));
    const wanted = plainBothWays(values, sections);
    const got = lowPass(values, {
      cutoff: 40,
      sampleRate: 1000,
      order: 6,
      cutoffMeaning: "each-pass",
      ends: "none",
    });
    expect(worst(got, [...wanted])).toBeLessThan(1e-13);
  });
});

/** Direct form I, one section after the other, written for clarity; starts from the steady state of the first sample. */
function plainBothWays(values: Float64Array, sections: ReturnType<typeof lowPassSections>): Float64Array {
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

  const refuse = (code: string, run: () => unknown, words: RegExp) => {
    expect(run).toThrow(expect.objectContaining({ code }));
    expect(run).toThrow(words);
  };
  it.each([0, -5, 500, 900])("refuses the cutoff %d Hz of 1000 Hz", (wrong) =>
    refuse(
      "out-of-range",
      () => lowPass(values, { cutoff: wrong, sampleRate: 1000 }),
      /above 0 and below 500/,
    ),
  );
  it.each([0, -1000])("refuses the rate %d Hz", (wrong) =>
    refuse(
      "out-of-range",
      () => lowPass(values, { cutoff: 50, sampleRate: wrong }),
      /sampleRate is .* above 0/,
    ),
  );
  it.each([1, 3, 5])("refuses the odd order %i with the reason", (wrong) =>
    refuse("out-of-range", () => lowPass(values, { ...options, order: wrong }), /twice that of one pass/),
  );
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
      /overflows/,
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
});
