import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { readC3d } from "../../src/io/index.js";
import type { Axes } from "../../src/recording/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";
import { markedRun } from "./markedRun.js";

const said = ({ cautions }: Trial, code: string) => cautions.find((caution) => caution.code === code);
const unstated = ({ surface: _, ...ground }: GroundReaction): GroundReaction => ground;

describe("the standard's sample set 01, whose markers go 2.15 m along +y (on 2026-11-25 wrong axes were taken unsaid)", () => {
  const bytes = readFileSync(new URL("../fixtures/c3d/standard/walk-pi.c3d", import.meta.url));
  const trialWith = (axes: Axes, surface: "ground" | "belt" | null = null) =>
    analyseTrial(toGroundReaction(readC3d(bytes, { axes })), { surface });
  it("forward as stated: nothing is said but that it is the ground", () => {
    const trial = trialWith({ x: "right", y: "forward", z: "up" });
    expect(said(trial, "travel-disagrees")).toBeUndefined();
    expect(trial.settings.surface).toBe("ground");
    expect(said(trial, "surface-inferred")?.message).toContain("the markers travel, at 0.2 m/s");
  });
  it.each([
    [{ x: "left", y: "backward", z: "up" }, /2\.15 m backward .* braking and propulsion, left and right/],
    [{ x: "forward", y: "left", z: "up" }, /2\.15 m to the left .* anteroposterior and mediolateral/],
    [{ x: "backward", y: "right", z: "up" }, /2\.15 m to the right .* anteroposterior and mediolateral/],
  ] as const)("%j is said (was taken to be a belt at 0.1 or 0.0 m/s)", (axes, message) => {
    for (const surface of [null, "ground"] as const) {
      const trial = trialWith(axes, surface);
      expect(said(trial, "travel-disagrees")?.message).toMatch(message);
      expect(trial.settings.surface).toBe("ground");
    }
  });
  it("on a belt that is stated the frame may go any way", () =>
    expect(
      said(trialWith({ x: "left", y: "backward", z: "up" }, "belt"), "travel-disagrees"),
    ).toBeUndefined());
});

describe("without markers, by the steps", () => {
  const run = toGroundReaction(syntheticRun({ contacts: 12, surface: "ground" }).recording);
  const turned = (ground: GroundReaction): GroundReaction => {
    const negated = (samples?: Float64Array) => samples?.map((value) => -value) as Float64Array;
    const { force, moment } = ground;
    return {
      ...ground,
      force: { up: force.up, forward: negated(force.forward), right: negated(force.right) },
      moment: { ...moment, forward: negated(moment?.forward), right: negated(moment?.right) },
    };
  };
  it("a run over ground is that, stated or not", () => {
    const trial = analyseTrial(unstated(run));
    expect(trial.settings.surface).toBe("ground");
    expect(said(trial, "surface-inferred")?.message).toContain("one ahead of the other");
    expect(said(trial, "travel-disagrees")).toBeUndefined();
  });
  it("turned about, it is said", () => {
    for (const ground of [turned(run), turned(unstated(run))]) {
      const trial = analyseTrial(ground);
      expect(said(trial, "travel-disagrees")?.message).toMatch(/m backward from one contact to the next/);
      expect(trial.settings.surface).toBe("ground");
    }
  });
  it("a belt shows no travel, whichever way its frame lies", () => {
    const belt = toGroundReaction(syntheticRun({ contacts: 12 }).recording);
    expect(said(analyseTrial(unstated(belt)), "travel-disagrees")).toBeUndefined();
    expect(analyseTrial(unstated(belt)).settings.surface).toBe("belt");
    expect(said(analyseTrial(turned(unstated(belt))), "travel-disagrees")).toBeUndefined();
  });
});

it("a runner who drifts on a belt by more than half a metre is on a belt (open recording, its markers shifted)", () => {
  const { markers, surface: _, ...recording } = markedRun();
  const drifting = markers?.markers.map((marker) => ({
    ...marker,
    forward: marker.forward.map((value, i) => value - (1.2 * i) / 1500),
    right: marker.right.map((value) => (Number.isFinite(value) ? value : 0)),
  }));
  const moved = {
    ...recording,
    markers: { ...(markers as NonNullable<typeof markers>), markers: drifting ?? [] },
  };
  const ground = toGroundReaction(moved);
  expect(ground.markerTravel?.forward).toBeLessThan(-0.9);
  const trial = analyseTrial(ground);
  expect(trial.settings.surface).toBe("belt");
  expect(said(trial, "travel-disagrees")).toBeUndefined();
});

describe("a centre of pressure that hardly moves tells no surface (on 2026-11-25: 0.1 m/s backward, a belt)", () => {
  const belt = toGroundReaction(syntheticRun({ contacts: 12 }).recording);
  const starts = analyseTrial(belt).contacts.map(({ initialContact }) => initialContact);
  /** Under the foot it moves at the speed given, whatever the force. */
  const moving = (speed: number): GroundReaction => {
    const sinceContact = (time: number) =>
      time - (starts.filter((start) => start <= time + 0.02).at(-1) ?? 0);
    const right = belt.force.up.map((up, i) => up * speed * sinceContact(i / belt.sampleRate));
    return { ...unstated(belt), moment: { ...belt.moment, right } };
  };
  it.each([0.1, -0.1, 0])("%d m/s", (speed) => {
    const trial = analyseTrial(moving(speed));
    expect(trial.settings.surface).toBeNull();
    expect(said(trial, "surface-unknown")?.message).toContain("state surface");
    expect(said(trial, "surface-inferred")).toBeUndefined();
    expect(trial.notComputed.find(({ id }) => id === "positiveExternalWork")?.code).toBe("missing-surface");
  });
  it.each([
    [-0.5, "belt"],
    [0.5, "ground"],
  ])("%d m/s: %s", (speed, surface) => expect(analyseTrial(moving(speed)).settings.surface).toBe(surface));
});
