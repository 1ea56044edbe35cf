import fc from "fast-check";
import { expect, it } from "vitest";
import { readCsv, WRITE_CSV_DEFAULTS, writeCsv } from "../../../src/io/index.js";
import type { Channel, Marker, Platform, Recording } from "../../../src/recording/index.js";
import { refusal } from "./fixtures.js";

const channel = (
  plate: string | undefined,
  samples: Float64Array,
  quantity: Channel["quantity"] = "force",
): Channel => {
  const name = quantity === "force" ? "up" : "cop_right";
  return {
    name: plate === undefined ? name : `${name}@${plate}`,
    quantity,
    direction: quantity === "force" ? "up" : "right",
    unit: quantity === "force" ? "N" : "m",
    samples,
    ...(plate !== undefined && { plate }),
  };
};
const recordingOf = (channels: readonly Channel[], rest: Partial<Recording> = {}): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels,
  subject: {},
  origin: { format: "csv", rows: channels[0]?.samples.length ?? rest.markers?.markers[0]?.up.length ?? 0 },
  cautions: [],
  ...rest,
});

const label = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 10 })
  .filter((text) => text === text.trim() && text !== "" && !/[\r\n\0\ud800-\udfff]/.test(text));
/** −0 comes back as 0. */
const number = fc.double({ min: -100_000, max: 100_000, noNaN: true }).map((value) => value + 0);
const series = (length: number) =>
  fc.array(fc.oneof({ weight: 9, arbitrary: number }, { weight: 1, arbitrary: fc.constant(Number.NaN) }), {
    minLength: length,
    maxLength: length,
  });

const withPlates = fc
  .record({
    length: fc.integer({ min: 1, max: 20 }),
    plates: fc.uniqueArray(label, { minLength: 1, maxLength: 4 }),
    others: fc.uniqueArray(fc.tuple(label, label), {
      maxLength: 3,
      selector: ([name, plate]) => `${plate}:${name}`,
    }),
    names: fc.uniqueArray(label, { maxLength: 3 }),
    sampleRate: fc.double({ min: 0.5, max: 5000, noNaN: true }),
  })
  .chain(({ length, plates, others, names, sampleRate }) => {
    const own = plates.length * 2;
    const kept = others.filter(([name, plate]) => !plate.includes(":") && !/[\])]$/.test(name));
    return fc
      .tuple(
        fc.array(series(length), { minLength: own + kept.length, maxLength: own + kept.length }),
        fc.array(fc.tuple(series(length), series(length), series(length)), {
          minLength: names.length,
          maxLength: names.length,
        }),
      )
      .map(([columns, ways]): Recording => {
        const samples = columns.map((column) => new Float64Array(column));
        const channels = [
          ...plates.flatMap((plate, k) => [
            channel(plate, samples[2 * k] as Float64Array),
            channel(plate, samples[2 * k + 1] as Float64Array, "centre-of-pressure"),
          ]),
          ...kept.map(
            ([name, plate], k): Channel => ({
              name,
              quantity: "other",
              direction: null,
              unit: "",
              samples: samples[own + k] as Float64Array,
              plate,
            }),
          ),
        ];
        const markers = ways.map((way, k): Marker => {
          const unseen = way[0].map((_, i) => way.some((one) => Number.isNaN(one[i])));
          const [forward, up, right] = way.map(
            (one) => new Float64Array(one.map((value, i) => (unseen[i] ? Number.NaN : value))),
          ) as [Float64Array, Float64Array, Float64Array];
          return { name: names[k] as string, forward, up, right };
        });
        const set = markers.length > 0 ? { markers: { sampleRate, startTime: 0, markers } } : {};
        return recordingOf(channels, { sampleRate, ...set });
      });
  });

it("property: plates, channels of plates and markers come back equal, to the last bit", () =>
  fc.assert(
    fc.property(withPlates, (recording) => {
      const { cautions: _, ...back } = readCsv(writeCsv(recording));
      const { cautions: _none, ...given } = recording;
      expect(back).toStrictEqual(given);
    }),
    { numRuns: 200, seed: 20 },
  ));

const way = (...values: number[]) => new Float64Array(values);
const marker: Marker = { name: "heel", forward: way(1, 2), up: way(3, 4), right: way(5, 6) };

