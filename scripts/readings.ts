/**
 * Writes `docs/readings.md`: how often a comparison says what, of whole synthetic recordings with and without a true
 * change. Takes some minutes, so it runs apart from the checks; the page names its commit.
 */
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { compareTrials, type OverallReading } from "../src/compare/index.js";
import { toGroundReaction } from "../src/force/index.js";
import { CATALOGUE } from "../src/metrics/index.js";
import { type SyntheticRunOptions, syntheticRun } from "../src/synthetic/index.js";
import { analyseTrials } from "../src/trial/index.js";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
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
const none = { words: "none", pairs: 1000, stance: {} };
const CASES: readonly Case[] = [
  { ...none, contacts: 62, correlation: 0 },
  { ...none, contacts: 62, correlation: 0.3 },
  { ...none, contacts: 102, correlation: 0.6 },
  { words: "landing further ahead", pairs: 200, contacts: 62, correlation: 0.3, stance: furtherAhead },
  {
    words: "more braking, 12 %",
    pairs: 200,
    contacts: 62,
    correlation: 0.3,
    stance: { brakingAmplitude: 0.28 },
  },
];

/** Counts of each reading; both recordings of a pair have seeds of their own. */
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
    const { reading } = compareTrials(baseline, changed, { metrics }).overall;
    counts.set(reading, (counts.get(reading) ?? 0) + 1);
  }
  return counts;
}

const rows = CASES.map((one) => {
  const counts = countsOf(one);
  console.log(one.words, one.correlation, Object.fromEntries(counts));
  const cells = WORDS.map((word) => ((100 * (counts.get(word) ?? 0)) / one.pairs).toFixed(1));
  return `| ${one.words} | ${one.pairs} | ${one.contacts / 2 - 1} | ${one.correlation} | ${cells.join(" | ")} |`;
});
const commit = execFileSync("git", ["describe", "--always", "--dirty"], { encoding: "utf8" }).trim();
writeFileSync(
  "docs/readings.md",
  `# How often a comparison says what

Pairs of whole synthetic recordings, analysed and compared with every default: a treadmill run whose steps vary as one runner's
do, each stride correlated with the next as stated. Per cent of pairs. Without a true change every reading but
\`no clear change\` is a false alarm, and \`unsettled\` where it stands for too few strides says so rather than alarm.

| true change | pairs | strides | correlation | ${WORDS.map((word) => `\`${word}\``).join(" | ")} |
|---|---|---|---|${WORDS.map(() => "---|").join("")}
${rows.join("\n")}

Both recordings of a pair come from one model of a runner, so the table shows what variation from stride to stride does. What
differs from day to day no pair can show. \`npm run readings\` wrote this page on ${new Date().toISOString().slice(0, 10)} at commit ${commit}.
`,
);
console.log("docs/readings.md written");
