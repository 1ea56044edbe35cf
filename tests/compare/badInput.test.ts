import { expect, it } from "vitest";
import { compareTrials, type RunnerTrials, reliability } from "../../src/compare/index.js";
import type { Metric } from "../../src/metrics/index.js";
import type { Trial } from "../../src/trial/index.js";
import { baseline, changed } from "./trialOf.js";

const bare = { schema: "gait-kinetics/trial/1" } as unknown as Trial;
const { events: _, ...settings } = baseline().settings;
const refuses = (call: () => unknown, code: string, message: RegExp) => {
  expect(call).toThrow(expect.objectContaining({ code }));
  expect(call).toThrow(message);
};

it("2026-11-25: `metrics: null` of reliability was a TypeError", () => {
  const trials = [baseline(), changed()];
  for (const metrics of [null, [null], ["contactTime"], {}])
    refuses(
      () => reliability(trials, { metrics: metrics as unknown as Metric[] }),
      "wrong-type",
      /catalogue entries is needed/,
    );
});

it("2026-11-25: an object with a trial's schema alone was a TypeError on its filter", () => {
  refuses(() => compareTrials(bare, bare), "wrong-type", /^baseline calls itself a trial and lacks settings/);
  refuses(() => compareTrials(baseline(), bare), "wrong-type", /^changed calls itself a trial/);
  refuses(() => compareTrials([baseline(), bare], changed()), "wrong-type", /calls itself a trial/);
  refuses(
    () => compareTrials(baseline(), { ...baseline(), settings } as unknown as Trial),
    "wrong-type",
    /lacks settings\.events;/,
  );
  refuses(() => reliability([baseline(), bare]), "wrong-type", /^trials\[1\] calls itself a trial/);
  const runners: RunnerTrials[] = [{ runner: "Ida", trials: [baseline(), bare] }];
  refuses(() => reliability(runners), "wrong-type", /^trials\[1\] of Ida calls itself a trial/);
});

it("2026-11-25: a margin of 1e308 of the mean was an infinite number in the answer", () => {
  refuses(() => compareTrials(baseline(), changed(), { similarMargin: 1e308 }), "out-of-range", /1000/);
  const change = { value: 1e308, unit: "%", source: "none" };
  refuses(
    () => compareTrials(baseline(), changed(), { margins: { brakingImpulse: change } }),
    "out-of-range",
    /margins\.brakingImpulse/,
  );
});
