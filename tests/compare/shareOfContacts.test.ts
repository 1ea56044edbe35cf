import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { metricById } from "../../src/metrics/index.js";
import { trialText } from "../../src/report/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import {
  analyseTrial,
  contactsWith,
  cumulativeLoad,
  LEAST_SHARE_OF_CONTACTS,
  symmetryOf,
  type Trial,
} from "../../src/trial/index.js";
import { baseline, changed } from "./trialOf.js";

/** A trial of 80 contacts of which some, from the second on, lack a metric. */
function lacking(count: number, id = "brakingImpulse", of: Trial = baseline(40)): Trial {
  const steps = of.steps.map((row, k) =>
    k >= 1 && k <= count ? { ...row, values: { ...row.values, [id]: null } } : row,
  );
  return { ...of, steps };
}
const why = (one: Trial, other: Trial, id = "brakingImpulse") =>
  compareTrials(one, other).notCompared.find((entry) => entry.id === id);

describe("a metric is compared where at least 90 % of the contacts of both trials have it", () => {
  it("the limit is exported and printed with the result", () => {
    expect(LEAST_SHARE_OF_CONTACTS).toBe(0.9);
    expect(compareTrials(baseline(), changed()).settings.leastShareOfContacts).toBe(LEAST_SHARE_OF_CONTACTS);
  });
  it("72 of 80 are enough", () => {
    const { metrics, notCompared } = compareTrials(lacking(8), changed());
    expect(metrics.some(({ id }) => id === "brakingImpulse")).toBe(true);
    expect(notCompared.some(({ id }) => id === "brakingImpulse")).toBe(false);
  });
  it("71 of 80 are not, in whichever trial; both shares are named", () => {
    expect(why(lacking(9), changed())).toEqual({
      id: "brakingImpulse",
      code: "too-few-contacts",
      message:
        "71 of 80 contacts (88 %) of the baseline and 80 of 80 contacts (100 %) of the changed trial have it; 90 % are needed in both",
    });
    expect(why(baseline(), lacking(30, "brakingImpulse", changed()))?.message).toContain(
      "80 of 80 contacts (100 %) of the baseline and 50 of 80 contacts (62 %) of the changed trial",
    );
    expect(compareTrials(lacking(9), changed()).metrics.some(({ id }) => id === "brakingImpulse")).toBe(
      false,
    );
  });
  it("a share just below the limit is not printed as the limit: 179 of 199 are 89.9 %", () => {
    const long = baseline(100);
    const odd = { ...long, steps: long.steps.slice(0, 199) };
    expect(why(lacking(20, "brakingImpulse", odd), changed())?.message).toContain(
      "179 of 199 contacts (89 %)",
    );
  });
  it("only what a metric needs of its neighbours is excused at the end: one contact, two, none", () => {
    const { steps } = baseline(10);
    const without = (id: string, from: number) =>
      contactsWith(
        steps.map((row, k) => ({ ...row, values: { ...row.values, [id]: k < from ? 1 : null } })),
        metricById(id),
      );
    expect(without("stepTime", 19)).toEqual({ having: 19, counted: 19, share: 1 });
    expect(without("stepTime", 18)).toEqual({ having: 18, counted: 19, share: 18 / 19 });
    expect(without("strideTime", 18)).toEqual({ having: 18, counted: 18, share: 1 });
    expect(without("brakingImpulse", 18)).toEqual({ having: 18, counted: 20, share: 0.9 });
    expect(without("brakingImpulse", 0)).toEqual({ having: 0, counted: 20, share: 0 });
    expect(contactsWith([], metricById("stepTime"))).toEqual({ having: 0, counted: 0, share: 0 });
  });
  it("by foot: each contact counts for its own", () => {
    const { steps } = lacking(3, "brakingImpulse", baseline(10));
    const entry = metricById("brakingImpulse");
    expect(contactsWith(steps, entry, "left")).toEqual({ having: 9, counted: 10, share: 0.9 });
    expect(contactsWith(steps, entry, "right")).toEqual({ having: 8, counted: 10, share: 0.8 });
  });
});

describe("a run with an impact peak on the right foot alone", () => {
  const of = (left: { impactAmplitude?: number }) =>
    analyseTrial(
      toGroundReaction(
        syntheticRun({ contacts: 48, seed: 3, left, variability: { impactAmplitude: 0.05 } }).recording,
      ),
    );
  const one = of({ impactAmplitude: 0 });
  const both = of({});
  it("the trial says how many contacts have one, in numbers and in words", () => {
    expect(one.summary.impactPeakShare).toBe(0.5);
    expect(both.summary.impactPeakShare).toBe(1);
    expect(trialText(one)).toContain("in 50 % of contacts");
  });
  it("it is neither compared nor summed nor set against the other foot, and each says why", () => {
    const { metrics, notCompared } = compareTrials(both, one);
    for (const id of ["impactPeak", "timeToImpactPeak", "averageLoadingRate", "instantaneousLoadingRate"]) {
      expect(metrics.some((metric) => metric.id === id)).toBe(false);
      expect(notCompared.find((entry) => entry.id === id)?.message).toBe(
        "48 of 48 contacts (100 %) of the baseline and 24 of 48 contacts (50 %) of the changed trial have it; 90 % are needed in both",
      );
    }
    expect(metrics.some(({ id }) => id === "earlyLoadingRate")).toBe(true);
    expect(cumulativeLoad(one, "impactPeak")).toMatchObject({ code: "too-few-contacts" });
    expect(symmetryOf(one, "impactPeak")).toEqual({
      id: "impactPeak",
      code: "too-few-contacts",
      message: "0 of 24 contacts of the left foot have it; 90 % are needed",
    });
  });
});
