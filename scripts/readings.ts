/**
 * Writes `docs/readings.md`: how often a comparison names a component lower or higher where nothing changed, and how often it
 * finds what did. Takes some minutes of one core, so it runs apart from the checks; the page names its commit. Seeded.
 */
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type FalseAlarms, falseAlarms } from "./readings/falseAlarms.js";
import { power, reducedShare } from "./readings/power.js";
import type { Condition, LongMemory, Slow } from "./readings/strides.js";
import { wholeRecordings } from "./readings/wholeRecordings.js";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const PAIRS = 1000;
const STRIDES = [20, 40, 80];
const CORRELATIONS = [0, 0.3, 0.6];
const BOOTSTRAP = { method: "bootstrap", resamples: 1000 } as const;

const kinds = (line: number, wave: number, run: number): readonly (readonly [string, Slow])[] => [
  [`each trial a straight line, ${line} SD`, { kind: "line", size: line }],
  [`each trial a slow wave (0.95), ${wave} SD`, { kind: "wave", size: wave }],
  [`both cut from one run of 400 strides with a slow wave (0.99), ${wave} SD`, { kind: "cut", size: wave }],
  [`one behind the other in a run that drifts by ${run} SD in 400 strides`, { kind: "run", size: run }],
];
const SMALL: readonly (readonly [string, Slow])[] = [["none", { kind: "none" }], ...kinds(0.5, 0.25, 1)];
const LARGE = kinds(1, 0.5, 2);

const conditions = (slow: Slow): Condition[] =>
  CORRELATIONS.flatMap((correlation) => STRIDES.map((strides) => ({ strides, correlation, slow })));

function alarmTable(
  drifts: readonly (readonly [string, Slow])[],
  cell: (condition: Condition) => string,
): string {
  const rows = drifts.map(([words, slow]) => {
    const cells = conditions(slow).map(cell);
    console.log(words, cells.join(" "));
    return `| ${words} | ${cells.join(" | ")} |`;
  });
  const heads = CORRELATIONS.flatMap((r) => STRIDES.map((n) => `r ${r}, ${n}`));
  return `| slow drift | ${heads.join(" | ")} |\n|---|${heads.map(() => "---|").join("")}\n${rows.join("\n")}`;
}

const worst = { student: 0, bootstrap: 0, plain: 0 };
const shown = ({ component, overall }: FalseAlarms) => `${component.toFixed(1)} / ${overall.toFixed(1)}`;
const student = alarmTable(SMALL, (condition) => {
  const found = falseAlarms(condition, PAIRS);
  worst.student = Math.max(worst.student, found.overall);
  worst.plain = Math.max(worst.plain, found.plain);
  return `${shown(found)} (${found.plain.toFixed(1)})`;
});
const bootstrap = alarmTable(SMALL, (condition) => {
  const found = falseAlarms(condition, PAIRS, BOOTSTRAP);
  worst.bootstrap = Math.max(worst.bootstrap, found.overall);
  return shown(found);
});
const large = alarmTable(LARGE, (condition) => {
  const found = falseAlarms(condition, PAIRS);
  return `${shown(found)} (${found.plain.toFixed(1)})`;
});

const order = (first: number, second: number): readonly [string, LongMemory] => [
  `second-order autoregression, ${first} and ${second}`,
  { kind: "second order", first, second },
];
const fractional = (d: number): readonly [string, LongMemory] => [
  `fractional noise, d ${d}`,
  { kind: "fractional", d },
];
const memories = [
  order(0, 0.6),
  order(0.3, 0.4),
  order(0.2, 0.6),
  fractional(0.2),
  fractional(0.3),
  fractional(0.4),
];
const remembering = memories.map(([words, memory]) => {
  const cells = STRIDES.map((strides) => {
    const condition: Condition = { strides, correlation: 0, slow: { kind: "none" }, memory };
    const t = falseAlarms(condition, PAIRS);
    return `${shown(t)} (${t.plain.toFixed(1)}), ${shown(falseAlarms(condition, PAIRS, BOOTSTRAP))}`;
  });
  console.log(words, cells.join(" "));
  return `| ${words} | ${cells.join(" | ")} |`;
});

