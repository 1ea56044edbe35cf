import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";

/** What a recording lacks is said metric by metric, never given as zero; every id of the catalogue is one or the other. */
const { recording } = syntheticRun({ contacts: 30, noise: { force: 1 } });
const only = (...names: string[]) => ({
  ...recording,
  channels: recording.channels.filter(({ name }) => names.includes(name)),
});
const reasons = ({ notComputed }: Trial) =>
  Object.fromEntries(notComputed.map(({ id, code, message }) => [id, `${code}: ${message}`]));
const trial = analyseTrial(toGroundReaction(only("up")));

it.each([
  ["the vertical force alone", trial],
  ["everything", analyseTrial(toGroundReaction(recording))],
  ["two contacts", analyseTrial(toGroundReaction(syntheticRun({ contacts: 2 }).recording))],
])("%s: each metric is computed or has its reason, once", (_, of) => {
  const listed = of.notComputed.map(({ id }) => id);
  expect([...listed, ...Object.keys(of.summary.metrics)].sort()).toEqual(
    CATALOGUE.map(({ id }) => id).sort(),
  );
  for (const { message, code } of of.notComputed) {
    expect(code).toMatch(/^[a-z-]+$/);
    expect(message.length).toBeGreaterThan(10);
  }
});

describe("the vertical force alone", () => {
  const forward = "missing-channel: the forward force was not recorded";
  const right = "missing-channel: the mediolateral force was not recorded";
  it.each([
    ...["brakingTime", "propulsiveTime", "brakingImpulse", "propulsiveImpulse", "netForwardImpulse"].map(
      (id) => [id, forward],
    ),
    ...["peakBrakingForce", "peakPropulsiveForce", "brakingLoadingRate"].map((id) => [id, forward]),
    ...["positiveWorkForward", "positiveExternalWork", "pushToBrakeTimeRatio"].map((id) => [id, forward]),
    ...["touchdownDistance", "takeOffDistance"].map((id) => [id, forward]),
    ...["mediolateralImpulse", "medialImpulse", "lateralImpulse", "peakMedialForce"].map((id) => [id, right]),
    ...["peakLateralForce", "mediolateralExcursion", "positiveWorkLateral"].map((id) => [id, right]),
    ["stepWidth", "missing-channel: the mediolateral centre of pressure was not recorded"],
    ["strikeIndex", "missing-channel: the anteroposterior centre of pressure was not recorded"],
  ] as [string, string][])("%s", (id, reason) => expect(reasons(trial)[id]).toBe(reason));
  it.each(["peakResultantForce", "peakFreeMoment", "freeMomentImpulse"])("%s: a channel is missing", (id) =>
    expect(reasons(trial)[id]).toMatch(/^missing-channel: /),
  );
  it("what it does tell is there: the impact peaks' share and the spread between strides", () => {
    expect(trial.summary.impactPeakShare).toBe(1);
    for (const id of ["peakVerticalForce", "contactTime", "verticalOscillation", "verticalStiffness"]) {
      expect(trial.summary.metrics[id]?.sd, id).toBeGreaterThan(0);
      expect(trial.summary.metrics[id]?.n, id).toBeGreaterThan(10);
    }
    expect(trial.settings.landing).toBeNull();
  });
});

it("without a surface that is stated or shows, what needs one says so", () => {
  const { surface: _, ...bare } = only("up", "forward");
  const missing = analyseTrial(toGroundReaction(bare)).notComputed.filter(
    ({ code }) => code === "missing-surface",
  );
  expect(missing.map(({ id }) => id)).toContain("stepLength");
});
