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

it.each([
  ['points up or down, or verticalForce: "optional" for a table of other things', "points up or down"],
  ['and 86 (mips), state it as processor: "intel" if the mark is wrong', "and 86 (mips)"],
  ["was recorded (missing states other words)", "was recorded (--missing states other words)"],
  ["for a missing value is stated by missing", "for a missing value is stated by --missing"],
  ["coverThickness is 10 m; it must", "--cover-thickness is 10 m; it must"],
  ['sides names "3"; the plates', '--sides names "3"; the plates'],
  [
    'tracksys and markersTracksys are both "markers"; each system needs its own',
    `tracksys is "markers", the name of the markers' own system; give another`,
  ],
  [
    'state forceOn "platform" or "runner", whose force',
    "state --force-on ground or --force-on runner, whose force",
  ],
  [
    "is it in mm? State its unit",
    "is it in mm? Correct the unit in its heading, or state it with --units where the heading has none",
  ],
  ["is arbitrary; state the first foot", "is arbitrary; state --first-foot"],
  ["by the axes stated; check axes", "by the axes stated; check --axes"],
])("2026-11-25: words of code stood in messages of the command line: %s", (message, words) =>
  expect(optionWords(message)).toBe(words),
);

it.each([
  ['with ignore: ["time [s];up"]', 'with --ignore "time [s];up"'],
  ['by ignore: ["a", "b"]', 'by --ignore "a,b"'],
  [
    'column 2 "" is no name: ignore: [""], or columns: { "": "up" }',
    'column 2 "" is no name: --ignore "2", or --columns 2=up',
  ],
  ['column 3 "a, b" states no unit: units: { "a, b": "N" }', 'column 3 "a, b" states no unit: --units 3=N'],
])("2026-11-25: suggestions that the command line refuses: %s", (message, words) =>
  expect(optionWords(message)).toBe(words),
);

it.each([
  ["lies -0.02160000038146973 m above", "lies -0.0216 m above"],
  ["mass 82.7, the option 82.55381134000001; the", "mass 82.7, the option 82.55381; the"],
  ['"0.02160000038146973" is no number', '"0.02160000038146973" is no number'],
  ["run-1.234567891234.csv: line 2", "run-1.234567891234.csv: line 2"],
])("2026-11-25: numbers with all digits of the machine: %s", (message, words) =>
  expect(optionWords(message)).toBe(words),
);
