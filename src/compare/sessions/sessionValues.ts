import type { Metric } from "../../metrics/index.js";
import {
  groupedDifference,
  type Interval,
  mean,
  meanInterval,
  smallestDetectableChange,
  standardDeviation,
  studentTQuantile,
} from "../../statistics/index.js";
import { LEAST_SHARE_OF_CONTACTS, type Spread } from "../../trial/index.js";
import { changeIn } from "../changeIn.js";
import type { SmallestDetectableChange } from "../comparison.js";
import { detectableChange } from "../detectableChange.js";
import { SMALLEST_DETECTABLE_SHARE } from "../options.js";
import { pooledDeviation } from "../severalTrials/pooledDeviation.js";
import { strideSeries } from "../strideSeries.js";
import { LEAST_SESSIONS_FOR_SPREAD, type SessionsSettings } from "./options.js";
import type { KnownSession } from "./requireSessions.js";
import type { SessionValue } from "./sessionSeries.js";

/** A session's strides of one metric. */
interface OneSession {
  readonly name: string;
  /** Stride values, one list a trial. */
  readonly trials: readonly (readonly number[])[];
  /** Of trial means. */
  readonly mean: number;
}

/** A metric over the sessions that have it. */
export interface SessionsOfMetric {
  readonly values: readonly SessionValue[];
  /** Sessions without it, which are in no baseline either. */
  readonly leftOut: readonly string[];
}

/** Holds every session against the baseline that stood when it was recorded. */
export function sessionValues(
  metric: Metric,
  sessions: readonly KnownSession[],
  settings: SessionsSettings,
): SessionsOfMetric {
  const known = sessions.flatMap((session) => oneSession(metric, session) ?? []);
  const names = new Set(known.map(({ name }) => name));
  const values = known.map((session, k): SessionValue => {
    const n = settings.baselineSessions;
    const before = settings.baseline === "first" ? known.slice(0, n) : known.slice(Math.max(0, k - n), k);
    return {
      name: session.name,
      session: spreadOf(session, settings.level),
      against: k < n ? null : againstOf(metric, session, before, sessions, settings),
    };
  });
  return { values, leftOut: sessions.map(({ name }) => name).filter((name) => !names.has(name)) };
}

/** `null` where a trial lacks the metric in too many contacts, or has fewer than two strides with it. */
function oneSession(metric: Metric, { name, trials }: KnownSession): OneSession | null {
  const series = trials.map((trial) => strideSeries(trial, metric));
  if (series.some(({ values, contacts }) => values.length < 2 || contacts.share < LEAST_SHARE_OF_CONTACTS))
    return null;
  const own = series.map(({ values }) => values);
  return { name, trials: own, mean: mean(own.map((values) => mean(values))) };
}

/** The mean of trial means, the spread of strides within trials, and the mean's interval by these. */
function spreadOf({ trials, mean: centre }: OneSession, level: number): Spread {
  const [first] = trials;
  if (trials.length === 1 && first !== undefined) return meanInterval(first, level);
  const reach = reachByStrides(trials, level);
  return {
    n: trials.reduce((sum, values) => sum + values.length, 0),
    mean: centre,
    sd: pooledDeviation(trials),
    interval: reach === null ? null : { low: centre - reach, high: centre + reach, level },
  };
}

/** Of the mean of trial means, by the strides within trials alone. */
function reachByStrides(trials: readonly (readonly number[])[], level: number): number | null {
  const { fromValues } = groupedDifference(trials, [[0, 0]], level, { correctBias: false });
  return fromValues === null ? null : (fromValues.high - fromValues.low) / 2;
}

function againstOf(
  metric: Metric,
  session: OneSession,
  before: readonly OneSession[],
  sessions: readonly KnownSession[],
  settings: SessionsSettings,
): SessionValue["against"] {
  const means = before.map((one) => one.mean);
  const baseline = mean(means);
  const difference = session.mean - baseline;
  const interval = intervalOf(session, before, difference, settings.level);
  if (interval === null) return null;
  const given = settings.smallestDetectableChange[metric.id];
  const { mass = null, gravity = 0 } = sessions[0]?.trials[0]?.trial.settings ?? {};
  const change = detectableChange(
    {
      smallestChange:
        given === undefined ? null : changeIn(metric, given, mass, gravity, "smallestDetectableChange"),
      degreesOfFreedom: given?.degreesOfFreedom ?? null,
    },
    baseline,
    () => ownChange(session, before),
  );
  const beyond = (interval.low > 0 || interval.high < 0) && Math.abs(difference) > change.value;
  return {
    baseline,
    sessions: before.length,
    difference,
    interval,
    smallestDetectableChange: change,
    place: !beyond ? "within" : difference > 0 ? "above" : "below",
  };
}

/** Within which the difference of a further session would lie, and never narrower than the strides make it. */
function intervalOf(
  session: OneSession,
  before: readonly OneSession[],
  difference: number,
  level: number,
): Interval | null {
  // A baseline of several sessions is a condition whose sessions are its groups.
  const pooled = before.flatMap(({ trials }) => trials);
  const { fromValues } = groupedDifference(session.trials, pooled, level, {
    correctBias: true,
    shared: true,
  });
  const byStrides = fromValues === null ? null : (fromValues.high - fromValues.low) / 2;
  const n = before.length;
  const bySessions =
    n < LEAST_SESSIONS_FOR_SPREAD
      ? null
      : studentTQuantile((1 + level) / 2, n - 1) *
        standardDeviation(before.map((one) => one.mean)) *
        Math.sqrt(1 + 1 / n);
  const reaches = [byStrides, bySessions].filter((reach) => reach !== null);
  if (reaches.length === 0) return null;
  const reach = Math.max(...reaches);
  return { low: difference - reach, high: difference + reach, level };
}

/** From the baseline's own sessions, or, where these are too few, what stands in for it between two trials. */
function ownChange(session: OneSession, before: readonly OneSession[]): SmallestDetectableChange {
  if (before.length >= LEAST_SESSIONS_FOR_SPREAD) {
    const sd = standardDeviation(before.map((one) => one.mean));
    return {
      value: smallestDetectableChange(sd),
      source: `1.96 √2 standard deviations between the ${before.length} sessions of the baseline`,
    };
  }
  const sd = pooledDeviation([session, ...before].flatMap(({ trials }) => trials)) ?? 0;
  return {
    value: SMALLEST_DETECTABLE_SHARE * sd,
    source: `${SMALLEST_DETECTABLE_SHARE} of the standard deviation of strides`,
  };
}
