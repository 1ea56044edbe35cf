import { expect, it } from "vitest";
import {
  type Channel,
  channelOf,
  checkRecording,
  PLAUSIBLE_BOUNDS,
  type Recording,
} from "../../src/recording/index.js";

const channel = (change: Partial<Record<keyof Channel, unknown>> = {}): Channel =>
  ({
    name: "Fz",
    quantity: "force",
    direction: "up",
    unit: "N",
    samples: new Float64Array([0, Number.NaN, 2]),
    ...change,
  }) as Channel;
const recording = (change: Partial<Record<keyof Recording, unknown>> = {}): Recording =>
  ({
    sampleRate: 1000,
    startTime: 0,
    channels: [channel()],
    subject: {},
    origin: { format: "by hand" },
    cautions: [],
    ...change,
  }) as Recording;
const forward = channel({ name: "Fx", direction: "forward" });
const copRight = channel({ name: "COPx", quantity: "centre-of-pressure", direction: "right", unit: "m" });
const freeMoment = channel({ name: "Tz", quantity: "free-moment", unit: "N m" });
const other = channel({ name: "EMG", quantity: "other", direction: null, unit: "mV" });

it("gives back the recording it was given, gaps and all", () => {
  const whole = recording({
    channels: [channel(), forward, copRight, freeMoment, other],
    subject: { mass: 70, height: 1.78 },
    speed: 3.3,
    surface: "belt",
    grade: -0.1,
    firstFoot: "left",
    footwear: "road shoe, 250 g",
  });
  expect(checkRecording(whole)).toBe(whole);
});

it.each<[string, string, Partial<Record<keyof Recording, unknown>>]>([
  ["wrong-type", "sampleRate", { sampleRate: "1000" }],
  ["out-of-range", "sampleRate", { sampleRate: 0 }],
  ["out-of-range", "sampleRate", { sampleRate: -1 }],
  ["not-finite", "sampleRate", { sampleRate: Number.NaN }],
  ["not-finite", "startTime", { startTime: Number.POSITIVE_INFINITY }],
  ["wrong-type", "startTime", { startTime: undefined }],
  ["wrong-type", "subject", { subject: undefined }],
  ["out-of-range", "mass", { subject: { mass: 0 } }],
  ["out-of-range", "mass", { subject: { mass: -70 } }],
  ["out-of-range", "mass", { subject: { mass: 686 } }],
  ["not-finite", "mass", { subject: { mass: Number.NaN } }],
  ["out-of-range", "height", { subject: { height: 178 } }],
  ["out-of-range", "speed", { speed: -3 }],
  ["out-of-range", "speed", { speed: 13 }],
  ["out-of-range", "grade", { grade: 5 }],
  ["out-of-range", "surface", { surface: "track" }],
  ["out-of-range", "firstFoot", { firstFoot: "unknown" }],
  ["wrong-type", "footwear", { footwear: 42 }],
  ["out-of-range", "footwear", { footwear: "road\nshoe" }],
  ["wrong-type", "cautions", { cautions: undefined }],
  ["wrong-type", "origin", { origin: {} }],
  ["wrong-type", "channels", { channels: {} }],
  ["missing-channel", "channels", { channels: [] }],
  ["wrong-type", "channels[0]", { channels: [null] }],
  ["wrong-type", "channels[0].name", { channels: [channel({ name: 5 })] }],
  ["out-of-range", "channels[0].quantity", { channels: [channel({ quantity: "power" })] }],
  ["out-of-range", "channels[0].direction", { channels: [channel({ direction: "down" })] }],
  ["out-of-range", "channels[0].direction", { channels: [channel({ direction: null })] }],
  ["out-of-range", "channels[1].direction", { channels: [channel(), { ...copRight, direction: "up" }] }],
  ["out-of-range", "channels[1].direction", { channels: [channel(), { ...freeMoment, direction: "right" }] }],
  ["out-of-range", "channels[1].direction", { channels: [channel(), { ...other, direction: "up" }] }],
  ["wrong-type", "channels[0].unit", { channels: [channel({ unit: undefined })] }],
  ["unit-mismatch", "channels[0].unit", { channels: [channel({ unit: "kN" })] }],
  ["unit-mismatch", "channels[1].unit", { channels: [channel(), { ...copRight, unit: "mm" }] }],
  ["wrong-type", "channels[0].samples", { channels: [channel({ samples: [1, 2] })] }],
  [
    "not-finite",
    "channels[0].samples",
    { channels: [channel({ samples: new Float64Array([0, Number.NEGATIVE_INFINITY]) })] },
  ],
])("refuses, as %s, a bad %s: %o", (code, argument, change) => {
  expect(() => checkRecording(recording(change))).toThrow(expect.objectContaining({ code, argument }));
});

it.each<[string, readonly Channel[]]>([
  ["too-short", [channel({ samples: new Float64Array(0) })]],
  ["unequal-lengths", [channel(), { ...forward, samples: new Float64Array(2) }]],
  ["conflict", [channel(), forward, channel({ name: "Fz2" })]],
  ["conflict", [channel(), other, { ...other, unit: "V" }]],
])("refuses channels together as %s", (code, channels) => {
  expect(() => checkRecording(recording({ channels }))).toThrow(expect.objectContaining({ code }));
});

it("refuses what is no object", () => {
  expect(() => checkRecording(null as unknown as Recording)).toThrow(
    expect.objectContaining({ code: "wrong-type" }),
  );
});

it("says what an implausible number may have been meant as", () => {
  expect(() => checkRecording(recording({ subject: { mass: 686 } }))).toThrow(/686 kg.*newtons/);
  expect(() => checkRecording(recording({ speed: 14 }))).toThrow(/14 m\/s.*km\/h/);
  expect(() => checkRecording(recording({ subject: { height: 178 } }))).toThrow(/centimetres/);
  expect(() => checkRecording(recording({ grade: 5 }))).toThrow(/0\.05/);
});

it("lets pass the runners there are: 12.4 m/s is the fastest stretch of a world-record 100 m (from memory)", () => {
  expect(PLAUSIBLE_BOUNDS.speed.below).toBeGreaterThan(12.4);
  const fastest = recording({ speed: 12.4, subject: { mass: 150, height: 2.2 } });
  expect(checkRecording(fastest)).toBe(fastest);
});

it("channelOf finds a channel by quantity and direction, and nothing where there is none", () => {
  const whole = recording({ channels: [other, forward, channel(), copRight, freeMoment] });
  expect(channelOf(whole, "force", "forward")).toBe(forward);
  expect(channelOf(whole, "centre-of-pressure", "right")).toBe(copRight);
  expect(channelOf(whole, "free-moment", "up")).toBe(freeMoment);
  expect(channelOf(whole, "force", "right")).toBeUndefined();
});
