import { type Comparison, compareTrials } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { analyseTrials, type Trial } from "../../src/trial/index.js";

/** The demo's usual trial, and its comparison with the changed one, as the command line computes them. */
export function demoNumbers(): { readonly trial: Trial; readonly comparison: Comparison } {
  const { usual, furtherAhead } = demoRecordings();
  const [trial, changed] = analyseTrials(
    [usual, furtherAhead].map((recording) => toGroundReaction(recording)),
  );
  if (trial === undefined || changed === undefined) throw new Error("two recordings gave no two trials");
  return { trial, comparison: compareTrials(trial, changed) };
}
