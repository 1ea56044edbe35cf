import { beforeAll, describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import { trialHtml, trialText } from "../../src/report/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, cumulativeLoad, symmetryOf, type Trial } from "../../src/trial/index.js";

const flat = (text: string) => text.replace(/\s+/g, " ");

/** A run whose left foot brakes harder. */
function unevenRun(): Trial {
  const { recording } = syntheticRun({
    duration: 30,
    seed: 3,
    variability: { stepTime: 0.01, contactTime: 0.02, brakingAmplitude: 0.04, medialAmplitude: 0.05 },
    left: { brakingAmplitude: 0.3 },
    right: { brakingAmplitude: 0.25 },
  });
  return analyseTrial(toGroundReaction(recording));
}

describe("the two feet and the load per kilometre", () => {
  let trial: Trial;
  let text: string;
  beforeAll(() => {
    trial = unevenRun();
    text = trialText(trial);
  });

  it("shows the symmetry index of the metrics that speak, as symmetryOf gives it", () => {
    const braking = symmetryOf(trial, "brakingImpulse");
    if (!("index" in braking)) throw new Error(braking.message);
    expect(braking.index).toBeLessThan(-10);
    const { low, high } = braking.interval;
    const row = `Braking impulse ${braking.index.toFixed(1)} ${low.toFixed(1)} to ${high.toFixed(1)}`;
    const tables = text.slice(text.indexOf("\nLeft and right"));
    expect(flat(tables)).toContain(row);
    expect(flat(trialHtml(trial).replace(/<[^>]*>/g, " ")).replaceAll("−", "-")).toContain(row);
  });

  it("names other metrics that are apart, and how many would be by chance", () => {
    expect(flat(text)).toMatch(
      /about 2 of \d+ metrics would be by chance .*peak braking force \(-1\d\.\d %\)/,
    );
  });

  it("shows the load per kilometre and each foot's part, as cumulativeLoad gives it", () => {
    const load = cumulativeLoad(trial, "mediolateralImpulse");
    if (!("perMinute" in load) || load.perKilometre === null) throw new Error("no load");
    const { mean, left, right } = load.perKilometre;
    expect(flat(text)).toMatch(
      new RegExp(
        `Mediolateral impulse ${mean.toFixed(0)} ± \\d+ N s/km [\\d.]+ BW s/km ${left?.mean.toFixed(0)} ${right?.mean.toFixed(0)}`,
      ),
    );
    expect(flat(text)).toContain(`${load.stepsPerKilometre?.toFixed(0)} steps per kilometre`);
    expect(trialHtml(trial)).toContain("Load per kilometre");
  });

  it("stays within 80 columns", () =>
    expect(Math.max(...text.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80));
});

it("sums over a minute, and says why, without a speed; says why the feet are not compared where labels are relative", () => {
  const { recording } = syntheticRun({ duration: 12 });
  const { speed: _speed, firstFoot: _firstFoot, ...rest } = recording;
  const up = rest.channels.filter(({ name }) => name === "up");
  const text = flat(trialText(analyseTrial(toGroundReaction({ ...rest, channels: up }))));
  expect(text).toContain("Load per minute");
  expect(text).toContain("None per kilometre: no speed above 0 is stated");
  expect(text).toContain("No index of peak vertical force: which foot is called right is arbitrary");
});

it("says where touchdown and take-off distance are from, and how far off both may be", () => {
  const { recording } = syntheticRun({ duration: 12 });
  expect(flat(trialText(analyseTrial(toGroundReaction(recording))))).toMatch(
    /Touchdown from the force alone, foot level 250 N; as a whole touchdown may be off by 2\d mm, take-off by 4\d mm, differences by less/,
  );
});