const NAMES = ["vertical (SD 2.4 %)", "braking (5.6 %)", "mediolateral (10 %)"];
const CHANGES = [0.02, 0.05, 0.1, 0.2];
const powers = NAMES.map(() => [] as string[]);
for (const correlation of [0, 0.3]) {
  for (const strides of STRIDES) {
    const condition: Condition = { strides, correlation, slow: { kind: "none" } };
    const found = CHANGES.map((change) => [
      power(condition, change, 300),
      power(condition, change, 100, BOOTSTRAP),
    ]);
    NAMES.forEach((name, k) => {
      const cells = found.map(([t, b]) => `${t?.[k]?.toFixed(0)} / ${b?.[k]?.toFixed(0)}`);
      powers[k]?.push(`| ${name} | ${correlation} | ${strides} | ${cells.join(" | ")} |`);
    });
  }
}
console.log(powers.flat().join("\n"));

const reduced = CORRELATIONS.map((correlation) => {
  const cells = STRIDES.map((strides) => {
    const condition: Condition = { strides, correlation, slow: { kind: "none" } };
    const [t, b] = [reducedShare(condition, 0.1, PAIRS), reducedShare(condition, 0.1, 200, BOOTSTRAP)];
    return `${t.toFixed(1)} / ${b.toFixed(1)} (${reducedShare(condition, 0, 200).toFixed(0)})`;
  });
  console.log(correlation, cells.join(" "));
  return `| ${correlation} | ${cells.join(" | ")} |`;
});
const whole = wholeRecordings();
console.log(whole, worst);

const commit = execFileSync("git", ["describe", "--always", "--dirty"], { encoding: "utf8" }).trim();
writeFileSync(
  "docs/readings.md",
  `# How often a comparison says what

Whatever a comparison reads, it reads from strides, and strides of one and the same condition differ too. This page counts how
often that alone makes a component \`lower\` or \`higher\`, and how often a true change is found. Strides are drawn as they vary in one
runner: standard deviations of 2.4 % of the mean (peak vertical force), 5.6 % (braking impulse) and 10 % (mediolateral impulse), each
stride correlated with the next as stated (r) by a first-order autoregression, whose correlation falls off as r, r², r³ …, the three
components independent of each other, which is the worst case for the verdict. Everything is seeded.

## False alarms

Per cent of ${PAIRS} disjoint pairs without any true difference, 20, 40 or 80 strides in each trial: readings of a component /
verdicts that name one (\`reduced\`, \`raised\`, \`shifted\`, or \`unsettled\` because one reads lower). In brackets the verdicts of a rule that
asks for no more than the 99 % interval and 0.8 standard deviations between strides. Drift is in standard deviations of the strides.
The largest figure is ${worst.student.toFixed(1)} % by Student's t and ${worst.bootstrap.toFixed(1)} % by the bootstrap, where the aim is 2.5 %; without the two
further conditions it would be ${worst.plain.toFixed(1)} %.

By Student's t:

${student}

By the block bootstrap, ${BOOTSTRAP.resamples} resamples:

${bootstrap}

## Where it ends

With twice the drift a comparison of two recordings cannot be held to 2.5 %: by then two trials of one condition do differ, and
their own strides do not tell. Record the baseline again after the change, or give a smallest detectable change from repeated trials.

${large}

Nor can it where strides remember longer than a first-order autoregression with the same correlation of neighbours: the effective
number of strides is taken from neighbours alone, and counts too many. Twenty to eighty strides hardly tell the kinds of memory
apart. Without drift, per cent by Student's t as above, then by the bootstrap:

| strides | ${STRIDES.map((strides) => `${strides}`).join(" | ")} |
|---|${STRIDES.map(() => "---|").join("")}
${remembering.join("\n")}

## What is found

Per cent of pairs with a true rise in which the component reads \`higher\`, by Student's t (300 pairs) / by the bootstrap (100):

| component | r | strides | ${CHANGES.map((change) => `${100 * change} %`).join(" | ")} |
|---|---|---|${CHANGES.map(() => "---|").join("")}
${powers.flat().join("\n")}

## \`reduced\` where a second component rose

The vertical force truly 10 % lower, the braking impulse truly 10 % higher: per cent of pairs that read \`reduced\`, by Student's t
(${PAIRS} pairs) / by the bootstrap (200). In brackets the per cent that read so where the braking impulse did not rise (200 pairs).

| r | ${STRIDES.map((strides) => `${strides} strides`).join(" | ")} |
|---|${STRIDES.map(() => "---|").join("")}
${reduced.join("\n")}

## Whole recordings

Pairs of whole synthetic recordings, analysed and compared with every default. Both recordings of a pair come from one model of a
runner, so the table shows what variation from stride to stride does. What differs from day to day no pair can show.

${whole}

\`npm run readings\` wrote this page on ${new Date().toISOString().slice(0, 10)} at commit ${commit}.
`,
);
console.log("docs/readings.md written");
