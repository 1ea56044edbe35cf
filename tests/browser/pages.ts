import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  type Comparison,
  type CurveComparison,
  compareStanceCurves,
  compareTrials,
} from "../../src/compare/index.js";
import { type GroundReaction, toGroundReaction } from "../../src/force/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";

/** The demo's two trials, their comparison, and that of their whole curves. */
export interface Demo {
  readonly baseline: Trial;
  readonly changed: Trial;
  readonly comparison: Comparison;
  readonly curves: readonly CurveComparison[];
}

/** Analyses the demo's recordings as the command line does. */
export function demo(): Demo {
  const { usual, furtherAhead } = demoRecordings();
  const [before, after] = [usual, furtherAhead].map((recording) => {
    const ground = toGroundReaction(recording);
    return { ground, trial: analyseTrial(ground) };
  }) as [GroundTrial, GroundTrial];
  return {
    baseline: before.trial,
    changed: after.trial,
    comparison: compareTrials(before.trial, after.trial),
    curves: compareStanceCurves(before, after).curves,
  };
}

type GroundTrial = Readonly<{ ground: GroundReaction; trial: Trial }>;

/** The same contacts over and over until there are so many: an hour's run without an hour's recording. */
export function repeated(trial: Trial, contacts: number): Trial {
  const length = trial.contacts.length;
  const lap = (trial.steps[length - 1]?.toeOff ?? 0) + 0.1;
  const later = (i: number) => lap * Math.floor(i / length);
  const steps = Array.from({ length: contacts }, (_, i) => {
    const step = trial.steps[i % length]!;
    return { ...step, initialContact: step.initialContact + later(i), toeOff: step.toeOff + later(i) };
  });
  return {
    ...trial,
    steps,
    contacts: steps.map(({ initialContact, toeOff }, i) => ({
      ...trial.contacts[i % length]!,
      initialContact,
      toeOff,
    })),
  };
}

/** Writes a page into a folder of its own and gives its path. */
export function written(name: string, content: string): string {
  const file = join(mkdtempSync(join(tmpdir(), "report-page-")), `${name}.html`);
  writeFileSync(file, content);
  return file;
}