it("writes plates behind an @ and markers by direction", () => {
  const text = writeCsv(
    recordingOf([channel("right", way(7, 8)), channel(undefined, way(1, 2)), channel("left", way(9, 10))], {
      markers: { sampleRate: 1000, startTime: 0, markers: [marker] },
    }),
  );
  expect(text.split("\n").slice(1, 3)).toEqual([
    "time [s],up [N],up@right [N],up@left [N],marker:heel:forward [m],marker:heel:up [m],marker:heel:right [m]",
    "0,1,7,9,1,3,5",
  ]);
});

it("markers without channels are written at their own rate", () => {
  const recording = recordingOf([], { markers: { sampleRate: 50, startTime: 2, markers: [marker] } });
  const back = readCsv(writeCsv(recording));
  expect(back).toMatchObject({ sampleRate: 50, startTime: 2, channels: [] });
  expect(back.markers).toStrictEqual(recording.markers);
});

it("a marker of two directions comes back as one", () => {
  const flat = { ...marker, right: way(Number.NaN, Number.NaN) };
  const text = writeCsv(recordingOf([], { markers: { sampleRate: 1000, startTime: 0, markers: [flat] } }));
  expect(text).not.toContain(":right");
  expect(readCsv(text).markers?.markers).toStrictEqual([flat]);
});

const origin = { forward: 0, up: 0, right: 0 };
const platform: Platform = {
  name: "1",
  type: 2,
  channels: ["Fx", "Fy", "Fz", "Mx", "My", "Mz"].map((name, k) => ({
    name,
    unit: k < 3 ? "N" : "N m",
    samples: way(1, 2),
  })),
  corners: [
    { ...origin, forward: 1, right: 1 },
    { ...origin, forward: -1, right: 1 },
    { ...origin, forward: -1, right: -1 },
    { ...origin, forward: 1, right: -1 },
  ],
  origin: [0, 0, -0.04],
};
const up = channel(undefined, way(1, 2));

it.each<[string, Partial<Recording>]>([
  ["platforms", { platforms: [platform] }],
  ["events", { events: [{ label: "contact", time: 0.1 }] }],
  ["markers", { markers: { sampleRate: 500, startTime: 0, markers: [marker] } }],
  ["markers", { markers: { sampleRate: 1000, startTime: 0.5, markers: [marker] } }],
  [
    "markers",
    {
      markers: {
        sampleRate: 1000,
        startTime: 0,
        markers: [{ ...marker, forward: way(1), up: way(1), right: way(1) }],
      },
    },
  ],
])("refuses to lose %s unseen, and writes without them where that is said", (part, rest) => {
  const recording = recordingOf([up], rest);
  const error = refusal(() => writeCsv(recording));
  expect(error).toMatchObject({ code: "missing-value", argument: "leaveOut", values: { part } });
  expect(error.message).toContain(`leaveOut: ["${part}"]`);
  const plain = writeCsv(recordingOf([up]));
  expect(writeCsv(recording, { leaveOut: [part as "markers"] })).toBe(plain);
});

it("leaves nothing out by default, and knows no other words", () => {
  expect(WRITE_CSV_DEFAULTS).toEqual({ leaveOut: [] });
  const words = { leaveOut: ["cautions"] } as unknown as { leaveOut: ["markers"] };
  expect(refusal(() => writeCsv(recordingOf([up]), words))).toMatchObject({
    code: "out-of-range",
    argument: "leaveOut",
  });
  expect(refusal(() => writeCsv(recordingOf([up]), { leaveOut: "events" } as never)).code).toBe("wrong-type");
  expect(
    refusal(() => writeCsv(recordingOf([], { platforms: [platform] }), { leaveOut: ["platforms"] })).code,
  ).toBe("missing-channel");
});

it.each([
  ["a plate with a blank at its end", recordingOf([channel("a ", way(1))])],
  ["a plate of two lines", recordingOf([channel("a\nb", way(1))])],
  ["a plate without a name", recordingOf([channel("", way(1))])],
  [
    "another channel on a plate with a colon",
    recordingOf([{ name: "a", quantity: "other", direction: null, unit: "", plate: "b:c", samples: way(1) }]),
  ],
  [
    "a marker with a line end",
    recordingOf([], { markers: { sampleRate: 1000, startTime: 0, markers: [{ ...marker, name: "a\nb" }] } }),
  ],
])("refuses %s, which would not come back", (_, recording) => {
  expect(refusal(() => writeCsv(recording)).code).toBe("out-of-range");
});
