import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import type { Platform, Position } from "../../src/recording/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { codes } from "./checks.js";
import { at, place, recordingOf, step } from "./loads.js";
import { type Load, platformUnder } from "./statics.js";

/** Thirty seconds of running at 500 Hz on one platform. */
const LENGTH = 15_000;
const STEPS = 80;
const runner = (): Load => {
  const loads = Array.from({ length: STEPS }, (_, k) =>
    step(100 + 180 * k, 225 + 180 * k, place(0.1, k % 2 ? 0.05 : -0.05), 400 + 180 * k),
  );
  const own = (i: number) => loads[Math.max(0, Math.min(STEPS - 1, Math.floor((i - 50) / 180)))] as Load;
  const nothing: Position = { forward: 0, up: 0, right: 0 };
  return {
    force: Array.from({ length: LENGTH }, (_, i) => own(i).force[i] ?? nothing),
    point: Array.from({ length: LENGTH }, (_, i) => own(i).point[i] ?? nothing),
    freeMoment: Array.from({ length: LENGTH }, () => 0),
  };
};
const load = runner();
const clean = platformUnder(load, { ...at(0, 0), yaw: 0 });
const withNoise = (force: number, moment: number, seed: number): Platform => {
  const random = seededRandom(seed);
  return {
    ...clean,
    channels: clean.channels.map((channel) => ({
      ...channel,
      samples: channel.samples.map(
        (value) => value + (channel.unit === "N" ? force : moment) * random.normal(),
      ),
    })),
  };
};

describe("a moment that drifts alone, from 3 to 5 N·m in 30 s", () => {
  const drifting: Platform = {
    ...clean,
    channels: clean.channels.map((channel, k) =>
      k === 4
        ? { ...channel, samples: channel.samples.map((value, i) => value + 3 + (2 * i) / LENGTH) }
        : channel,
    ),
  };
  const worst = (drift: "auto" | "never"): number => {
    const { force, moment } = toGroundReaction(recordingOf([drifting]), { drift });
    let largest = 0;
    for (let i = 300; i < 100 + 180 * STEPS; i++) {
      if ((force.up[i] as number) < 800) continue;
      const cop = (moment?.right?.[i] as number) / (force.up[i] as number);
      largest = Math.max(largest, Math.abs(cop - (load.point[i] as Position).forward));
    }
    return 1000 * largest;
  };
  it("is taken off (on 2026-11-25 it moved the centre of pressure by millimetres, unsaid)", () => {
    expect(worst("never")).toBeGreaterThan(1);
    expect(worst("auto")).toBeLessThan(0.05);
    const ground = toGroundReaction(recordingOf([drifting]));
    const said = ground.cautions.find(({ code }) => code === "drift-removed");
    expect(said?.message).toMatch(/the moment about "right" drifts by 1\.9 N·m .* off every moment channel/);
    expect(ground.settings.driftRemoved).toBe(true);
  });
  it("leaves the force as it is", () => {
    const { force } = toGroundReaction(recordingOf([drifting]));
    const { force: unmoved } = toGroundReaction(recordingOf([drifting]), { drift: "never" });
    expect(force.up).toEqual(unmoved.up);
    expect(force.forward).toEqual(unmoved.forward);
  });
  it("left in on request, it is said", () => {
    const said = toGroundReaction(recordingOf([drifting]), { drift: "never" }).cautions;
    expect(said.find(({ code }) => code === "drift")?.where).toBe("plate, moment right");
  });
});

it.each([
  [0, 0],
  [3, 0.5],
  [10, 2],
])(
  "noise of %d N and %f N·m is no drift of the moment, with 100 seeds",
  (force, moment) => {
    const seeds = force === 0 ? [1] : Array.from({ length: 100 }, (_, k) => k + 1);
    const alarms = seeds.filter((seed) =>
      toGroundReaction(recordingOf([withNoise(force, moment, seed)])).cautions.some(
        ({ code, where }) => /^drift/.test(code) && /moment/.test(where ?? ""),
      ),
    );
    expect(alarms).toEqual([]);
    expect(codes(toGroundReaction(recordingOf([clean])))).toEqual(["force-negated"]);
  },
  60_000,
);
