import { expect, it } from "vitest";
import { checkRecording, type Platform, type Recording } from "../../src/recording/index.js";

const corner = (forward: number, right: number, up = 0) => ({ forward, up, right });
const channels = (units: readonly string[], length = 4) =>
  units.map((unit, k) => ({ name: `c${k}`, unit, samples: new Float64Array(length) }));
const SIX = ["N", "N", "N", "N m", "N m", "N m"];
const identity = Array.from({ length: 6 }, (_, i) => Array.from({ length: 6 }, (__, j) => (i === j ? 1 : 0)));
const platform = (change: Partial<Record<keyof Platform, unknown>> = {}): Platform =>
  ({
    name: "Plate 1",
    type: 2,
    channels: channels(SIX),
    corners: [corner(0.3, 0.2), corner(-0.3, 0.2), corner(-0.3, -0.2), corner(0.3, -0.2)],
    origin: [0, 0, -0.04],
    ...change,
  }) as Platform;
const recording = (change: Partial<Record<keyof Recording, unknown>> = {}): Recording =>
  ({
    sampleRate: 1000,
    startTime: 0,
    channels: [],
    subject: {},
    origin: { format: "by hand" },
    cautions: [],
    ...change,
  }) as Recording;
const marker = (change = {}) => ({
  name: "heel",
  forward: new Float64Array([0, Number.NaN]),
  up: new Float64Array(2),
  right: new Float64Array(2),
  ...change,
});
const markers = (change = {}) => ({ sampleRate: 100, startTime: 0, markers: [marker()], ...change });

it.each([
  ["a platform of type 1", [platform({ type: 1, channels: channels(["N", "N", "N", "m", "m", "N m"]) })]],
  [
    "a platform of type 2, unloaded samples and side named",
    [platform({ zero: { from: 0, to: 4 }, side: "left" })],
  ],
  [
    "a platform of type 3",
    [platform({ type: 3, channels: channels(Array(8).fill("N")), origin: [0, 0, 0] })],
  ],
  [
    "a platform of type 4",
    [platform({ type: 4, channels: channels(Array(6).fill("V")), calibration: identity })],
  ],
  [
    "a gap in a platform's channel",
    [
      platform({
        channels: channels(SIX).map((c) => ({ ...c, samples: new Float64Array(4).fill(Number.NaN) })),
      }),
    ],
  ],
  [
    "a belt of 3 m, tilted",
    [
      platform({
        corners: [corner(1.5, 0.4, 0.2), corner(-1.5, 0.4), corner(-1.5, -0.4), corner(1.5, -0.4, 0.2)],
      }),
    ],
  ],
])("no channels are needed beside %s", (_, platforms) => {
  const whole = recording({ platforms });
  expect(checkRecording(whole)).toBe(whole);
});

it("no channels are needed beside markers, whose gaps and events pass", () => {
  const whole = recording({
    markers: markers(),
    events: [
      { label: "Foot Strike", time: 1.5, side: "right" },
      { label: "", time: 0 },
    ],
  });
  expect(checkRecording(whole)).toBe(whole);
});

it("a quantity and direction may occur once on each plate", () => {
  const up = (name: string, plate?: string) => ({
    name,
    quantity: "force",
    direction: "up",
    unit: "N",
    samples: new Float64Array(3),
    ...(plate !== undefined && { plate }),
  });
  const whole = recording({ channels: [up("a", "left"), up("b", "right")] });
  expect(checkRecording(whole)).toBe(whole);
  expect(() => checkRecording(recording({ channels: [up("a", "left"), up("b", "left")] }))).toThrow(
    /plate "left" holds each once/,
  );
  expect(() => checkRecording(recording({ channels: [{ ...up("a"), plate: 1 }] }))).toThrow(
    expect.objectContaining({ code: "wrong-type", argument: "channels[0].plate" }),
  );
});

