import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Channel, Platform, Position } from "../../src/recording/index.js";
import { codes } from "./checks.js";
import { at, closeTo, place, recordingOf, step, withOffsets } from "./loads.js";
import { type Load, platformUnder } from "./statics.js";

describe("offset of a platform, from force and moment before the centre of pressure (law: rest is zero)", () => {
  const load = step(600, 850, place(0.1, 0.05));
  const OFFSETS = [12, -30, 45, 3, -5, 2];
  const clean = platformUnder(load, at(0, 0));
  const shifted = withOffsets(clean, OFFSETS);
  const truth = toGroundReaction(recordingOf([clean]), { offset: "none", drift: "never" });
  it("the moment is that of the force at its point about the frame's origin (by hand)", () => {
    const i = 700;
    const [f, p] = [load.force[i] as Position, load.point[i] as Position];
    expect(truth.moment?.forward?.[i]).toBeCloseTo(-p.right * f.up, 9);
    expect(truth.moment?.right?.[i]).toBeCloseTo(p.forward * f.up, 9);
    const vertical = p.right * f.forward - p.forward * f.right + (load.freeMoment[i] as number);
    expect(truth.moment?.up?.[i]).toBeCloseTo(vertical, 9);
  });
  it.each([
    ["the flights before and after a single contact", {}, "flights"],
    ["a stated stretch", { zero: { from: 0.1, to: 0.9 } }, "stated"],
    ["a stated stretch, whatever offset says", { zero: { from: 0.1, to: 0.9 }, offset: "none" }, "stated"],
  ] as const)("by %s", (_, options, zero) => {
    const ground = toGroundReaction(recordingOf([shifted]), options);
    for (const part of ["forward", "up", "right"] as const) {
      closeTo(ground.force[part], truth.force[part], 1e-9);
      closeTo(ground.moment?.[part], truth.moment?.[part], 1e-9);
    }
    const [own] = ground.settings.plates ?? [];
    expect(own).toMatchObject({
      name: "plate",
      zero,
      driftRemoved: false,
      forceOn: "platform",
      originNegated: false,
    });
    expect(own?.offset?.up).toBeCloseTo(45, 9);
    expect(codes(ground)).toEqual(["force-negated"]);
  });
  it("by the samples that the file names", () => {
    const ground = toGroundReaction(recordingOf([{ ...shifted, zero: { from: 0, to: 40 } }]));
    closeTo(ground.moment?.right, truth.moment?.right, 1e-9);
    expect(ground.settings.plates?.[0]?.zero).toBe("file");
  });
  it("by the flights where somebody stood on the plate in the samples that the file names, and says so", () => {
    const loaded = recordingOf([{ ...shifted, zero: { from: 700, to: 740 } }]);
    const ground = toGroundReaction(loaded);
    closeTo(ground.force.up, truth.force.up, 1e-9);
    expect(ground.settings.plates?.[0]?.zero).toBe("flights");
    expect(codes(ground)).toEqual(["force-negated", "zero-loaded"]);
    expect(codes(toGroundReaction(loaded, { offset: "file" }))).toContain("zero-loaded");
  });
  it("nothing on request", () => {
    const ground = toGroundReaction(recordingOf([shifted]), { offset: "none", drift: "never" });
    expect(ground.force.up[0]).toBeCloseTo(-(45 * -1), 9);
    expect(ground.settings.plates?.[0]?.zero).toBe("none");
  });
  it.each([
    [{ offset: "file" }, "missing-value", "offset"],
    [{ zero: { from: 1, to: 0.5 } }, "out-of-range", "zero.to"],
    [{ zero: { from: 0, to: 99 } }, "out-of-range", "zero"],
    [{ only: ["another"] }, "out-of-range", "only"],
    [{ only: [] }, "wrong-type", "only"],
    [{ sides: { another: "left" } }, "out-of-range", "sides"],
    [{ plates: "both" as never }, "out-of-range", "plates"],
  ] as const)("refuses %j", (options, code, argument) =>
    expect(() => toGroundReaction(recordingOf([shifted]), options)).toThrow(
      expect.objectContaining({ code, argument }),
    ),
  );
});

