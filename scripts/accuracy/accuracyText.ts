import { eventsSection } from "../../tests/events/accuracyRows.js";
import { landingSection } from "../../tests/models/landing/accuracyRows.js";
import { againstNumpy } from "./againstNumpy.js";
import { FORCE_COST } from "./held.js";
import { markersSection } from "./markersSection.js";
import { type AccuracyPart, measureAccuracy } from "./measureAccuracy.js";
import { measureWalking } from "./measureWalking.js";
import type { MetricErrors } from "./metricErrors.js";
import { RUNS } from "./runs.js";
import { WALKS } from "./walk.js";

/** Two digits, so that an engine's last bit does not flip one. */
function shown(value: number): string {
  if (Math.abs(value) < 1e-3) return "0";
  return Number(value.toPrecision(2)).toString().replace("-", "−");
}

const HEAD = `| metric | contacts | true mean | bias, % | SD, % | worst, % |
|---|---|---|---|---|---|`;

function rowsOf(metrics: readonly MetricErrors[]): string {
  return metrics
    .map(({ id, shareOf, unit, n, mean, ...errors }) => {
      const shares = [errors.bias, errors.sd, errors.worst].map((error) => shown((100 * error) / mean));
      const of = shareOf === id ? "" : ` (shares of \`${shareOf}\`)`;
      return `| \`${id}\`${of} | ${n} | ${shown(mean)}${unit === "1" ? "" : ` ${unit}`} | ${shares.join(" | ")} |`;
    })
    .join("\n");
}

function table({ words, contacts, metrics }: AccuracyPart, walking: readonly MetricErrors[]): string {
  const { truth, found, missed, extra, wrongSide, initialContact, toeOff } = contacts;
  return `${words}

Contacts: ${truth} in truth, ${found} found, ${missed} missed, ${extra} extra, ${wrongSide} on the wrong side. Against the true force's own
crossings of the threshold, initial contact lies ${shown(initialContact.bias)} ± ${shown(initialContact.sd)} ms off (worst ${shown(initialContact.worst)} ms), toe-off ${shown(toeOff.bias)} ± ${shown(toeOff.sd)} ms
(worst ${shown(toeOff.worst)} ms).

${HEAD}
${rowsOf(metrics)}

Of walking:

${HEAD}
${rowsOf(walking)}
`;
}

function numpyTable(): string {
  const rows = againstNumpy().map(({ id, n, worst }) => {
    const difference = worst < 1e-9 ? "below 1e-9" : worst.toExponential(0);
    return `| \`${id}\` | ${n} | ${difference} |`;
  });
  return `## Against NumPy and SciPy on the same samples

Another program's numbers of the same sampled run (NumPy 2.4.6, SciPy 1.17.1; \`tests/fixtures/metrics\` and
\`tests/fixtures/models\` hold the scripts), contact by contact. The ratio of push and brake was read there at 400 001 points, 2 µs
of 118 ms.

| metric | contacts | largest relative difference |
|---|---|---|
${rows.join("\n")}
`;
}

/** The whole page. */
export function accuracyText(): string {
  const method = measureAccuracy(
    "## Of the method\n\nNo noise, no rounding, no filter: what threshold, sampling and interpolation do.",
    false,
  );
  const recording = measureAccuracy(
    "## Of a recording as it comes\n\nNoise of 2 N on each force, rounding to 0.1 N (running), and the default filter: what a user gets.",
    true,
  );
  return `# Accuracy

How far contacts and metrics lie from the truth. Every metric of the catalogue has a row.

**Running**: ${RUNS.length} synthetic runs of 30 s at 1 kHz whose forces are formulas, at speeds from 2.5 to 4.5 m/s and with variation from
step to step. **Walking**: ${WALKS.length} walks of 20 strides at 1 kHz, each foot on a belt of its own, whose forces are sums of sines. Errors are
of single contacts, in per cent of the metric's true mean; SD is of the errors. 0 is less than 0.001.

What the truth is:

- Times, and the mean force over them, are held against the true force's crossings of the same threshold.
- Other forces, impulses and lengths are held against the whole true step, so that what the threshold cuts off at both ends of
  a contact is part of their bias, alike in two recordings that are compared.
- Loading rates, half-sine fit, work, spring, push and brake, excursion, step width and strike index are held against the
  formulas themselves, by a second program in \`scripts/accuracy\` that shares no code with the metrics: slopes of the formula,
  energies and places of the centre of mass by closed integrals on a fine grid. Heel and toes stand still on the surface. The
  cost of generating force takes ${FORCE_COST} J/N.
- Touchdown and take-off distance are held against the place of foot and centre of mass that the run was laid out with.
- Vertical oscillation, excursion, work and spring of a single step take the stride as periodic. The runs wander from step to
  step as a runner does, and the SD of these metrics is mostly the step's own difference from its neighbours, which a mean
  over strides takes away; mediolateral excursion and lateral work, small by themselves, show it most. Energy recovery is of
  walks that repeat exactly.

The filters have a page of their own, [accuracy-filters.md](accuracy-filters.md); how often a comparison
raises a false alarm, and finds a true change, in [readings.md](readings.md); what each metric means in [metrics.md](metrics.md).

\`npm run accuracy\` writes this page, then readings.md, and a check holds this one to the code.

${table(method, measureWalking(false))}
${table(recording, measureWalking(true))}
${numpyTable()}
${landingSection(shown)}
${eventsSection(shown)}
${markersSection(shown)}`;
}
