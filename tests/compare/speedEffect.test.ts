import { describe, expect, it } from "vitest";
import {
  type CompareTrialsOptions,
  compareTrials,
  PUBLISHED_SPEED_EFFECTS,
  SAME_SPEED,
} from "../../src/compare/index.js";
import { baseline, changed } from "./trialOf.js";

const compare = (to: number, factors = {}, options: CompareTrialsOptions = {}) =>
  compareTrials(baseline(40, { speed: 3 }), changed(factors, 40, { speed: to }), options);
const metric = (comparison: ReturnType<typeof compare>, id: string) =>
  comparison.metrics.find((entry) => entry.id === id);
const removed = { speedEffect: "removed" } as const;
const own = { mediolateralImpulse: { value: 0, unit: "N s", source: "an own series of speeds" } };

describe("published effects of speed, worked by hand from what the sources print", () => {
  const slopeOf = (id: string, source: string) =>
    PUBLISHED_SPEED_EFFECTS.find((effect) => effect.metric === id && effect.source.includes(source))?.value;
  it.each([
    ["peakVerticalForce", "Keller", (2.5 - 1.2) / (6 - 1.5)],
    ["peakVerticalForce", "Munro", (2.8 - 2.5) / (5 - 3)],
    ["peakVerticalForce", "Weyand", (Math.PI / 2) * ((0.105 + 0.106) / 2)],
    ["meanVerticalForce", "Weyand", (0.105 + 0.106) / 2],
    ["impactPeak", "Munro", (2.3 - 1.6) / (5 - 3)],
    ["brakingImpulse", "Munro", (0.25 - 0.15) / (5 - 3) / 9.80665],
    ["contactTime", "Kipp", (0.19 - 0.28) / (5 - 2.2)],
  ])("%s, %s", (id, source, slope) => expect((slopeOf(id, source) ?? 0) / slope).toBeCloseTo(1, 3));
  it("each says what was read, and those from memory say so in the source", () => {
    for (const { read, source } of PUBLISHED_SPEED_EFFECTS)
      expect(source.includes("from memory")).toBe(read === "from memory");
  });
});

describe("what the difference in speed alone would do", () => {
  it("is shown: 0.1657 BW per m/s of 70 kg and 0.1 m/s, without taking anything off", () => {
    const found = compare(3.1);
    expect(metric(found, "peakVerticalForce")?.speedAlone?.difference).toBeCloseTo(
      0.1657 * 0.1 * 70 * 9.80665,
      9,
    );
    expect(metric(found, "peakVerticalForce")?.speedAlone?.takenOff).toBe(false);
    expect(metric(found, "mediolateralImpulse")?.speedAlone).toBeUndefined();
    const caution = found.cautions.find(({ code }) => code === "speed-alone");
    expect(caution?.message).toContain(
      "peak vertical force by +11.37 N (+0.7 %; published effects reach from +0.6 to +1.2 %)",
    );
    expect(caution?.message).toContain("nothing was taken off");
    expect(found.components[0]?.sentence).toContain(
      "the difference in speed alone would make about +0.7 %, which was not taken off",
    );
    expect(found.overall.reading).toBe("unsettled");
  });
  it("has the sign of the difference in speed", () => {
    const there = compareTrials(baseline(40, { speed: 3 }), changed({}, 40, { speed: 3.1 }));
    const back = compareTrials(baseline(40, { speed: 3.1 }), changed({}, 40, { speed: 3 }));
    expect(metric(back, "peakVerticalForce")?.speedAlone?.difference).toBeCloseTo(
      -(metric(there, "peakVerticalForce")?.speedAlone?.difference ?? 0),
      9,
    );
  });
  it("is not said where the speeds are within half a per cent, or beyond the speeds of the source", () => {
    expect(SAME_SPEED).toBe(0.005);
    expect(metric(compare(3.0149), "peakVerticalForce")?.speedAlone).toBeUndefined();
    expect(metric(compare(3.0151), "peakVerticalForce")?.speedAlone).toBeDefined();
    expect(metric(compare(2.95), "brakingImpulse")?.speedAlone).toBeUndefined();
  });
  it("needs the mass where the effect is in body weights", () => {
    const parts = { mass: null, massByForce: null };
    const found = compareTrials(
      baseline(40, { ...parts, speed: 3 }),
      changed({}, 40, { ...parts, speed: 3.1 }),
    );
    expect(metric(found, "peakVerticalForce")?.speedAlone).toBeUndefined();
  });
});

