import { demoNumbers } from "../../scripts/numbers/demoNumbers.js";
import { compareRunners, compareSessions, compareTrials, reliability } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import type { Recording } from "../../src/recording/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { analyseTrial } from "../../src/trial/index.js";

/** The first seconds of a recording, its vertical force alone, with nothing known of the runner. */
function verticalAlone({ channels, sampleRate }: Recording, seconds: number): Recording {
  return {
    sampleRate,
    startTime: 0,
    channels: channels
      .filter(({ quantity, direction }) => quantity === "force" && direction === "up")
      .map((channel) => ({ ...channel, samples: channel.samples.slice(0, seconds * sampleRate) })),
    subject: {},
    origin: { format: "none" },
    cautions: [],
  };
}

const { usual, furtherAhead } = demoRecordings();
const demo = demoNumbers();
const vertical = [usual, furtherAhead].map((recording) =>
  analyseTrial(toGroundReaction(verticalAlone(recording, 8))),
) as [ReturnType<typeof analyseTrial>, ReturnType<typeof analyseTrial>];

/** Results as the library computes them: with everything known, with the vertical force alone, with one contact. */
export const TRIALS = {
  whole: demo.trial,
  vertical: vertical[0],
  oneContact: analyseTrial(toGroundReaction(verticalAlone(usual, 0.75), { offset: "none", drift: "never" })),
} as const;

/** The same of comparisons. */
export const COMPARISONS = {
  whole: demo.comparison,
  vertical: compareTrials(vertical[0], vertical[1]),
} as const;

/** The same of how well trials repeat: of one runner, and of two. */
export const RELIABILITIES = {
  oneRunner: reliability([vertical[0], vertical[1]]),
  twoRunners: reliability([
    { runner: "1", trials: [demo.trial, demo.trial] },
    { runner: "2", trials: vertical },
  ]),
} as const;

/** The same of runners, paired and in groups. */
export const RUNNERS = {
  paired: compareRunners(
    ["1", "2"].map((runner) => ({ runner, baseline: { ...demo.trial }, changed: { ...demo.trial } })),
  ),
  groups: compareRunners({
    baseline: [
      { runner: "1", trials: vertical[0] },
      { runner: "2", trials: { ...vertical[1] } },
    ],
    changed: [
      { runner: "3", trials: [{ ...vertical[0] }, { ...vertical[1] }] },
      { runner: "4", trials: { ...vertical[1] } },
    ],
  }),
} as const;

/** The same of sessions, with and without a baseline. */
export const SESSIONS = {
  whole: compareSessions(
    [1, 2, 3, 4].map((month) => ({
      name: `month ${month}`,
      trials: { ...(month === 4 ? vertical[1] : vertical[0]) },
    })),
    { baselineSessions: 3 },
  ),
  without: compareSessions([{ name: "one", trials: vertical[0] }]),
} as const;
