import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { readCsv } from "../../src/io/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { type AnalyseTrialOptions, analyseTrial, type Trial } from "../../src/trial/index.js";
import { groundOf } from "../helpers.js";

/** Force in another unit, contacts cut by the ends, numbers that mean nothing; each test names what was seen on 2026-11-25. */
const said = ({ cautions }: Trial, code: string) => cautions.find((caution) => caution.code === code);
const run = toGroundReaction(syntheticRun({ contacts: 12 }).recording);
const scaled = (ground: GroundReaction, factor: number): GroundReaction => {
  const times = (samples?: Float64Array) => samples?.map((value) => factor * value) as Float64Array;
  const { force, moment } = ground;
  return {
    ...ground,
    force: { forward: times(force.forward), up: times(force.up), right: times(force.right) },
    moment: { forward: times(moment?.forward), up: times(moment?.up), right: times(moment?.right) },
  };
};
const refusal = (ground: GroundReaction, options: AnalyseTrialOptions = {}) => {
  try {
    analyseTrial(ground, options);
  } catch (caught) {
    return caught as { code: string; message: string };
  }
  return null;
};

describe("a force that no person's is", () => {
  it.each([10, 1e9])("%d times too large is refused (a trial of 35690067454.2 kg was given)", (factor) => {
    const refused = refusal(scaled(run, factor));
    expect(refused?.code).toBe("out-of-range");
    expect(refused?.message).toMatch(/whole strides carries .* less than 500 kg: is the force in N\?/);
  });
  it("and where there is no whole stride", () => {
    const up = Array.from({ length: 400 }, (_, i) =>
      i > 50 && i < 300 ? 1.5e6 * Math.sin((Math.PI * (i - 50)) / 250) : 0,
    );
    const refused = refusal(groundOf({ up, sampleRate: 1000 }));
    expect(refused?.code).toBe("out-of-range");
    expect(refused?.message).toMatch(/on average over a contact; .*: is the force in N\?/);
    expect(refusal(groundOf({ up: up.map((value) => value / 200), sampleRate: 1000 }))).toBeNull();
  });
  it("a mass by force below 5 kg is said (nothing was)", () => {
    const trial = analyseTrial(scaled(run, 0.05));
    expect(said(trial, "mass-implausible")?.message).toMatch(
      /carries 3\.\d kg, less than any person weighs: is the force in N/,
    );
    expect(said(analyseTrial(run), "mass-implausible")).toBeUndefined();
  });
  it.each([
    ["body weights", 70 * 9.80665],
    ["kN", 1000],
  ])("in %s: the refusal asks (it said only that 20 N are not reached)", (_, unit) => {
    const refused = refusal(scaled(run, 1 / unit));
    expect(refused?.code).toBe("no-contact");
    expect(refused?.message).toMatch(/is it in body weights or kN\? Forces are taken in N/);
  });
  it("the noise of a platform that nobody stands on is not asked about", () => {
    const noise = Array.from({ length: 3000 }, (_, i) => 2 * Math.sin(i * i));
    expect(refusal(groundOf({ up: noise, sampleRate: 1000 }))?.message).not.toContain("body weights");
  });
});

it("a centre of pressure in mm that was taken as m is said on a surface that is stated too (passed unsaid, 20 to 35 m)", () => {
  const { right } = run.moment ?? {};
  const wrong = { ...run, moment: { ...run.moment, right: right?.map((m) => 30 * m) as Float64Array } };
  expect(run.surface).toBe("belt");
  expect(said(analyseTrial(wrong), "centre-of-pressure-implausible")?.message).not.toContain("inferred");
  expect(said(analyseTrial(run), "centre-of-pressure-implausible")).toBeUndefined();
});

describe("contacts that the ends cut", () => {
  it("are said first, and no question is asked of the rate (open recording of a jump at 600 Hz)", () => {
    const bytes = readFileSync(new URL("../fixtures/text/jump-600hz.txt", import.meta.url));
    const recording = readCsv(bytes, { header: 0, columns: { 1: "up" }, units: { 1: "N" }, sampleRate: 600 });
    const refused = refusal(toGroundReaction(recording));
    expect(refused?.message).toMatch(
      /^no complete contact was found: the 2 contacts seen are cut by the recording's ends; the vertical force/,
    );
    expect(refused?.message).not.toContain("sampling rate");
  });
});

describe("two contacts are a pair, and no whole stride (was said to be 1 stride)", () => {
  const few = (contacts: number) =>
    said(analyseTrial(toGroundReaction(syntheticRun({ contacts }).recording)), "few-strides")?.message;
  it.each([
    [2, "1 pair of contacts, and no whole stride, was recorded"],
    [4, "2 strides were recorded"],
  ])("%d contacts", (contacts, message) => expect(few(contacts)).toContain(message));
});

describe("numbers below zero that mean nothing (−102 and −3312 N/s were given unsaid)", () => {
  it("half-sine fit and early loading rate of a load that stays", () => {
    // Up in 5 ms, and a slow fall: no bounce.
    const contact = (i: number) => {
      const t = (i % 700) - 100;
      return t < 0 || t > 300 ? 0 : t < 5 ? 160 * t : t > 295 ? 160 * (300 - t) : 800 - 0.5 * t;
    };
    const up = Array.from({ length: 700 * 6 }, (_, i) => contact(i));
    const trial = analyseTrial(groundOf({ up, sampleRate: 1000 }), { filter: null, gait: "running" });
    const below = trial.cautions.filter(({ code }) => code === "below-zero");
    expect(below.map(({ where }) => where)).toEqual(["earlyLoadingRate", "halfSineFit"]);
    expect(below.map(({ values }) => values?.contacts)).toEqual([6, 6]);
    expect(trial.summary.metrics.earlyLoadingRate?.mean).toBeCloseTo(-500, 6);
  });
  it("an ordinary run has none", () => expect(said(analyseTrial(run), "below-zero")).toBeUndefined());
});