it("drift of a treadmill platform comes off force and moment, so that the centre of pressure is where it was", () => {
  const length = 6000;
  const loads = Array.from({ length: 15 }, (_, k) =>
    step(100 + 380 * k, 250 + 380 * k, place(0.1, k % 2 ? 0.05 : -0.05), length),
  );
  const total: Load = {
    force: Array.from({ length }, (_, i) => {
      const own = loads.map(({ force }) => force[i] as Position);
      const sum = (axis: keyof Position) => own.reduce((s, f) => s + f[axis], 0);
      return { forward: sum("forward"), up: sum("up"), right: sum("right") };
    }),
    point: Array.from(
      { length },
      (_, i) => (loads[Math.min(14, Math.floor(i / 380))] as Load).point[i] as Position,
    ),
    freeMoment: Array.from({ length }, () => 0),
  };
  const clean = platformUnder(total, at(0, 0));
  const RISE = [0, 0, 30, 4, -6, 0];
  const drifting: Platform = {
    ...clean,
    channels: clean.channels.map((channel, k) => ({
      ...channel,
      samples: channel.samples.map((value, i) => value + ((RISE[k] as number) * i) / length),
    })),
  };
  const truth = toGroundReaction(recordingOf([clean]), { offset: "none", drift: "never" });
  const ground = toGroundReaction(recordingOf([drifting]));
  expect(ground.settings.driftRemoved).toBe(true);
  expect(codes(ground)).toContain("drift-removed");
  // From the middle of the first flight to that of the last; outside, the level is held.
  const inside = (samples: ArrayLike<number> | undefined) => Array.from(samples ?? []).slice(320, 5200);
  closeTo(inside(ground.moment?.right), inside(truth.moment?.right), 0.02);
  closeTo(inside(ground.moment?.forward), inside(truth.moment?.forward), 0.02);
  closeTo(inside(ground.force.up), inside(truth.force.up), 0.02);
  const left = toGroundReaction(recordingOf([drifting]), { drift: "never" });
  expect(
    Math.abs((left.moment?.right?.[5000] as number) - (truth.moment?.right?.[5000] as number)),
  ).toBeGreaterThan(1);
});

it("a gap in a platform's channel is refused with platform, channel, sample and time", () => {
  const platform = platformUnder(step(600, 850, place(0.1, 0.05)), at(0, 0));
  (platform.channels[4] as { samples: Float64Array }).samples[250] = Number.NaN;
  expect(() => toGroundReaction({ ...recordingOf([platform]), startTime: 10 })).toThrow(
    /"channel 5" of force platform "plate" lacks 1 of 1500 samples, the first at 10\.500 s \(sample 250\)/,
  );
});

it("a gap that the reader found names the line of the file", () => {
  const samples = Float64Array.from({ length: 400 }, (_, i) => (i === 7 ? Number.NaN : 0));
  const channel: Channel = { name: "up [N]", quantity: "force", direction: "up", unit: "N", samples };
  const said = { code: "gap", message: "a blank cell", where: "up [N]", values: { count: 1, line: 12 } };
  expect(() => toGroundReaction({ ...recordingOf([], [channel]), cautions: [said] })).toThrow(
    expect.objectContaining({
      code: "gap",
      message: expect.stringContaining("(sample 7, line 12 of the file)"),
    }),
  );
});

describe("an amplifier that saturates", () => {
  const STEPS = 0.005;
  const clean = platformUnder(step(300, 600, place(0.1, 0.05)), at(0, 0));
  const twice = (samples: Float64Array) => samples.map((value, i) => value + (samples[i - 600] ?? 0));
  const identity = Array.from({ length: 6 }, (_, i) =>
    Array.from({ length: 6 }, (__, j) => (i === j ? 100 : 0)),
  );
  const digital = (limit: number): Platform => ({
    ...clean,
    type: 4,
    calibration: identity,
    channels: clean.channels.map((channel) => ({
      ...channel,
      unit: "V",
      // One step of noise, by which the channel's resolution shows.
      samples: twice(channel.samples).map((value, i) => {
        const volts = STEPS * (Math.round(value / 100 / STEPS) + (i % 3) - 1);
        return Math.max(-limit, Math.min(limit, volts));
      }),
    })),
  });
  it("is told by its raw channel, whichever way the plate is turned", () => {
    const saturated = toGroundReaction(recordingOf([digital(10)])).cautions.find(
      ({ code }) => code === "saturated",
    );
    expect(saturated?.where).toBe("channel 3");
    expect(codes(toGroundReaction(recordingOf([digital(20)])))).not.toContain("saturated");
  });
});
