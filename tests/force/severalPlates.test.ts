import { describe, expect, it } from "vitest";
import { combinePlates, type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import type { Channel, Position } from "../../src/recording/index.js";
import statics from "../fixtures/force/platforms.json" with { type: "json" };
import { groundOf } from "../helpers.js";
import { walkOnBelts } from "../walking.js";
import { codes } from "./checks.js";
import { at, closeTo, place, recordingOf, step, withOffsets } from "./loads.js";
import { type Load, platformUnder } from "./statics.js";

describe("combinePlates", () => {
  const { force1, force2, cop1, cop2, free1, free2, force, cop, freeMoment } = statics.combinePlates;
  const plate = (forces: number[][], cops: number[][], frees: number[]): GroundReaction => {
    const column = (value: (i: number) => number) => Float64Array.from(forces, (_, i) => value(i));
    const f = (i: number, k: number) => (forces[i] as number[])[k] as number;
    const c = (i: number, k: number) => (cops[i] as number[])[k] as number;
    return {
      ...groundOf({
        forward: column((i) => f(i, 0)),
        up: column((i) => f(i, 1)),
        right: column((i) => f(i, 2)),
        sampleRate: 100,
      }),
      moment: {
        forward: column((i) => -c(i, 2) * f(i, 1)),
        up: column((i) => c(i, 2) * f(i, 0) - c(i, 0) * f(i, 2) + (frees[i] as number)),
        right: column((i) => c(i, 0) * f(i, 1)),
      },
    };
  };
  const sum = combinePlates([plate(force1, cop1, free1), plate(force2, cop2, free2)]);
  it("independent code: NumPy, force, centre of pressure and free moment of two plates, to all digits", () => {
    force.forEach((row, i) => {
      const { forward, up, right } = sum.force as Required<typeof sum.force>;
      expect([forward[i], up[i], right[i]]).toEqual(row);
      const cx = (sum.moment?.right?.[i] as number) / (up[i] as number);
      const cz = -(sum.moment?.forward?.[i] as number) / (up[i] as number);
      const free =
        (sum.moment?.up?.[i] as number) - (cz * (forward[i] as number) - cx * (right[i] as number));
      expect(cx).toBeCloseTo((cop[i] as number[])[0] as number, 10);
      expect(cz).toBeCloseTo((cop[i] as number[])[2] as number, 10);
      expect(free).toBeCloseTo(freeMoment[i] as number, 9);
    });
  });
  it("keeps the plates, and a part that one lacks is absent from the sum", () => {
    expect(sum.plates?.length).toBe(2);
    const [one, two] = sum.plates as [GroundReaction, GroundReaction];
    const { up } = two.force;
    const partial = combinePlates([
      one,
      { ...two, force: { up }, moment: { forward: Float64Array.from(up) } },
    ]);
    expect(Object.keys(partial.force)).toEqual(["up"]);
    expect(Object.keys(partial.moment ?? {})).toEqual(["forward"]);
  });
  it("refuses none, and plates that differ", () => {
    const [one] = sum.plates as [GroundReaction];
    expect(() => combinePlates([])).toThrow(expect.objectContaining({ code: "missing-value" }));
    expect(() => combinePlates([one, { ...one, sampleRate: 50 }])).toThrow(
      expect.objectContaining({ code: "conflict" }),
    );
    expect(() => combinePlates([one, { ...one, force: { up: new Float64Array(2) } }])).toThrow(
      expect.objectContaining({ code: "unequal-lengths" }),
    );
  });
});

describe("several platforms", () => {
  const one = platformUnder(step(300, 600, place(0.1, 0.05)), at(0, 0), { name: "one" });
  const two = platformUnder(step(560, 860, place(0.8, -0.05)), at(0.7, 0), { name: "two" });
  it("are kept apart, each with its own offset and sign, and summed", () => {
    const negated = {
      ...two,
      channels: two.channels.map((c) => ({ ...c, samples: c.samples.map((v) => -v) })),
    };
    const ground = toGroundReaction(recordingOf([withOffsets(one, [0, 0, 20, 0, 0, 0]), negated]));
    expect(ground.plates?.map(({ plate }) => plate)).toEqual(["one", "two"]);
    expect(ground.settings.plates?.map(({ forceOn }) => forceOn)).toEqual(["platform", "runner"]);
    const clean = toGroundReaction(recordingOf([one, two]));
    closeTo(ground.force.up, clean.force.up, 1e-9);
    const [a, b] = clean.plates as [GroundReaction, GroundReaction];
    closeTo(
      clean.force.up,
      a.force.up.map((f, i) => f + (b.force.up[i] as number)),
      0,
    );
    expect(codes(ground)).toEqual(["force-negated"]);
    expect(ground.cautions[0]?.where).toBe("one");
  });
  it("one that nobody stood on is left out, and said", () => {
    const idle = withOffsets(
      platformUnder(step(0, 0, place(0, 0)), at(2, 0), { name: "idle" }),
      [1, 2, 60, 0, 0, 0],
    );
    const ground = toGroundReaction(recordingOf([one, idle, two]));
    expect(ground.plates?.map(({ plate }) => plate)).toEqual(["one", "two"]);
    expect(codes(ground)).toContain("plate-not-used");
    expect(ground.force.up[0]).toBeCloseTo(0, 9);
  });
  it("one that drifts by 120 N is left out (on 2026-11-25 it counted as stood on and moved the sum by 24 N)", () => {
    const still = platformUnder(step(0, 0, place(0, 0), 15_000), at(2, 0), { name: "drifting" });
    const channels = still.channels.map((channel, k) =>
      k === 2
        ? { ...channel, samples: channel.samples.map((value, i) => value + (120 * i) / 15_000) }
        : channel,
    );
    const longer = platformUnder(step(300, 600, place(0.1, 0.05), 15_000), at(0, 0), { name: "one" });
    const ground = toGroundReaction(recordingOf([longer, { ...still, channels }]));
    expect([ground.plate, ground.plates]).toEqual(["one", undefined]);
    expect(ground.cautions.find(({ code }) => code === "plate-not-used")?.message).toMatch(
      /nobody stood on "drifting" .* moves slowly, as drift does/,
    );
    expect(ground.force.up[14_999]).toBeCloseTo(0, 9);
  });
  it("only the named ones are taken; a belt's foot is stated", () => {
    const ground = toGroundReaction(recordingOf([one, two]), { only: ["two"], sides: { two: "left" } });
    expect(ground.plates).toBeUndefined();
    expect([ground.plate, ground.side]).toEqual(["two", "left"]);
  });
  it.each([
    ["left_belt", undefined, "left"],
    ["Belt Right", undefined, "right"],
    ["left", "right", "right"],
    ["left to right", undefined, undefined],
    ["1", undefined, undefined],
    ["RightPlate", undefined, "right"],
    ["LEFTBELT", undefined, "left"],
    // On 2026-11-25 these were taken for feet.
    ["bright", undefined, undefined],
    ["Copyright", undefined, undefined],
    ["leftover", undefined, undefined],
  ] as const)("the foot of %j, stated as %s, is %s", (name, side, foot) => {
    const platform = { ...one, name, ...(side && { side }) };
    expect(toGroundReaction(recordingOf([platform])).side).toBe(foot);
  });
  it("at different heights each keeps its moment at its own height, the sum has none, and it is said", () => {
    const high = platformUnder(step(560, 860, place(0.8, -0.05, 0.2)), at(0.7, 0, 0.2), { name: "high" });
    const ground = toGroundReaction(recordingOf([one, high]));
    expect(codes(ground)).toContain("plate-heights");
    expect(ground.moment).toBeUndefined();
    const moment = ground.plates?.[1]?.moment?.right?.[700] as number;
    const { force, point } = step(560, 860, place(0.8, -0.05, 0.2));
    expect(moment).toBeCloseTo((point[700] as Position).forward * (force[700] as Position).up, 6);
  });
  it("one foot across two of them: taken together, with the times", () => {
    const across = platformUnder(step(310, 560, place(0.3, 0.05), 1500, 0.4), at(0.7, 0), { name: "two" });
    const ground = toGroundReaction(recordingOf([one, across]));
    expect(ground.plates).toBeUndefined();
    const said = ground.cautions.find(({ code }) => code === "foot-on-two-plates");
    expect(said?.message).toMatch(
      /^"one" and "two" were loaded at once, as by one foot across them, 0\.6\d s after the first sample; they were taken together/,
    );
    expect(toGroundReaction(recordingOf([one, across]), { plates: "apart" }).plates?.length).toBe(2);
  });
  it("one foot across two where two feet stand on them elsewhere: kept apart, and said", () => {
    const both = (a: Load, b: Load): Load => ({
      force: a.force.map((f, i) => ((b.force[i] as Position).up > f.up ? (b.force[i] as Position) : f)),
      point: a.point.map((p, i) =>
        (b.force[i] as Position).up > (a.force[i] as Position).up ? (b.point[i] as Position) : p,
      ),
      freeMoment: a.freeMoment,
    });
    const first = platformUnder(
      both(step(300, 600, place(0.1, 0)), step(1000, 1250, place(0.1, 0))),
      at(0, 0),
      { name: "one" },
    );
    const second = platformUnder(
      both(step(560, 860, place(0.8, 0)), step(1010, 1200, place(0.8, 0), 1500, 0.4)),
      at(0.7, 0),
      { name: "two" },
    );
    const ground = toGroundReaction(recordingOf([first, second]));
    expect(ground.plates?.length).toBe(2);
    expect(ground.cautions.find(({ code }) => code === "foot-on-two-plates")?.message).toMatch(/kept apart/);
  });
  it("two feet of a walk share a fifth of a contact: kept apart, nothing said", () => {
    const ground = toGroundReaction(walkOnBelts());
    expect(ground.plates?.map(({ side }) => side)).toEqual(["left", "right"]);
    expect(codes(ground)).toEqual([]);
  });
});

describe("refuses, as conflict,", () => {
  const loose = walkOnBelts().channels.map(({ plate: _, ...channel }) => channel);
  const up = loose.find(({ direction }) => direction === "up") as Channel;
  it("forces of plates beside forces of none", () =>
    expect(() => toGroundReaction({ ...walkOnBelts(), channels: [...walkOnBelts().channels, up] })).toThrow(
      expect.objectContaining({ code: "conflict" }),
    ));
  it("two platforms of the same channels (on 2026-11-25 the force was doubled)", () => {
    const one = platformUnder(step(300, 600, place(0.1, 0.05)), at(0, 0), { name: "one" });
    const again = { ...one, name: "again" };
    expect(() => toGroundReaction(recordingOf([one, again]))).toThrow(
      expect.objectContaining({ code: "conflict", where: "again" }),
    );
    expect(toGroundReaction(recordingOf([one, again]), { only: ["again"] }).plate).toBe("again");
    // Two plates that nobody stood on both hold zeros: that is no copy.
    const idle = (name: string) => platformUnder(step(0, 0, place(0, 0)), at(2, 0), { name });
    expect(toGroundReaction(recordingOf([one, idle("a"), idle("b")])).plate).toBe("one");
  });
  it("a cover without a platform", () =>
    expect(() => toGroundReaction({ ...walkOnBelts(), channels: [up] }, { coverThickness: 0.01 })).toThrow(
      expect.objectContaining({ code: "conflict", argument: "coverThickness" }),
    ));
});

it("a recording of markers alone has no force", () => {
  const markers = { sampleRate: 100, startTime: 0, markers: [] };
  expect(() => toGroundReaction({ ...recordingOf([]), markers })).toThrow(
    expect.objectContaining({ code: "missing-channel" }),
  );
});
