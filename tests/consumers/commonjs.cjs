// A program in CommonJS: the package by `require`, root and subpaths.
const { analyseTrial, compareTrials, kilograms, toGroundReaction } = require("gait-kinetics");
const { lowPass } = require("gait-kinetics/filters");
const { readCsv, writeCsv } = require("gait-kinetics/io");
const { demoRecordings } = require("gait-kinetics/synthetic");
const { parseQuantity } = require("gait-kinetics/units/parse");

const { usual, furtherAhead } = demoRecordings();
const [baseline, changed] = [usual, furtherAhead].map((recording) =>
  analyseTrial(toGroundReaction(readCsv(writeCsv(recording))), { mass: kilograms(70) }),
);
const verdict = compareTrials(baseline, changed);
const smooth = lowPass(new Float64Array(50).fill(1), { cutoff: 50, sampleRate: 1000 });
console.log(JSON.stringify({ verdict, smooth: smooth[25], mass: parseQuantity("154 lb", "mass") }));
