import fc from "fast-check";
import { expect, it } from "vitest";
import { readCsv, writeCsv } from "../../src/io/index.js";
import type { Channel, Recording } from "../../src/recording/index.js";

import { footwear } from "./footwear.js";

const KINDS = {
  forward: ["force", "forward", "N"],
  up: ["force", "up", "N"],
  right: ["force", "right", "N"],
  cop_forward: ["centre-of-pressure", "forward", "m"],
  cop_right: ["centre-of-pressure", "right", "m"],
  free_moment: ["free-moment", "up", "N m"],
} as const;

/** Samples up to a size: what is no force is refused, what is kept as it is may be anything. −0 comes back as 0. */
const sampleUpTo = (max: number) =>
  fc
    .oneof(
      { weight: 8, arbitrary: fc.double({ min: -max, max, noNaN: true }) },
      { weight: 1, arbitrary: fc.constant(Number.NaN) },
      { weight: 1, arbitrary: fc.constantFrom(0, max, 5e-324, -max) },
    )
    .map((value) => value + 0);
const sample = sampleUpTo(100_000);
const anything = sampleUpTo(Number.MAX_VALUE);
const label = fc
  .string({ minLength: 1, maxLength: 12 })
  .filter((text) => text === text.trim() && !/[\r\n]/.test(text));
/** A number about the trial: −0 is written as 0 there, and means the same. */
const about = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const recordings: fc.Arbitrary<Recording> = fc
  .record({
    length: fc.integer({ min: 1, max: 30 }),
    names: fc.subarray(["forward", "right", "cop_forward", "cop_right", "free_moment"] as const),
    others: fc.uniqueArray(
      fc.tuple(
        label,
        label.filter((text) => !/[[\]()]/.test(text)),
      ),
      { selector: ([name]) => name, maxLength: 2 },
    ),
    sampleRate: about(0.5, 20_000),
    startTime: about(-10, 1000),
    mass: optional(about(1, 499)),
    height: optional(about(0.5, 2.9)),
    speed: optional(about(0, 12.9)),
    grade: optional(about(-1, 1)),
    surface: optional(fc.constantFrom("ground" as const, "belt" as const)),
    firstFoot: optional(fc.constantFrom("left" as const, "right" as const)),
    footwear: optional(footwear.filter((text) => !/[,;\s"']$/.test(text))),
  })
  .chain(({ length, names, others, sampleRate, startTime, mass, height, ...trial }) => {
    const series = (of: fc.Arbitrary<number>) =>
      fc.array(of, { minLength: length, maxLength: length }).map((values) => new Float64Array(values));
    const own = (["forward", "up", "right", "cop_forward", "cop_right", "free_moment"] as const).filter(
      (name) => name === "up" || names.includes(name),
    );
    return fc
      .tuple(...own.map(() => series(sample)), ...others.map(() => series(anything)))
      .map((samples) => ({
        sampleRate,
        startTime,
        channels: [
          ...own.map((name, k): Channel => {
            const [quantity, direction, unit] = KINDS[name];
            return { name, quantity, direction, unit, samples: samples[k] as Float64Array };
          }),
          ...others.map(
            ([name, unit], k): Channel => ({
              name,
              quantity: "other",
              direction: null,
              unit,
              samples: samples[own.length + k] as Float64Array,
            }),
          ),
        ],
        subject: { ...(mass !== undefined && { mass }), ...(height !== undefined && { height }) },
        ...Object.fromEntries(Object.entries(trial).filter(([, value]) => value !== undefined)),
        origin: { format: "csv", rows: length },
        cautions: [],
      }));
  });

it("property: what is written comes back equal, to the last bit", () =>
  fc.assert(
    fc.property(recordings, (recording) => {
      const { cautions, ...back } = readCsv(writeCsv(recording));
      const { cautions: _, ...given } = recording;
      // toStrictEqual tells 0 from −0.
      expect(back).toStrictEqual(given);
      const withGap = recording.channels.filter(
        ({ quantity, samples }) => quantity === "force" && samples.some(Number.isNaN),
      );
      expect(cautions.map(({ code }) => code)).toEqual(withGap.map(() => "gap"));
    }),
    { numRuns: 300, seed: 20 },
  ));

const plain = (channels: readonly Channel[]): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels,
  subject: { mass: 70 },
  surface: "belt",
  origin: { format: "csv" },
  cautions: [],
});
const up: Channel = {
  name: "Fz",
  quantity: "force",
  direction: "up",
  unit: "N",
  samples: new Float64Array([0, 12.5]),
};
const other = (name: string, unit: string): Channel => ({
  name,
  quantity: "other",
  direction: null,
  unit,
  samples: new Float64Array([1, Number.NaN]),
});

it("writes comments, a header with units and one row a sample, as the format says", () => {
  expect(writeCsv(plain([other("EMG, left", "mV"), up]))).toBe(
    '# sample rate: 1000 Hz\n# mass: 70 kg\n# surface: belt\ntime [s],up [N],"other:EMG, left [mV]"\n0,0,1\n0.001,12.5,\n',
  );
});

it("says a rate that its own times could not give back", () => {
  expect(readCsv(writeCsv({ ...plain([up]), sampleRate: 1000 / 3 })).sampleRate).toBe(1000 / 3);
});

it.each([
  ["", "V"],
  [" EMG", "V"],
  ["a\nb", "V"],
  ["EMG", "V]"],
  ["EMG", "(V)"],
  ["EMG (1)", ""],
])("refuses the channel %j in %j, which would come back as another", (name, unit) => {
  expect(() => writeCsv(plain([up, other(name, unit)]))).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});

it("refuses a recording that is none", () => {
  expect(() => writeCsv(plain([]))).toThrow(expect.objectContaining({ code: "missing-channel" }));
});

it("footwear that would not come back from a table is refused, not changed", () => {
  const recording = readCsv("# footwear: road shoe\ntime [s],up [N]\n0,1\n1,2");
  for (const text of ['spikes "M"', "road shoe,", "road shoe;"]) {
    expect(() => writeCsv({ ...recording, footwear: text })).toThrow(
      expect.objectContaining({ code: "out-of-range", argument: "footwear" }),
    );
  }
});
