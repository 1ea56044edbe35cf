import { compareTrials, type OverallReading } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrials } from "../../src/trial/index.js";

const WORDS: readonly OverallReading[] = ["no clear change", "shifted", "reduced", "raised", "unsettled"];
const metrics = CATALOGUE.filter(({ primary, id }) => primary || id === "stepTime");

const runner = {
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
} as const satisfies SyntheticRunOptions;

/** A true change of the stance, by its own formula. */
const furtherAhead: SyntheticRunOptions["stance"] = {
  stepTime: 0.338,
  contactTime: 0.273,
  brakingAmplitude: 0.29,
  medialAmplitude: 0.105,
};

interface Case {
  readonly words: string;
  readonly pairs: number;
  readonly contacts: number;
  readonly correlation: number;
  readonly stance: SyntheticRunOptions["stance"];
}
const none = { words: "none", pairs: 200, stance: {} };
const CASES: readonly Case[] = [
  { ...none, contacts: 62, correlation: 0 },
  { ...none, contacts: 62, correlation: 0.3 },
  { ...none, contacts: 102, correlation: 0.6 },
  { words: "landing further ahead", pairs: 100, contacts: 62, correlation: 0.3, stance: furtherAhead },
  {
    words: "more braking, 12 %",
    pairs: 100,
    contacts: 62,
    correlation: 0.3,
    stance: { brakingAmplitude: 0.28 },
  },
];

/** Readings of whole synthetic recordings as a table; both recordings of a pair have seeds of their own. */
export function wholeRecordings(): string {
  const rows = CASES.map((one) => {
    const counts = countsOf(one);
    const cells = WORDS.map((word) => ((100 * (counts.get(word) ?? 0)) / one.pairs).toFixed(1));
    return `| ${one.words} | ${one.pairs} | ${one.contacts / 2 - 1} | ${one.correlation} | ${cells.join(" | ")} |`;
  });
  return `| true change | pairs | strides | correlation | ${WORDS.map((word) => `\`${word}\``).join(" | ")} |
|---|---|---|---|${WORDS.map(() => "---|").join("")}
${rows.join("\n")}`;
}

function countsOf({ pairs, contacts, correlation, stance }: Case): Map<OverallReading, number> {
  const counts = new Map<OverallReading, number>();
  for (let pair = 0; pair < pairs; pair++) {
    const common = { ...runner, contacts, correlation };
    const recordings = [
      syntheticRun({ ...common, seed: 10_000 + 2 * pair }),
      syntheticRun({ ...common, stance, seed: 10_001 + 2 * pair }),
    ];
    const [baseline, changed] = analyseTrials(
      recordings.map(({ recording }) => toGroundReaction(recording)),
      { metrics },
    );
    if (baseline === undefined || changed === undefined) throw new Error("two recordings gave no two trials");
    const { reading } = compareTrials(baseline, changed, { metrics, resamples: 100 }).overall;
    counts.set(reading, (counts.get(reading) ?? 0) + 1);
  }
  return counts;
}