describe("taken off on request", () => {
  it("moves the difference and its intervals by the effect, and neither mean", () => {
    const [kept, off] = [compare(3.1), compare(3.1, {}, removed)].map((one) =>
      metric(one, "peakVerticalForce"),
    );
    const effect = kept?.speedAlone?.difference ?? Number.NaN;
    expect(off?.speedAlone?.takenOff).toBe(true);
    expect(off?.difference).toBeCloseTo((kept?.difference ?? 0) - effect, 9);
    expect(off?.readingInterval.low).toBeCloseTo((kept?.readingInterval.low ?? 0) - effect, 9);
    expect(off?.interval.high).toBeCloseTo((kept?.interval.high ?? 0) - effect, 9);
    expect(off?.bootstrapInterval?.low).toBeCloseTo((kept?.bootstrapInterval?.low ?? 0) - effect, 9);
    expect(off?.normalised?.difference).toBeCloseTo((kept?.normalised?.difference ?? 0) - 0.1657 * 0.1, 9);
    expect(off?.changed).toEqual(kept?.changed);
    expect(off?.perKilometre).toBeUndefined();
  });
  it("2026-11-25: `goes from 1652 to 1683 N (-0.2 %` contradicted itself where the effect of speed was taken off", () => {
    const { components, overall } = compare(3.1, { peakVerticalForce: 1.005, brakingImpulse: 1.4 }, removed);
    expect(components[0]?.sentence).toMatch(
      /peak vertical force goes from \d+ to \d+ N \([+-]?\d\.\d % beside the effect of speed, 99 % interval /,
    );
    expect(overall.sentence).toMatch(
      /the anteroposterior \(braking\) force is higher \(\+\d+\.\d % beside the effect of speed\)/,
    );
    expect(JSON.stringify(compare(3.1, { brakingImpulse: 1.4 }))).not.toContain("beside the effect of speed");
  });
  it("lets a component be read, and one without a known effect stays unsettled", () => {
    const { components, overall, work } = compare(3.1, { brakingImpulse: 1.4 }, removed);
    expect(components.map(({ reading }) => reading)).toEqual(["similar", "higher", "unsettled"]);
    expect(components[2]?.sentence).toContain("Mediolateral unsettled (speeds apart, effect unknown)");
    expect(overall.reading).toBe("raised");
    expect(overall.sentence).toContain(
      "What the difference in speed alone does in other runners was taken off: peak vertical force and braking impulse.",
    );
    expect(overall.toSettle).toContain(
      "both recordings at one speed, or an effect of speed with its source for every component",
    );
    expect(work.reading).toBe("unsettled");
  });
  it("a lower load at another speed is no `reduced`: per kilometre nothing is taken off", () => {
    const options = { ...removed, speedEffects: own };
    const { overall } = compare(3.1, { peakVerticalForce: 0.9 }, options);
    expect(overall).toMatchObject({ reading: "unsettled", lower: ["vertical"] });
    expect(overall.sentence).toContain("what the speed alone does to the number of steps was not taken out");
    expect(overall.toSettle).toContain("both recordings at one speed");
  });
  it("an own effect with its source takes the place of a published one; it may be negative and in per cent", () => {
    const effect = { value: -5, unit: "%", source: "an own series of speeds" };
    const found = compare(3.1, {}, { ...removed, speedEffects: { peakVerticalForce: effect } });
    const vertical = metric(found, "peakVerticalForce");
    expect(vertical?.speedAlone).toEqual({
      difference: -0.05 * (vertical?.baseline.mean ?? 0) * (3.1 - 3),
      source: "an own series of speeds",
      takenOff: true,
    });
    expect(found.cautions.find(({ code }) => code === "speed-alone")?.message).toContain(
      "how much runners differ in it is not known",
    );
  });
  it("changes nothing at one speed", () => {
    const { settings: _, ...one } = compare(3, {}, removed);
    const { settings: __, ...other } = compare(3);
    expect(one).toEqual(other);
  });
});
