// A program of ECMAScript modules: the package by `import`, root and subpaths. The bundle is made of this file too.
import { analyseTrial, compareTrials, kilograms, toGroundReaction } from "gait-kinetics";
import { lowPass } from "gait-kinetics/filters";
import { readCsv, writeCsv } from "gait-kinetics/io";
import { demoRecordings } from "gait-kinetics/synthetic";
import { parseQuantity } from "gait-kinetics/units/parse";

const { usual, furtherAhead } = demoRecordings();
const [baseline, changed] = [usual, furtherAhead].map((recording) =>
  analyseTrial(toGroundReaction(readCsv(writeCsv(recording))), { mass: kilograms(70) }),
);
const verdict = compareTrials(baseline, changed);
const smooth = lowPass(new Float64Array(50).fill(1), { cutoff: 50, sampleRate: 1000 });
console.log(JSON.stringify({ verdict, smooth: smooth[25], mass: parseQuantity("154 lb", "mass") }));
