import { describe, expect, it } from "vitest";
import {
  demoRecordings,
  type SyntheticTruth,
  syntheticRun,
  type TrueValues,
} from "../../src/synthetic/index.js";
import { column } from "./helpers.js";

const demo = demoRecordings();
const WEIGHT = 70 * 9.80665;

/** Mean and SD over strides (means of two successive contacts). */
function strides({ contacts }: SyntheticTruth, value: (values: TrueValues) => number) {
  const means: number[] = [];
  for (let i = 0; i + 1 < contacts.length; i += 2) {
    const [a, b] = contacts.slice(i, i + 2);
    if (a && b) means.push((value(a.values) + value(b.values)) / 2);
  }
  const mean = means.reduce((sum, x) => sum + x, 0) / means.length;
  const sd = Math.sqrt(means.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (means.length - 1));
  return { n: means.length, mean, sd };
}

function change(value: (values: TrueValues) => number) {
  const usual = strides(demo.truth.usual, value);
  const ahead = strides(demo.truth.furtherAhead, value);
  const pooled = Math.sqrt((usual.sd ** 2 + ahead.sd ** 2) / 2);
  return { percent: 100 * (ahead.mean / usual.mean - 1), inSd: (ahead.mean - usual.mean) / pooled };
}

describe("common practice: the demonstration's runner is a recreational one", () => {
  it.each([
    ["vertical peak, body weights", (v: TrueValues) => v.peakVerticalForce / WEIGHT, 2, 2.5],
    ["steps a minute", (v: TrueValues) => v.cadence, 165, 185],
    ["braking peak, body weights", (v: TrueValues) => v.peakBrakingForce / WEIGHT, 0.2, 0.35],
    ["medial peak, body weights", (v: TrueValues) => v.peakMedialForce / WEIGHT, 0.05, 0.15],
    ["contact time, s", (v: TrueValues) => v.contactTime, 0.23, 0.275],
  ] as const)("mean %s between %f and %f", (_, value, low, high) => {
    for (const truth of [demo.truth.usual, demo.truth.furtherAhead]) {
      const { mean } = strides(truth, value);
      expect(mean).toBeGreaterThan(low);
      expect(mean).toBeLessThan(high);
    }
  });
});

describe("common practice, direction only: landing further ahead of the centre of mass at the same speed", () => {
  it.each([
    ["lowers the vertical peak by 5 to 8 %", (v: TrueValues) => v.peakVerticalForce, -8, -5, -3],
    ["raises the braking impulse", (v: TrueValues) => v.brakingImpulse, 20, 40, 3],
    ["raises the mediolateral impulse", (v: TrueValues) => v.mediolateralImpulse, 15, 35, 2],
    ["raises the external work a metre", (v: TrueValues) => v.positiveExternalWork / v.stepLength, 5, 15, 2],
    ["lengthens the contact", (v: TrueValues) => v.contactTime, 5, 9, 3],
    ["lands further ahead", (v: TrueValues) => v.touchdownDistance, 7, 13, 3],
  ] as const)("%s, far beyond the strides' SD", (_, value, low, high, inSd) => {
    const { percent, inSd: found } = change(value);
    expect(percent).toBeGreaterThan(low);
    expect(percent).toBeLessThan(high);
    if (inSd < 0) expect(found).toBeLessThan(inSd);
    else expect(found).toBeGreaterThan(inSd);
  });

  it("puts the foot 25 mm further ahead by the law alone, as its documentation says", () => {
    const [usual, ahead] = [
      {},
      { stepTime: 0.338, contactTime: 0.273, brakingAmplitude: 0.29, crossShare: 0.5 },
    ].map((stance) => syntheticRun({ stance, contacts: 1 }).truth.contacts[0]?.values.touchdownDistance ?? 0);
    expect(((ahead as number) - (usual as number)) * 1000).toBeCloseTo(25, 0);
  });
});

describe("as files", () => {
  it.each(["usual", "furtherAhead"] as const)(
    "%s: 30 s at 1 kHz, at least 40 whole strides, below 1.5 MB of text",
    (name) => {
      const recording = demo[name];
      expect(recording).toMatchObject({ sampleRate: 1000, surface: "belt", speed: 3, subject: { mass: 70 } });
      expect(column(recording, "up").length).toBe(30_000);
      expect(demo.truth[name].contacts.length).toBe(88);
      expect(demo.truth[name].partialContacts.length).toBe(2);
      expect(recording.firstFoot).toBe(demo.truth[name].contacts[0]?.side);
      let text = 0;
      for (let i = 0; i < 30_000; i++) {
        text += `${i / 1000}`.length + 1;
        for (const { samples } of recording.channels) {
          const value = samples[i] as number;
          text += Number.isNaN(value) ? 1 : `${value}`.length + 1;
        }
      }
      expect(text).toBeLessThan(1.5e6);
    },
  );

  it("is the same every time", () => {
    const again = demoRecordings();
    expect(again.usual).toEqual(demo.usual);
    expect(again.furtherAhead).toEqual(demo.furtherAhead);
    expect(demo.usual).not.toEqual(demo.furtherAhead);
  });
});