it.each<[string, string | undefined, Partial<Record<keyof Platform, unknown>>]>([
  ["out-of-range", "platforms[0].type", { type: 5 }],
  ["out-of-range", "platforms[0].type", { type: "2x" }],
  ["wrong-type", "platforms[0].name", { name: 1 }],
  ["out-of-range", "platforms[0].side", { side: "both" }],
  ["wrong-type", "platforms[0].channels", { channels: {} }],
  ["missing-channel", "platforms[0].channels", { channels: channels(SIX.slice(1)) }],
  ["missing-channel", "platforms[0].channels", { type: 3 }],
  ["wrong-type", "platforms[0].channels[0]", { channels: [null, ...channels(SIX.slice(1))] }],
  [
    "unit-mismatch",
    "platforms[0].channels[3].unit",
    { channels: channels(["N", "N", "N", "N mm", "N m", "N m"]) },
  ],
  ["unit-mismatch", "platforms[0].channels[0].unit", { type: 4, calibration: identity }],
  [
    "wrong-type",
    "platforms[0].channels[0].samples",
    { channels: channels(SIX).map((c) => ({ ...c, samples: [1] })) },
  ],
  [
    "not-finite",
    "platforms[0].channels[0].samples",
    { channels: channels(SIX).map((c) => ({ ...c, samples: new Float64Array([1 / 0]) })) },
  ],
  ["wrong-type", "platforms[0].corners", { corners: [corner(0, 0)] }],
  [
    "wrong-type",
    "platforms[0].corners[1]",
    { corners: [corner(0.3, 0.2), null, corner(-0.3, -0.2), corner(0.3, -0.2)] },
  ],
  [
    "not-finite",
    "platforms[0].corners[0].up",
    { corners: [corner(0.3, 0.2, Number.NaN), corner(-0.3, 0.2), corner(-0.3, -0.2), corner(0.3, -0.2)] },
  ],
  ["out-of-range", "platforms[0].corners", { corners: Array(4).fill(corner(0, 0)) }],
  [
    "out-of-range",
    "platforms[0].corners",
    { corners: [corner(300, 200), corner(-300, 200), corner(-300, -200), corner(300, -200)] },
  ],
  [
    "out-of-range",
    "platforms[0].corners",
    { corners: [corner(0.3, 0.3), corner(-0.3, -0.3), corner(-0.31, -0.3), corner(0.3, 0.31)] },
  ],
  ["wrong-type", "platforms[0].origin", { origin: [0, 0] }],
  ["not-finite", "platforms[0].origin[2]", { origin: [0, 0, Number.NaN] }],
  ["out-of-range", "platforms[0].origin[2]", { origin: [0, 0, -41.2] }],
  ["missing-value", "platforms[0].calibration", { type: 4, channels: channels(Array(6).fill("V")) }],
  [
    "wrong-type",
    "platforms[0].calibration",
    { type: 4, channels: channels(Array(6).fill("V")), calibration: [[1]] },
  ],
  [
    "wrong-type",
    "platforms[0].calibration[5]",
    { type: 4, channels: channels(Array(6).fill("V")), calibration: [...identity.slice(1), [1]] },
  ],
  [
    "not-finite",
    "platforms[0].calibration[5][0]",
    {
      type: 4,
      channels: channels(Array(6).fill("V")),
      calibration: [...identity.slice(1), Array(6).fill(Number.NaN)],
    },
  ],
  ["out-of-range", "platforms[0].zero", { zero: { from: 0, to: 5 } }],
  ["out-of-range", "platforms[0].zero", { zero: { from: 2, to: 2 } }],
  ["out-of-range", "platforms[0].zero", { zero: { from: 0.5, to: 3 } }],
  ["wrong-type", "platforms[0].zero", { zero: null }],
  ["unequal-lengths", undefined, { channels: [...channels(SIX.slice(0, 5), 4), ...channels(["N m"], 5)] }],
  ["too-short", undefined, { channels: channels(SIX, 0) }],
])("refuses, as %s, a bad %s: %o", (code, argument, change) => {
  expect(() => checkRecording(recording({ platforms: [platform(change)] }))).toThrow(
    expect.objectContaining({ code, ...(argument && { argument }) }),
  );
});

it("says of a type beyond 4 why, and of millimetres what they may be", () => {
  const refusing = (change: object) => () => checkRecording(recording({ platforms: [platform(change)] }));
  expect(refusing({ type: 7 })).toThrow(/"Plate 1" is of type 7; types 1, 2, 3 and 4 are known/);
  expect(refusing({ origin: [0, 0, -41.2] })).toThrow(/millimetres/);
});

it.each([
  ["two platforms of one name", "conflict", { platforms: [platform(), platform()] }],
  ["platforms that are no list", "wrong-type", { platforms: platform() }],
  ["a platform that is none", "wrong-type", { platforms: [null] }],
  [
    "channels and platforms of different length",
    "unequal-lengths",
    {
      platforms: [platform()],
      channels: [{ name: "x", quantity: "other", direction: null, unit: "V", samples: new Float64Array(5) }],
    },
  ],
  ["markers at no rate", "out-of-range", { markers: markers({ sampleRate: 0 }) }],
  ["markers that are no list", "wrong-type", { markers: markers({ markers: {} }) }],
  ["a marker without a name", "wrong-type", { markers: markers({ markers: [marker({ name: 4 })] }) }],
  [
    "markers of different length",
    "unequal-lengths",
    { markers: markers({ markers: [marker(), marker({ up: new Float64Array(3) })] }) },
  ],
  [
    "an infinite marker",
    "not-finite",
    { markers: markers({ markers: [marker({ up: new Float64Array([1 / 0, 0]) })] }) },
  ],
  ["events that are no list", "wrong-type", { markers: markers(), events: {} }],
  ["an event without a label", "wrong-type", { markers: markers(), events: [{ time: 1 }] }],
  [
    "an event without a time",
    "not-finite",
    { markers: markers(), events: [{ label: "RHS", time: Number.NaN }] },
  ],
  [
    "an event on no known side",
    "out-of-range",
    { markers: markers(), events: [{ label: "RHS", time: 1, side: "unknown" }] },
  ],
])("refuses %s", (_, code, change) => {
  expect(() => checkRecording(recording(change))).toThrow(expect.objectContaining({ code }));
});
