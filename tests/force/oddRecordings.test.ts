import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Recording } from "../../src/recording/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";

/** Synthetic truth in recordings that are not as one would wish; each test names what went wrong once, on 2026-11-25. */
const recordingOf = (options: SyntheticRunOptions) => syntheticRun(options).recording;
const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);
const upOnly = (samples: ArrayLike<number>): Recording => ({
  sampleRate: 1000,
  startTime: 0,
  channels: [
    { name: "up", quantity: "force", direction: "up", unit: "N", samples: Float64Array.from(samples) },
  ],
  subject: {},
  origin: { format: "test" },
  cautions: [],
});
const withUp = (recording: Recording, change: (value: number, i: number) => number): Recording => ({
  ...recording,
  channels: recording.channels.map((channel) =>
    channel.quantity === "force" && channel.direction === "up"
      ? { ...channel, samples: channel.samples.map(change) }
      : channel,
  ),
});

describe("standing is no flight, however high the landing (350 N were taken off as offset)", () => {
  // Stand 3 s at 700 N, push off, 0.4 s in the air, land at 3200 N, stand.
  const random = seededRandom(3);
  const up = Array.from({ length: 9000 }, (_, i) => {
    const push = i < 3000 ? 700 : i < 3400 ? 700 + 800 * Math.sin((Math.PI * (i - 3000)) / 400) : 0;
    const landing = i < 3800 ? 0 : i < 4000 ? 3200 * Math.sin((Math.PI * (i - 3800)) / 200) : 700;
    return (i < 3400 ? push : landing) + random.normal();
  });
  it("the flight alone is the zero", () => {
    const { settings } = toGroundReaction(upOnly(up));
    expect(settings.flights).toBe(1);
    expect(Math.abs(settings.offset?.up ?? Number.NaN)).toBeLessThan(0.5);
  });
});

it("a platform that was zeroed with the runner on it is brought back (nothing was taken off)", () => {
  const recording = withUp(recordingOf({ contacts: 24 }), (value) => value - 480);
  const { settings, force } = toGroundReaction(recording);
  expect(settings.offset?.up).toBeCloseTo(-480, 6);
  expect(force.up[0]).toBeCloseTo(0, 6);
});

describe("noise is no drift", () => {
  it.each([10, 30])(
    "%d N of white noise at 1 kHz (was taken off as drift, and made net impulses three times as scattered)",
    (force) => {
      const ground = toGroundReaction(recordingOf({ contacts: 80, noise: { force } }));
      expect(ground.settings.driftRemoved).toBe(false);
      expect(codes(ground)).not.toContain("drift");
    },
  );
  it("a drift of twice as much as the noise explains is found in it", () => {
    const ground = toGroundReaction(recordingOf({ contacts: 80, noise: { force: 10 }, drift: { up: 20 } }));
    expect(ground.settings.driftRemoved).toBe(true);
  });
  it("one odd flight, even the first, is no drift", () => {
    const ground = toGroundReaction(
      withUp(recordingOf({ contacts: 40 }), (value, i) => value + (i < 120 ? 30 : 0)),
    );
    expect(ground.settings.driftRemoved).toBe(false);
  });
});

it("offset none keeps the offset and takes off the drift alone (80 N of offset went with it)", () => {
  const recording = recordingOf({ contacts: 40, offset: { up: 80 }, drift: { up: 30 } });
  const { settings, force } = toGroundReaction(recording, { offset: "none" });
  expect(settings.driftRemoved).toBe(true);
  expect(settings.offset).toBeUndefined();
  // 80 N and the mean of the drift over the flights, about half of it.
  expect(force.up[50]).toBeGreaterThan(93);
  expect(force.up[50]).toBeLessThan(97);
});

it("two flights show a drift (was left in unsaid)", () => {
  const ground = toGroundReaction(
    recordingOf({ contacts: 2, firstContact: 0.3, drift: { up: 60 }, tail: 0.3 }),
  );
  expect(codes(ground)).toContain("drift-removed");
});

describe("saturation", () => {
  it("is said of any channel, also under drift that is taken off", () => {
    const recording = recordingOf({ contacts: 24, drift: { up: 60 } });
    const ground = toGroundReaction(withUp(recording, (value) => Math.min(value, 1500)));
    expect(codes(ground)).toEqual(["saturated", "drift-removed"]);
    expect(ground.cautions[0]?.where).toBe("up");
  });
  it("is not said of a clean recording, nor of coarse samples of a fast one", () => {
    expect(codes(toGroundReaction(recordingOf({ contacts: 24 })))).toEqual([]);
    const fine = recordingOf({ contacts: 6, sampleRate: 10_000, variability: { contactTime: 0.01 } });
    expect(codes(toGroundReaction(withUp(fine, Math.round)))).toEqual([]);
  });
});
