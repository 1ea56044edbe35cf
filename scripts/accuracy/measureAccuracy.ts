import { toGroundReaction } from "../../src/force/index.js";
import {
  contactAtThreshold,
  SYNTHETIC_RUN_DEFAULTS,
  type SyntheticTruth,
  syntheticRun,
  type TrueContact,
} from "../../src/synthetic/index.js";
import { analyseTrial, type StepRow, type Trial } from "../../src/trial/index.js";
import { type Errors, errorsOf } from "./errors.js";
import { formulaValues } from "./formulaValues.js";
import { HELD_METRICS, withFeet } from "./held.js";
import { type MetricErrors, metricErrors } from "./metricErrors.js";
import { RUNS } from "./runs.js";

/** One table of the page. */
export interface AccuracyPart {
  readonly words: string;
  readonly contacts: {
    readonly truth: number;
    readonly found: number;
    readonly missed: number;
    readonly extra: number;
    readonly wrongSide: number;
    /** ms. */
    readonly initialContact: Errors;
    /** ms. */
    readonly toeOff: Errors;
  };
  readonly metrics: readonly MetricErrors[];
}

/** A contact found, and the true one it is. */
interface Pair {
  readonly row: StepRow;
  readonly truth: SyntheticTruth;
  readonly index: number;
  readonly threshold: number;
  readonly height: number;
}

/** Analyses every run and holds it against its truth. */
export function measureAccuracy(words: string, asItComes: boolean): AccuracyPart {
  const pairs: Pair[] = [];
  let truthCount = 0;
  let found = 0;
  for (const run of RUNS) {
    const { recording, truth } = syntheticRun(
      asItComes ? { ...run, noise: { force: 2, cop: 0.001, freeMoment: 0.3 }, decimals: {} } : run,
    );
    const ground = withFeet(toGroundReaction(recording), truth);
    const trial = analyseTrial(ground, { metrics: HELD_METRICS, ...(asItComes ? {} : { filter: null }) });
    truthCount += truth.contacts.length;
    found += trial.steps.length;
    pairs.push(...pairsOf(trial, truth, run.height ?? SYNTHETIC_RUN_DEFAULTS.height));
  }
  const crossings = pairs.map((pair) => {
    const crossing = contactAtThreshold(contactOf(pair), pair.threshold);
    return {
      initialContact: 1000 * (pair.row.initialContact - crossing.initialContact),
      toeOff: 1000 * (pair.row.toeOff - crossing.toeOff),
    };
  });
  return {
    words,
    contacts: {
      truth: truthCount,
      found,
      missed: truthCount - pairs.length,
      extra: found - pairs.length,
      wrongSide: pairs.filter((pair) => pair.row.side !== contactOf(pair).side).length,
      initialContact: errorsOf(crossings.map(({ initialContact }) => initialContact)),
      toeOff: errorsOf(crossings.map(({ toeOff }) => toeOff)),
    },
    metrics: metricErrors(pairs.map((pair) => ({ values: pair.row.values, truth: trueValuesOf(pair) }))),
  };
}

/** Each found contact with the true one that begins within 50 ms of it. */
function pairsOf(trial: Trial, truth: SyntheticTruth, height: number): Pair[] {
  const { threshold } = trial.settings.events;
  return trial.steps.flatMap((row) => {
    const index = truth.contacts.findIndex(
      ({ initialContact }) => Math.abs(initialContact - row.initialContact) < 0.05,
    );
    return index < 0 ? [] : [{ row, truth, index, threshold, height }];
  });
}

function contactOf({ truth, index }: Pair): TrueContact {
  return truth.contacts[index] as TrueContact;
}

/** True values by metric id, times as the threshold sees them: what is left is error, not definition. */
function trueValuesOf(pair: Pair): Readonly<Record<string, number | null>> {
  const { truth, index, threshold, height } = pair;
  const contact = contactOf(pair);
  const next = truth.contacts[index + 1];
  const { values } = contact;
  const seen = contactAtThreshold(contact, threshold);
  const late = lateness(contact, threshold);
  const early = contact.toeOff - seen.toeOff;
  const contactTime = values.contactTime - late - early;
  return {
    ...values,
    ...formulaValues(truth, index, threshold, height),
    contactTime,
    meanVerticalForce: values.verticalImpulse / contactTime,
    aerialTime: next === undefined ? null : values.aerialTime + early + lateness(next, threshold),
    brakingTime: values.brakingTime - late,
    propulsiveTime: values.propulsiveTime - early,
    timeToImpactPeak: values.timeToImpactPeak === null ? null : values.timeToImpactPeak - late,
  };
}

/** How much later than the force's zero the threshold sees a contact, s. */
function lateness(truth: TrueContact, threshold: number): number {
  return contactAtThreshold(truth, threshold).initialContact - truth.initialContact;
}
