import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { detectEvents } from "../../src/events/index.js";
import {
  type GroundReaction,
  platformReaction,
  surfaceCentreOfPressure,
  toGroundReaction,
} from "../../src/force/index.js";
import { readC3d } from "../../src/io/index.js";
import type { Axes, Platform } from "../../src/recording/index.js";
import { analyseTrial } from "../../src/trial/index.js";
import { codes, near, vector } from "./checks.js";

const read = (name: string, axes: Axes) =>
  readC3d(readFileSync(new URL(`../fixtures/c3d/standard/${name}.c3d`, import.meta.url)), { axes });
const trapezoid = (samples: Float64Array, from: number, to: number, rate: number) => {
  let sum = 0;
  for (let i = from; i < to; i++) sum += ((samples[i] as number) + (samples[i + 1] as number)) / (2 * rate);
  return sum;
};
const plateOf = (ground: GroundReaction, k: number) => ground.plates?.[k] as GroundReaction;

describe("the standard's sample set 01, from its file: check values by NumPy, zeroed by samples 0 to 9", () => {
  const recording = read("walk-pi", { x: "right", y: "forward", z: "up" });
  const ground = toGroundReaction(recording, { zero: { from: 0, to: 9 / 200 } });
  it.each([
    ["2", 1, 544, 994, 904, 805.58, 1223.4693],
    ["1", 0, 1078, 1465, 1244, 817.277, 1177.4198],
  ] as const)("plate %s: contact, peak and impulse", (name, k, first, last, at, peak, impulse) => {
    const plate = plateOf(ground, k);
    const { up } = plate.force;
    expect(plate.plate).toBe(name);
    const loaded = Array.from(up.keys()).filter((i) => (up[i] as number) > 20);
    expect([loaded[0], loaded.at(-1), loaded.length]).toEqual([first, last, last - first + 1]);
    expect(up.indexOf(Math.max(...up))).toBe(at);
    near([up[at] as number], [peak], 5e-4);
    near([trapezoid(up, first, last, 200)], [impulse], 5e-5);
    const contact = detectEvents(ground).contacts.find(({ plate: on }) => on === k);
    expect(Math.ceil((contact?.initialContact ?? 0) * 200)).toBe(first);
    expect(Math.floor((contact?.toeOff ?? 0) * 200)).toBe(last);
  });
  it("offsets as stated there", () => {
    const levels = (plate: GroundReaction) => {
      const { offset } = plate.settings;
      return [offset?.right as number, offset?.forward as number, -(offset?.up as number)];
    };
    // The check values are along the plates' axes, the library's along the frame, at most half a degree
    // apart.
    near(levels(plateOf(ground, 0)), [-26.187, 0, -21.2784], 0.15);
    near(levels(plateOf(ground, 1)), [11.271, -0.0884, -30.7489], 0.15);
  });
  it.each([
    [1, 769, [-27.086, 11.0209, 776.569], [176.023, 743.9212, 0.8924], 3989.22],
    [0, 1271, [-5.1353, 31.0071, 749.5978], [183.2564, 1440.7886, 1.19], 3739.39],
  ] as const)(
    "plate %i, sample %i: force, centre of pressure, free moment",
    (k, i, force, cop, freeMoment) => {
      const platform = recording.platforms?.[k] as Platform;
      const reaction = platformReaction(platform, { unloaded: { from: 0, to: 10 } });
      const point = surfaceCentreOfPressure(reaction, i);
      near(
        vector(point?.position).map((m) => 1000 * m),
        [cop[1], cop[2], cop[0]],
        5.1e-5,
      );
      near([1000 * (point?.freeMoment ?? 0)], [freeMoment], 5.1e-3);
      const { force: along, moment } = plateOf(ground, k);
      near([along.right?.[i] as number, along.forward?.[i] as number, along.up[i] as number], force, 5.1e-5);
      // On the common ground level, a fraction of a millimetre from the plate's own surface.
      near([(1000 * (moment?.right?.[i] as number)) / (along.up[i] as number)], [cop[1]], 0.05);
      near([(-1000 * (moment?.forward?.[i] as number)) / (along.up[i] as number)], [cop[0]], 0.05);
    },
  );
  it("with no option but the axes: by the file's zero frames, sides by its marked events, contacts by the lab's times", () => {
    const trial = analyseTrial(toGroundReaction(recording));
    expect(trial.settings.force.plates?.map(({ zero, forceOn }) => [zero, forceOn])).toEqual([
      ["file", "runner"],
      ["file", "runner"],
    ]);
    expect(trial.settings.events.sides).toBe("recorded events");
    const [first, second] = trial.contacts;
    expect(trial.contacts.map(({ side, plate }) => [side, plate])).toEqual([
      ["right", 1],
      ["right", 0],
    ]);
    // Marked by hand to 0.02 s: 2.72, 5.40 and 7.32 s.
    near(
      [first?.initialContact ?? 0, second?.initialContact ?? 0, second?.toeOff ?? 0],
      [2.72, 5.4, 7.32],
      0.013,
    );
    expect(trial.summary.strides).toBe(0);
    // Without the events nothing shows that a left foot came down between the plates: taken for a step, and
    // said.
    const { events: _, ...unmarked } = recording;
    const blind = analyseTrial(toGroundReaction(unmarked));
    expect(blind.contacts[0]?.side).not.toBe(blind.contacts[1]?.side);
    expect(codes(blind)).toContain("sides-uncertain");
    const stated = analyseTrial(toGroundReaction(unmarked, { sides: { 1: "right", 2: "right" } }));
    expect(stated.contacts.map(({ side }) => side)).toEqual(["right", "right"]);
    expect(codes(trial)).not.toContain("foot-on-two-plates");
  });
});

describe("the standard's sample set 10, from its files: check values by NumPy, nothing taken off", () => {
  it.each([
    ["type-2", 397.8813, 192.1727],
    ["type-4", 390.5162, 189.8736],
  ] as const)("%s: contact, peak, impulse; the origin is turned, and said", (name, peak, impulse) => {
    const recording = read(name, { x: "forward", y: "left", z: "up" });
    const ground = toGroundReaction(recording, { offset: "none", drift: "never" });
    const { up } = ground.force;
    const loaded = Array.from(up.keys()).filter((i) => (up[i] as number) > 20);
    expect([loaded[0], loaded.at(-1)]).toEqual([991, 1812]);
    near([up[1644] as number, Math.max(...up)], [peak, peak], 5.1e-5);
    near([trapezoid(up, 991, 1812, 1200)], [impulse], 5.1e-5);
    expect(codes(ground)).toContain("origin-negated");
    expect(analyseTrial(ground, { filter: null }).contacts.map(({ side }) => side)).toEqual(["unknown"]);
  });
});

it("the standard's sample set 15, from its file: force alone, without a moment, and said", () => {
  const recording = read("type-3-120", { x: "right", y: "forward", z: "up" });
  const ground = toGroundReaction(recording, { offset: "none", drift: "never" });
  const { forward, up, right } = ground.force as Required<GroundReaction["force"]>;
  near(
    [forward[860] as number, up[860] as number, right[860] as number],
    [36.568779, 284.461779, 17.622263],
    1e-6,
  );
  expect(ground.moment).toBeUndefined();
  expect(codes(ground)).toEqual(expect.arrayContaining(["force-negated", "no-moment"]));
});
