import { demoNumbers } from "../../scripts/numbers/demoNumbers.js";
import { compareTrials } from "../../src/compare/index.js";
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
