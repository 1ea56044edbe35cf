import { describe, expect, it } from "vitest";
import { type ToGroundReactionOptions, toGroundReaction } from "../../src/force/index.js";
import type { Recording } from "../../src/recording/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { codes } from "./checks.js";

/**
 * Seen on 2026-11-25 on the open recording of a type-3 plate (600 Hz, 8 s): its force falls to 0 N at the start and rests at
 * 28 N at the end, which was taken for a flight and taken off, so that 11 % of the samples lay below zero and the peak of
 * 284.5 N read 256.5. This is its outline, in newtons every 0.25 s.
 */
const OUTLINE = [0, 45, 30, 14, 45, 110, 284.5, 240, 205, 210, 200, 165, 130, 145, 120, 135, 160, 137];
const rate = 600;
const points = [...OUTLINE, ...Array<number>(4).fill(137), 175, 28, 28, 28, 28];
const up = Float64Array.from({ length: (points.length - 1) * 150 + 1 }, (_, i) => {
  const k = Math.min(points.length - 2, Math.floor(i / 150));
  const [a, b] = [points[k] as number, points[k + 1] as number];
  return a + ((b - a) * (i - 150 * k)) / 150;
});
const recording: Recording = {
  sampleRate: rate,
  startTime: 0,
  channels: [{ name: "Fz", quantity: "force", direction: "up", unit: "N", samples: up }],
  subject: {},
  origin: { format: "test" },
  cautions: [],
};
const groundWith = (options: ToGroundReactionOptions = {}) => toGroundReaction(recording, options);

describe("an offset from flights that a plate goes below when it is free (on 2026-11-25 28 N were taken off, unsaid)", () => {
  it("is not taken off, and that is said", () => {
    const ground = groundWith();
    expect(codes(ground)).toEqual(["offset-not-free"]);
    expect(Array.from(ground.force.up)).toEqual(Array.from(up));
    expect(ground.settings.offset).toBeUndefined();
    expect(ground.settings.flights).toBe(0);
    const { values } = ground.cautions[0] as (typeof ground.cautions)[number];
    expect(values?.level).toBeCloseTo(28, 6);
    expect(values?.lowest).toBeCloseTo(-28, 6);
  });
  it("is taken off where it is asked for, and said", () => {
    const ground = groundWith({ offset: "flights" });
    expect(codes(ground)).toEqual(["offset-not-free"]);
    expect(ground.settings.offset?.up).toBeCloseTo(28, 6);
  });
  it("a stretch that is stated is taken, and drift is not", () => {
    const ground = groundWith({ zero: { from: 0, to: 0.001 }, drift: "never" });
    expect(codes(ground)).toEqual([]);
    expect(Math.max(...ground.force.up)).toBeCloseTo(284.5, 0);
  });
});

describe("what is no such offset", () => {
  const run = (options: Parameters<typeof syntheticRun>[0]) =>
    toGroundReaction(syntheticRun(options).recording);
  it.each([0, 3, 30])("a run with drift and %d N of noise", (force) =>
    expect(codes(run({ contacts: 40, noise: { force }, drift: { up: 60 } }))).not.toContain(
      "offset-not-free",
    ),
  );
  it("a platform that rings for 20 ms after each toe-off", () => {
    const { recording: clean, truth } = syntheticRun({ contacts: 40, offset: { up: 15 } });
    const ends = truth.contacts.map(({ toeOff }) => Math.round(1000 * toeOff));
    const channels = clean.channels.map((channel) => {
      if (channel.quantity !== "force" || channel.direction !== "up") return channel;
      const samples = channel.samples.slice();
      for (const end of ends) {
        for (let i = 0; i < 20; i++) {
          const ring = 25 * Math.sin((2 * Math.PI * i) / 8) * Math.exp(-i / 5);
          samples[end + i] = (samples[end + i] ?? 0) + ring;
        }
      }
      return { ...channel, samples };
    });
    const ground = toGroundReaction({ ...clean, channels });
    expect(codes(ground)).toEqual([]);
    expect(ground.settings.offset?.up).toBeCloseTo(15, 0);
  });
});
