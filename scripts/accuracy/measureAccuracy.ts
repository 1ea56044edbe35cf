import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { contactAtThreshold, syntheticRun, type TrueContact } from "../../src/synthetic/index.js";
import { analyseTrial, type StepRow, type Trial } from "../../src/trial/index.js";
import { RUNS } from "./runs.js";

/** Mean, spread and largest of errors. */
interface Errors {
  readonly bias: number;
  readonly sd: number;
  readonly worst: number;
}

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
  readonly metrics: readonly (Errors & {
    readonly id: string;
    /** The metric that the errors are shares of. */
    readonly shareOf: string;
    readonly unit: string;
    readonly n: number;
    readonly mean: number;
  })[];
}

/** A contact found, and the true one it is. */
interface Pair {
  readonly row: StepRow;
  readonly truth: TrueContact;
  readonly next: TrueContact | undefined;
  readonly threshold: number;
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
    const trial = analyseTrial(toGroundReaction(recording), asItComes ? {} : { filter: null });
    truthCount += truth.contacts.length;
    found += trial.steps.length;
    pairs.push(...pairsOf(trial, truth.contacts));
  }
  const missed = truthCount - pairs.length;
  const crossings = pairs.map(({ row, truth, threshold }) => {
    const crossing = contactAtThreshold(truth, threshold);
    return {
      initialContact: 1000 * (row.initialContact - crossing.initialContact),
      toeOff: 1000 * (row.toeOff - crossing.toeOff),
    };
  });
  return {
    words,
    contacts: {
      truth: truthCount,
      found,
      missed,
      extra: found - pairs.length,
      wrongSide: pairs.filter(({ row, truth }) => row.side !== truth.side).length,
      initialContact: errorsOf(crossings.map(({ initialContact }) => initialContact)),
      toeOff: errorsOf(crossings.map(({ toeOff }) => toeOff)),
    },
    metrics: CATALOGUE.flatMap(({ id, unit }) => metricErrors(pairs, id, unit)),
  };
}

/** Each found contact with the true one that begins within 50 ms of it. */
function pairsOf(trial: Trial, contacts: readonly TrueContact[]): Pair[] {
  const { threshold } = trial.settings.events;
  return trial.steps.flatMap((row) => {
    const index = contacts.findIndex(
      ({ initialContact }) => Math.abs(initialContact - row.initialContact) < 0.05,
    );
    const truth = contacts[index];
    return truth === undefined ? [] : [{ row, truth, next: contacts[index + 1], threshold }];
  });
}

function metricErrors(pairs: readonly Pair[], id: string, unit: string): AccuracyPart["metrics"] {
  const both = pairs.flatMap((pair) => {
    const value = pair.row.values[id];
    const right = trueValuesOf(pair)[id];
    return typeof value === "number" && typeof right === "number" ? [{ value, right }] : [];
  });
  if (both.length === 0) return [];
  // A difference of two impulses is near zero: its errors are shares of one of them.
  const shareOf = id === "netForwardImpulse" ? "brakingImpulse" : id;
  const shares = pairs.flatMap((pair) => trueValuesOf(pair)[shareOf] ?? []);
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  return [
    { id, shareOf, unit, n: both.length, mean, ...errorsOf(both.map(({ value, right }) => value - right)) },
  ];
}

/** True values by metric id, times as the threshold sees them: what is left is error, not definition. */
function trueValuesOf({ truth, next, threshold }: Pair): Readonly<Record<string, number | null>> {
  const { values } = truth;
  const seen = contactAtThreshold(truth, threshold);
  const late = lateness(truth, threshold);
  const early = truth.toeOff - seen.toeOff;
  const contactTime = values.contactTime - late - early;
  return {
    ...values,
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

function errorsOf(errors: readonly number[]): Errors {
  const bias = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const squares = errors.reduce((sum, error) => sum + (error - bias) ** 2, 0);
  const worst = errors.reduce((most, error) => (Math.abs(error) > Math.abs(most) ? error : most), 0);
  return { bias, sd: Math.sqrt(squares / (errors.length - 1)), worst };
}
