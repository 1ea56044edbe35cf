import { describe, expect, it } from "vitest";
import { platformReaction, toGroundReaction } from "../../src/force/index.js";
import type { Platform } from "../../src/recording/index.js";
import { analyseTrial } from "../../src/trial/index.js";
import { codes } from "./checks.js";
import { at, place, recordingOf, step, withOffsets } from "./loads.js";
import { platformUnder } from "./statics.js";

/** Whose force the channels hold is told by load; each test of a turned plate names what was seen on 2026-11-25. */
const plateWith = (offset: number, forceOn: "platform" | "runner", length: number): Platform => {
  const clean = platformUnder(step(1000, 1125, place(0.1, 0.05), length), at(0, 0), { name: "1" });
  const sign = forceOn === "platform" ? 1 : -1;
  const signed = {
    ...clean,
    channels: clean.channels.map((channel) => ({
      ...channel,
      samples: channel.samples.map((value) => sign * value),
    })),
  };
  return withOffsets(signed, [0, 0, offset, 0, 0, 0]);
};
const rangeOf = (up: Float64Array) => [Math.min(...up), Math.max(...up)];

describe("an offset of up to a quarter of the load turns no plate (up to 2026-11-25: 120 N did, force −1500 to 0 N)", () => {
  const cases = (["platform", "runner"] as const).flatMap((forceOn) =>
    [-400, -300, -200, -120, -60, 60, 120, 200, 300, 400].map((offset) => [forceOn, offset] as const),
  );
  it.each(cases)("force on the %s, offset %d N", (forceOn, offset) => {
    for (const length of [2500, 10_000]) {
      const plate = plateWith(offset, forceOn, length);
      const ways = [
        toGroundReaction(recordingOf([plate])),
        toGroundReaction(recordingOf([{ ...plate, zero: { from: 0, to: 100 } }])),
        toGroundReaction(recordingOf([plate]), { zero: { from: 0, to: 0.5 } }),
      ];
      for (const ground of ways) {
        const [least, most] = rangeOf(ground.force.up) as [number, number];
        // Beyond a quarter of the load no flight is told in what is left above zero, which is said.
        const found = !codes(ground).includes("no-flight");
        expect(found || Math.abs(offset) === 400).toBe(true);
        expect(least).toBeCloseTo(found ? 0 : 400, 6);
        expect(most - least).toBeCloseTo(1500, 0);
        expect(ground.settings.plates?.[0]?.forceOn).toBe(forceOn);
        expect(codes(ground)).not.toContain("force-direction-unclear");
      }
      const unloaded = platformReaction(plate, { unloaded: { from: 0, to: 100 } });
      expect(rangeOf(unloaded.force.up)[1]).toBeCloseTo(1500, 0);
    }
  });
});

it("two plates, an offset on one: both steps are found (on 2026-11-25 one was dropped and the sum was −1500 N)", () => {
  const other = platformUnder(step(1180, 1305, place(0.8, -0.05), 10_000), at(0.7, 0), { name: "2" });
  const ground = toGroundReaction(recordingOf([plateWith(150, "runner", 10_000), other]));
  expect(analyseTrial(ground).contacts.length).toBe(2);
  expect(Math.min(...ground.force.up)).toBeCloseTo(0, 6);
});

it("an offset beyond half the load: by the longer stay", () => {
  for (const offset of [-850, 850]) {
    const ground = toGroundReaction(recordingOf([plateWith(offset, "platform", 2500)]), { offset: "none" });
    const [least, most] = rangeOf(ground.force.up) as [number, number];
    expect([least, most]).toEqual([expect.closeTo(offset, 6), expect.closeTo(offset + 1500, 0)]);
  }
});

describe("somebody stands for most of the recording", () => {
  /** The runner's force on the platform: 700 N, then nothing. */
  const standing = (share: number): Platform => {
    const clean = platformUnder(step(0, 0, place(0, 0)), at(0, 0), { name: "1" });
    const until = share * 1500;
    const channels = clean.channels.map((channel, k) => ({
      ...channel,
      samples: channel.samples.map((value, i) => (k === 2 && i < until ? value + 700 : value)),
    }));
    return { ...clean, channels };
  };
  it.each([0.5, 0.8, 1])("%f of it, on a platform that was zeroed without them", (share) => {
    const ground = toGroundReaction(recordingOf([standing(share)]), { offset: "none" });
    expect(rangeOf(ground.force.up)[1]).toBeCloseTo(700, 6);
  });
  it("and in the samples that the file names as unloaded", () => {
    const ground = toGroundReaction(recordingOf([{ ...standing(0.5), zero: { from: 0, to: 100 } }]));
    expect(rangeOf(ground.force.up)[1]).toBeCloseTo(700, 6);
    expect(codes(ground)).toContain("zero-loaded");
  });
});

it("neither zero nor time tells: the larger sum is taken, and it is said", () => {
  const clean = platformUnder(step(0, 0, place(0, 0)), at(0, 0), { name: "1" });
  const channels = clean.channels.map((channel, k) => ({
    ...channel,
    samples: channel.samples.map((value, i) => (k === 2 ? 400 * Math.sin(i / 20) + 20 : value)),
  }));
  const ground = toGroundReaction(recordingOf([{ ...clean, channels }]), { offset: "none", drift: "never" });
  expect(codes(ground)).toEqual(expect.arrayContaining(["force-direction-unclear", "force-negated"]));
});

it("single spikes are no end of the range", () => {
  const plate = plateWith(0, "runner", 2500);
  (plate.channels[2] as { samples: Float64Array }).samples[77] = -60_000;
  (plate.channels[2] as { samples: Float64Array }).samples[1900] = 60_000;
  expect(toGroundReaction(recordingOf([plate])).settings.plates?.[0]?.forceOn).toBe("runner");
});

describe("a sign that is stated and wrong is refused before an offset is taken off", () => {
  const refused = expect.objectContaining({
    code: "unknown-axes",
    message: expect.stringMatching(
      /force platform "1" points down .* forceOn "platform" is stated for its channels: state forceOn "runner"/,
    ),
  });
  const plate = plateWith(0, "runner", 2500);
  it("without an unloaded stretch (on 2026-11-25 it was said that the force reaches 3.6 N)", () =>
    expect(() => toGroundReaction(recordingOf([plate]), { forceOn: "platform" })).toThrow(refused));
  it.each(["auto", "none"] as const)(
    "where the file names unloaded samples, offset %s (on 2026-11-25 the load was taken off: never below 790 N)",
    (offset) => {
      const named = recordingOf([{ ...plate, zero: { from: 0, to: 100 } }]);
      expect(() => toGroundReaction(named, { forceOn: "platform", offset })).toThrow(refused);
    },
  );
  it.each([-1000, -850, 850, 1000])("and taken where it is right, under an offset of %d N", (offset) => {
    const recording = recordingOf([plateWith(offset, "runner", 10_000)]);
    const ground = toGroundReaction(recording, { forceOn: "runner", zero: { from: 0, to: 0.5 } });
    expect(rangeOf(ground.force.up)).toEqual([expect.closeTo(0, 6), expect.closeTo(1500, 0)]);
  });
});
