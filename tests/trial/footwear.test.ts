import { expect, it } from "vitest";
import { readTrial, writeJson } from "../../src/exchange/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { trialText } from "../../src/report/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial } from "../../src/trial/index.js";

const { recording } = syntheticRun({ contacts: 6 });
const shod = toGroundReaction({ ...recording, footwear: "road shoe, 250 g" });

it("a recording's footwear reaches the trial, its text and its JSON", () => {
  const trial = analyseTrial(shod);
  expect(shod.footwear).toBe("road shoe, 250 g");
  expect(trial.settings.footwear).toBe("road shoe, 250 g");
  expect(readTrial(writeJson(trial)).settings.footwear).toBe("road shoe, 250 g");
  expect(trialText(trial)).toMatch(/Footwear +road shoe, 250 g/);
});

it("an option counts before it, and what nobody states is null and not shown", () => {
  expect(analyseTrial(shod, { footwear: "barefoot" }).settings.footwear).toBe("barefoot");
  const unsaid = analyseTrial(toGroundReaction(recording));
  expect(unsaid.settings.footwear).toBeNull();
  expect(trialText(unsaid)).not.toContain("Footwear");
});

it.each([[""], ["a\u0007b"], [3 as unknown as string]])("refuses footwear %j", (footwear) => {
  expect(() => analyseTrial(shod, { footwear })).toThrow(expect.objectContaining({ argument: "footwear" }));
});
