import { expect, it } from "vitest";
import { optionWords } from "../../src/cli/output/optionWords.js";

it.each([
  [
    'state it as axes: { x: "right", y: "forward", z: "up" } with',
    "state it as --axes x=right,y=forward,z=up with",
  ],
  ['axes are stated as { x: "right", z: "up" }: each', "axes are stated as --axes x=right,z=up: each"],
  ['with columns: { "Vertical GRF": "up" }', 'with --columns "Vertical GRF=up"'],
  ['as units: { "Ty": "N mm" }, or', 'as --units "Ty=N mm", or'],
  [
    'leave it out with ignore: ["Time"] and state sampleRate',
    'leave it out with --ignore "Time" and state --rate, such as "300 Hz"',
  ],
  ['state decimal: "," or', 'state --decimal "," or'],
  ["mass is 700 kg", "mass is 700 kg"],
])("%s", (message, words) => expect(optionWords(message)).toBe(words));
