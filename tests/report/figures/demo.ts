import { toGroundReaction } from "../../../src/force/index.js";
import { demoRecordings } from "../../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../../src/trial/index.js";

/** The demo's two trials. */
export function demoTrials(): { readonly usual: Trial; readonly furtherAhead: Trial } {
  const { usual, furtherAhead } = demoRecordings();
  return {
    usual: analyseTrial(toGroundReaction(usual)),
    furtherAhead: analyseTrial(toGroundReaction(furtherAhead)),
  };
}
