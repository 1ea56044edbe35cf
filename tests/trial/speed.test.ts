import { describe, expect, it } from "vitest";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";
import { treadmillRun } from "../models/landing/treadmillRun.js";

const run = (options: SyntheticRunOptions): GroundReaction =>
  toGroundReaction(syntheticRun({ noise: { force: 2, cop: 0.001 }, ...options }).recording);
const said = ({ cautions }: Trial) => cautions.find(({ code }) => code === "speed-disagrees");
const stating = (ground: GroundReaction, speed: number) => analyseTrial(ground, { speed });

describe("a wrong speed contradicts the recording (on 2026-11-25 it was used unsaid)", () => {
  const belt = run({ contacts: 60, seed: 3, speed: 3, surface: "belt" });
  it("a belt at 3 m/s stated as 5: said with both numbers (forward work was 66.7 J for 39.9)", () => {
    const caution = said(stating(belt, 5));
    expect(caution?.where).toBe("speed");
    expect(caution?.values?.stated).toBe(5);
    expect(Math.abs((caution?.values?.found as number) - 3)).toBeLessThan(0.3);
    expect(caution?.message).toMatch(/5\.0 m\/s .* backward at 2\.0 m\/s .* 2\.8 m\/s/);
    expect(caution?.message).not.toContain("km/h");
  });
  it("10.8 km/h typed as m/s: said, with the unit that it may be (a step was 3.63 m)", () =>
    expect(said(stating(belt, 10.8))?.message).toContain("10.8 km/h are 3.0 m/s"));
  it.each([1.5, 2, 3.6, 4])("a belt at 3 m/s stated as %d is said", (speed) =>
    expect(said(stating(belt, speed))).toBeDefined(),
  );
  it.each([2.7, 3, 3.3])("within 10 %% nothing is said: %d", (speed) =>
    expect(said(stating(belt, speed))).toBeUndefined(),
  );
  it("over ground at 3 m/s stated as 9, and 3.6: said; 2.7 and 3.3 are not", () => {
    const ground = run({ contacts: 30, seed: 3, speed: 3, surface: "ground" });
    const caution = said(stating(ground, 9));
    expect(caution?.values?.found).toBeCloseTo(3, 1);
    expect(caution?.message).toContain("over ground the feet move on at 3.0 m/s");
    expect(said(stating(ground, 3.6))).toBeDefined();
    for (const speed of [2.7, 3.3]) expect(said(stating(ground, speed)), `${speed}`).toBeUndefined();
  });
  it("a belt that is stated to be ground, and ground that is stated to be a belt", () => {
    expect(said(analyseTrial(belt, { surface: "ground" }))?.values?.found).toBeLessThan(0.1);
    const ground = run({ contacts: 30, seed: 3, speed: 3, surface: "ground" });
    expect(said(analyseTrial(ground, { surface: "belt" }))?.message).toContain("goes forward at");
  });
  it("the landing's margin holds what the wrong speed does, which is read as it was", () => {
    const right = stating(belt, 3);
    const wrong = stating(belt, 4);
    const moved = (id: string) =>
      (wrong.summary.metrics[id]?.mean ?? Number.NaN) - (right.summary.metrics[id]?.mean ?? Number.NaN);
    const grown = (at: "touchdown" | "takeOff") =>
      (wrong.settings.landing?.margin[at] ?? 0) - (right.settings.landing?.margin[at] ?? 0);
    // Law: speed × the time between touch and foot level; the found speed is 0.15 m/s lower than the true one.
    expect(moved("touchdownDistance")).toBeCloseTo(0.011, 3);
    expect(moved("takeOffDistance")).toBeCloseTo(0.032, 3);
    const off = 4 - (said(wrong)?.values?.found as number);
    expect(grown("touchdown") / (off * moved("touchdownDistance"))).toBeCloseTo(1, 2);
    expect(grown("takeOff") / (off * moved("takeOffDistance"))).toBeCloseTo(1, 2);
  });
  it("without speed, and without a centre of pressure, nothing can be said", () => {
    const { speed: _, ...unstated } = belt;
    expect(said(analyseTrial(unstated))).toBeUndefined();
    const { moment: __, ...vertical } = belt;
    expect(said(stating(vertical as GroundReaction, 9))).toBeUndefined();
  });
});

describe("no false alarm", () => {
  const runs = [2, 3, 4, 5, 6].flatMap((speed) =>
    (["belt", "ground"] as const).flatMap((surface) => [1, 2].map((seed) => ({ speed, surface, seed }))),
  );
  it.each(runs)("on a clean run: %o", (options) =>
    expect(said(analyseTrial(run({ ...options, contacts: 16 })))).toBeUndefined(),
  );
  it.each([0.08, 0.2, 0.24])("nor for a foot that rolls by %d m", (copRoll) =>
    expect(
      said(analyseTrial(run({ speed: 3, surface: "belt", contacts: 16, stance: { copRoll } }))),
    ).toBeUndefined(),
  );
  it("nor on the open recording, a belt at 2.5 m/s; stated as 9 km/h it is said", () => {
    const { ground } = treadmillRun();
    expect(said(analyseTrial(ground))).toBeUndefined();
    expect(said(stating(ground, 9))?.message).toContain("9.0 km/h are 2.5 m/s");
    // 0.16 m of roll for the 0.15 m that are taken.
    expect(said(stating(ground, 9))?.values?.found).toBeCloseTo(2.45, 2);
  });
});

describe("a long runway (on 2026-11-25 30 contacts at 3 m/s were said to be far from the origin)", () => {
  it.each([30, 45])("%d contacts at 3 m/s: nothing is said of the centre of pressure", (contacts) => {
    const trial = analyseTrial(run({ contacts, seed: 3, speed: 3, surface: "ground" }));
    expect(trial.contacts.length).toBe(contacts);
    expect(trial.cautions.filter(({ code }) => code.startsWith("centre-of-pressure"))).toEqual([]);
  });
});
