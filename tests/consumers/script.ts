// A study's script in TypeScript, run by ts-node with a tsconfig of `{}`: types and values, root and subpaths.
import {
  analyseTrial,
  type Comparison,
  compareTrials,
  type GroundReaction,
  type Kilograms,
  kilograms,
  type Trial,
  toGroundReaction,
} from "gait-kinetics";
import { lowPass } from "gait-kinetics/filters";
import { readCsv, writeCsv } from "gait-kinetics/io";
import { demoRecordings } from "gait-kinetics/synthetic";
import { parseQuantity } from "gait-kinetics/units/parse";

const runner: Kilograms = kilograms(70);
const { usual, furtherAhead } = demoRecordings();
function trialOf(recording: typeof usual): Trial {
  const ground: GroundReaction = toGroundReaction(readCsv(writeCsv(recording)));
  return analyseTrial(ground, { mass: runner });
}
const verdict: Comparison = compareTrials(trialOf(usual), trialOf(furtherAhead));
const smooth: Float64Array = lowPass(new Float64Array(50).fill(1), { cutoff: 50, sampleRate: 1000 });
console.log(JSON.stringify({ verdict, smooth: smooth[25], mass: parseQuantity("154 lb", "mass") }));
