/**
 * Writes `docs/accuracy.md`: how far contacts and metrics lie from the truth of synthetic runs. With `--check` it
 * compares the page with what it would write, and fails where they differ.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type AccuracyPart, measureAccuracy } from "./accuracy/measureAccuracy.js";
import { RUNS } from "./accuracy/runs.js";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const page = "docs/accuracy.md";

/** Two digits, so that an engine's last bit does not flip one. */
function shown(value: number): string {
  if (Math.abs(value) < 1e-3) return "0";
  return Number(value.toPrecision(2)).toString().replace("-", "−");
}

function table(part: AccuracyPart): string {
  const rows = part.metrics.map(({ id, shareOf, unit, n, mean, ...errors }) => {
    const shares = [errors.bias, errors.sd, errors.worst].map((error) => shown((100 * error) / mean));
    const of = shareOf === id ? "" : ` (shares of \`${shareOf}\`)`;
    return `| \`${id}\`${of} | ${n} | ${shown(mean)} ${unit} | ${shares.join(" | ")} |`;
  });
  const { truth, found, missed, extra, wrongSide, initialContact, toeOff } = part.contacts;
  return `${part.words}

Contacts: ${truth} in truth, ${found} found, ${missed} missed, ${extra} extra, ${wrongSide} on the wrong side. Against the true force's own
crossings of the threshold, initial contact lies ${shown(initialContact.bias)} ± ${shown(initialContact.sd)} ms off (worst ${shown(initialContact.worst)} ms), toe-off ${shown(toeOff.bias)} ± ${shown(toeOff.sd)} ms
(worst ${shown(toeOff.worst)} ms).

| metric | contacts | true mean | bias, % | SD, % | worst, % |
|---|---|---|---|---|---|
${rows.join("\n")}
`;
}

const parts = [
  measureAccuracy(
    "## Of the method\n\nNo noise, no rounding, no filter: what threshold, sampling and interpolation do.",
    false,
  ),
  measureAccuracy(
    "## Of a recording as it comes\n\nNoise of 2 N on each force, rounding to 0.1 N, and the default filter: what a user gets.",
    true,
  ),
];
const text = `# Accuracy

How far contacts and metrics lie from the truth: ${RUNS.length} synthetic runs of 30 s at 1 kHz whose forces are formulas, at speeds from
2.5 to 4.5 m/s and with variation from step to step. Errors are of single contacts, in per cent of the metric's true
mean; SD is of the errors. Times, and the mean force over them, are held against the true force's crossings of the same
threshold; other forces, impulses and lengths against the whole true step, so that what the threshold cuts off at both
ends of a contact is part of their bias, alike in two recordings that are compared. Vertical oscillation and work of a
single step take the stride as periodic; their SD is mostly the step's own difference from its neighbours. Metrics that
are not here have no closed truth; their tests name what they are held against. 0 is less than 0.001.

The filters have a page of their own, [accuracy-filters.md](accuracy-filters.md).

\`npm run accuracy\` writes this page, and a check holds it to the code.

${parts.map(table).join("\n")}`;
if (!process.argv.includes("--check")) {
  writeFileSync(page, text);
  console.log(`${page} written`);
} else if (readFileSync(page, "utf8") !== text) {
  const before = new Set(readFileSync(page, "utf8").split("\n"));
  console.error(`${page} differs from what npm run accuracy writes now:`);
  for (const line of text.split("\n")) if (!before.has(line)) console.error(`  ${line}`);
  process.exit(1);
}
