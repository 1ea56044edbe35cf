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
  ['with forceOn: "ground" where', "with --force-on ground where"],
  ["at least two are needed, or sampleRate", 'at least two are needed, or --rate, such as "300 Hz"'],
  ["x, y and z; state all three in axes", "x, y and z; state all three in --axes"],
  ['ignore names "Tme"', '--ignore names "Tme"'],
  ['columns states "a" as "down"', '--columns states "a" as "down"'],
  ["state a lower cutoff, or no filter", "state a lower --cutoff, or --cutoff none"],
  [
    "there are 2 samples; more than 15, the padLength, are needed",
    "the recording holds 2 samples; at least 16 are needed for the filter",
  ],
  [
    "there are 1 samples; more than 15, the padLength, are needed",
    "the recording holds 1 sample; at least 16 are needed for the filter",
  ],
  ["the recording holds 1 samples; at least", "the recording holds 1 sample; at least"],
  [
    'the markers go up, the axes are { x: "right", y: "forward" }',
    "the markers go up, state --axes x=right,y=forward",
  ],
  ['needs all three, such as { x: "right", z: "up" }', "needs all three, such as --axes x=right,z=up"],
  ['read with forceOn: "platform" or', "read with --force-on ground or"],
  ['with unitRow: "skip" if', "with --unit-row skip if"],
  ['state lengthUnit: "mm"', "state --length-unit mm"],
  ["row state header: 0 and", "row state --header 0 and"],
  ['use "flights", or state a quiet stretch as zero', 'use --offset flights, or --zero "0 s to 0.2 s"'],
  ['only names "7"; the plates are 1, 2', '--only-plates names "7"; the plates are 1, 2'],
  ["zero is 1 s to 3 s; it must", "--zero is 1 s to 3 s; it must"],
  [
    "for the load: state whose force the channels hold",
    "for the load: state --force-on runner or --force-on ground",
  ],
  ["mass is 700 kg", "mass is 700 kg"],
])("%s", (message, words) => expect(optionWords(message)).toBe(words));
