import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { trialText } from "../../src/report/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { analyseTrial, stridePairs, type Trial } from "../../src/trial/index.js";
import { groundOf } from "../helpers.js";

/** Contacts that hold several are in no mean and no reading; each test names what was seen on 2026-11-25. */
const BW = 70 * 9.80665;
const codes = ({ cautions }: Trial) => cautions.map(({ code }) => code);
/** Half sines of the body weight over the step, braking and propulsion of one amplitude; step times vary by 2 %. */
const jog = (contact: number, step: number, contacts: number, seed: number) => {
  const random = seededRandom(seed);
  const length = Math.round((1 + contacts * step * 1.1) * 1000);
  const [up, forward, right] = [0, 1, 2].map(() => new Float64Array(length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let from = 0.3;
  for (let k = 0; k < contacts; k++) {
    for (let i = Math.ceil(from * 1000); i < (from + contact) * 1000; i++) {
      const part = (i / 1000 - from) / contact;
      up[i] = ((BW * step * Math.PI) / (2 * contact)) * Math.sin(Math.PI * part);
      forward[i] = -0.2 * BW * Math.sin(2 * Math.PI * part);
      right[i] = (k % 2 === 0 ? -0.05 : 0.05) * BW * Math.sin(Math.PI * part);
    }
    from += step * (1 + 0.02 * random.normal());
  }
  return groundOf({ up, forward, right, sampleRate: 1000, speed: 2, surface: "belt" });
};
// Both sides of the truth: ∫ 0.2 W sin over half a contact is 0.2 W × contact ÷ π.
const braking = (contact: number) => (0.2 * BW * contact) / Math.PI;
const usual = analyseTrial(jog(0.33, 0.385, 200, 1));
const fused = analyseTrial(jog(0.36, 0.385, 200, 2));
const mean = (trial: Trial, id: string) => trial.summary.metrics[id]?.mean ?? Number.NaN;

describe("flights of 25 ± 8 ms, of which most are bridged", () => {
  it("braking impulse and contact time are those of single contacts (33.5 N s were given, 15.7 are true)", () => {
    expect(fused.partialContacts.length).toBeGreaterThan(20);
    expect(mean(fused, "brakingImpulse") / braking(0.36)).toBeCloseTo(1, 2);
    expect(mean(fused, "contactTime")).toBeCloseTo(0.36, 2);
    expect(mean(usual, "brakingImpulse") / braking(0.33)).toBeCloseTo(1, 2);
  });
  it("no stride spans one that is left out", () => {
    const pairs = stridePairs(fused.steps, fused);
    expect(pairs.length).toBe(fused.summary.strides);
    for (const [first = 0, second = 0] of pairs) {
      const [a, b] = [first, second].map((k) => fused.steps[k]?.initialContact ?? Number.NaN);
      expect((b as number) - (a as number)).toBeLessThan(0.45);
    }
    expect(mean(fused, "stepTime")).toBeLessThan(0.41);
  });
  it("they are no time between contacts in which the platform is unloaded", () =>
    expect(codes(fused).filter((code) => code.startsWith("flight-"))).toEqual([]));
  it("the report says how many", () => {
    const several = fused.cautions.find(({ code }) => code === "long-contact")?.values?.leftOut;
    expect(several).toBe(fused.partialContacts.length);
    expect(trialText(fused).replace(/\s+/g, " ")).toContain(
      `${several} contacts that hold several, read as one`,
    );
  });
  it("the comparison is unsettled, and says why (shifted, +133 % was read)", () => {
    const { overall } = compareTrials(usual, fused);
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toMatch(
      /of the contacts \d+ % of the changed trial were read as one with others/,
    );
    expect(overall.toSettle?.join()).toContain("shorter shortest flight");
  });
  it("a few contacts left out are no obstacle", () => {
    const few = analyseTrial(jog(0.33, 0.385, 200, 3));
    const { initialContact, toeOff } = few.contacts[20] as { initialContact: number; toeOff: number };
    const { force, ...ground } = jog(0.33, 0.385, 200, 3);
    const gone = (samples: Float64Array = new Float64Array()) =>
      samples.map((value, i) => (i / 1000 > initialContact - 0.01 && i / 1000 < toeOff + 0.01 ? 0 : value));
    const missed = analyseTrial({
      ...ground,
      force: { up: gone(force.up), forward: gone(force.forward), right: gone(force.right) },
    });
    expect(codes(missed)).toContain("contacts-missed");
    expect(compareTrials(usual, missed).overall.sentence).not.toContain("fair sample");
  });
});

describe("a trial without a single contact is refused, with what parts contacts", () => {
  const refusal = (up: ArrayLike<number>, gait: "auto" | "walking" | "running" = "auto") => {
    try {
      analyseTrial(groundOf({ up, sampleRate: 1000, mass: null }), { gait });
    } catch (caught) {
      return caught as { code: string; message: string };
    }
    return null;
  };
  it("flights of 20 ms throughout (1 running contact of 16 s was given)", () => {
    const up = new Float64Array(17_000);
    for (let i = 300; i < 16_300; i++)
      up[i] = Math.max(0, 1130 * Math.sin((Math.PI * ((i - 300) % 400)) / 380));
    const refused = refusal(up);
    expect(refused?.code).toBe("no-contact");
    expect(refused?.message).toMatch(/the only contact seen is several in one \(1\d\.\d\d s long\)/);
    expect(refused?.message).toMatch(/drop of less than 0\.03 s is bridged .* smaller shortestFlight/);
    expect(refused?.message).not.toContain("sampling rate");
  });
  it.each(["auto", "walking", "running"] as const)(
    "a walk on one belt, `up` alone, gait %s (contact time 15.72 s was summarised)",
    (gait) => {
      const up = Float64Array.from({ length: 17_000 }, (_, i) =>
        i < 300 || i > 16_000 ? 0 : 690 + 150 * Math.cos((2 * Math.PI * (i - 300)) / 520),
      );
      const refused = refusal(up, gait);
      expect(refused?.code).toBe("no-contact");
      expect(refused?.message).toContain("is several in one (15.71 s long)");
      expect(refused?.message.includes("both feet were on one plate")).toBe(gait !== "running");
    },
  );
});
