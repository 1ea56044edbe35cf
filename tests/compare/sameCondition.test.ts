import { expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrials } from "../../src/trial/index.js";

/**
 * Whole recordings of one runner who changes nothing: synthetic truth, so that every reading but "no clear change" is a
 * false alarm. The seeds are fixed; `docs/readings.md` holds the figures of more pairs.
 */
const RECORDING = {
  contacts: 62,
  sampleRate: 500,
  noise: { force: 2, cop: 0.001 },
  variability: {
    stepTime: 0.01,
    contactTime: 0.015,
    impactAmplitude: 0.07,
    brakingAmplitude: 0.05,
    lateralAmplitude: 0.12,
    medialAmplitude: 0.08,
  },
  correlation: 0.3,
} as const;

it("law: 150 pairs of 30 strides of the same condition read `no clear change` at least 97 times in 100", () => {
  const primaries = CATALOGUE.filter(({ primary, id }) => primary || id === "stepTime");
  const readings: Record<string, number> = {};
  for (let pair = 0; pair < 150; pair++) {
    const grounds = [2 * pair, 2 * pair + 1].map((seed) =>
      toGroundReaction(syntheticRun({ ...RECORDING, seed }).recording),
    );
    const [baseline, changed] = analyseTrials(grounds, { metrics: primaries });
    if (baseline === undefined || changed === undefined) throw new Error("two trials are analysed");
    expect(baseline.summary.strides).toBeGreaterThanOrEqual(30);
    const { reading } = compareTrials(baseline, changed, { metrics: primaries }).overall;
    readings[reading] = (readings[reading] ?? 0) + 1;
  }
  expect(readings["no clear change"] ?? 0, JSON.stringify(readings)).toBeGreaterThanOrEqual(146);
});
