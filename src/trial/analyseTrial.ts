import { type DetectEventsOptions, detectEvents, type Events, type Step, stepsOf } from "../events/index.js";
import { type GroundReaction, lowPassGroundReaction } from "../force/index.js";
import { CATALOGUE, impactPeak, type Metric } from "../metrics/index.js";
import type { Direction, Surface } from "../recording/index.js";
import {
  type Caution,
  type Complete,
  type Fraction,
  fail,
  type Hertz,
  type Kilograms,
  type MetresPerSecond,
  requireNumber,
  requireOneOf,
  VERSION,
  withDefaults,
} from "../units/index.js";
import { computeRows, requireMetrics } from "./computeRows.js";
import { inferSurface } from "./inferSurface.js";
import { massByForce } from "./massByForce.js";
import { CURVE_POINTS, meanCurves } from "./meanCurves.js";
import { nowhere, reasonOf } from "./notComputed.js";
import { stridePairs } from "./strideValues.js";
import { summarise } from "./summarise.js";
import type { MetricSummary, NotComputed, Trial } from "./trial.js";
import { balanceCautions, massCautions, recordingCautions } from "./trialCautions.js";

/** Net cutoff and order of the zero-phase filter metrics are read behind. */
export interface TrialFilter {
  readonly cutoff: Hertz;
  /** Net order, even; 4 where left out. */
  readonly order?: number | undefined;
}

/**
 * How events are found; with `cutoff` on a copy of the unfiltered force with that cutoff, else on the
 * metrics' copy.
 */
export interface TrialEventsOptions extends DetectEventsOptions {
  readonly cutoff?: Hertz | null | undefined;
}

/** How a trial is analysed. What the ground reaction states is taken where an option is left out. */
export interface AnalyseTrialOptions {
  readonly mass?: Kilograms | null | undefined;
  readonly speed?: MetresPerSecond | null | undefined;
  readonly surface?: Surface | null | undefined;
  /** Rise over run, uphill positive. */
  readonly grade?: number | null | undefined;
  /** `null` for no filter. */
  readonly filter?: TrialFilter | null | undefined;
  readonly events?: TrialEventsOptions | undefined;
  readonly metrics?: readonly Metric[] | undefined;
  /** Of the intervals of means. */
  readonly level?: Fraction | undefined;
}

/** Net fourth order, 50 Hz, zero phase; events on the same copy. Common practice. */
export const TRIAL_FILTER: Required<TrialFilter> = { cutoff: 50, order: 4 };

/** The whole catalogue behind {@link TRIAL_FILTER}; 95 % intervals. */
export const ANALYSE_TRIAL_DEFAULTS: Complete<AnalyseTrialOptions> = {
  mass: null,
  speed: null,
  surface: null,
  grade: null,
  filter: TRIAL_FILTER,
  events: {},
  metrics: CATALOGUE,
  level: 0.95,
};

/**
 * Analyses one recording: filters, finds the contacts, computes every metric per contact, and summarises them
 * over strides and sides, with intervals.
 *
 * Formula: see each metric; summary values are means over strides (the mean of two successive contacts),
 * intervals Student's t with the effective number of strides.
 * Units: SI in and out, `steps/min` for cadence; normalised values beside.
 * Limits: where plates are kept apart, what is said of a foot is measured on its plate, what is said of the
 * body on their sum. A recording of one or two contacts without a stride is summarised over contacts. What a
 * metric needs and the recording lacks is listed in `notComputed`, never zero and never NaN.
 * Source: settings are common practice; each metric names its own.
 * @param ground - Unfiltered force in the library's frame; one that was already low-passed is taken as it is.
 * @param options - {@link ANALYSE_TRIAL_DEFAULTS} where left out.
 * @throws GaitKineticsError `no-contact`: the force makes no complete contact; `out-of-range`: an option
 * outside what it allows, or a sampling rate too low for the default filter; `wrong-type`, `not-finite`,
 * `unknown-option`: no ground reaction, an option that is none, or a metric of the caller's own that gives
 * NaN; `conflict`: a filter is asked for on force that is already filtered.
 * @example
 * analyseTrial(ground, { mass: 70, speed: 3 }).schema // "gait-kinetics/trial/1"
 */
export function analyseTrial(ground: GroundReaction, options: AnalyseTrialOptions = {}): Trial {
  requireGroundReaction(ground);
  const settings = withDefaults<AnalyseTrialOptions>(ANALYSE_TRIAL_DEFAULTS, options);
  const level = requireNumber("level", settings.level, { above: 0, below: 1 });
  const stated = withStatements(ground, settings);
  const filtered = filteredCopy(stated, settings.filter, options.filter !== undefined);
  requireMetrics(settings.metrics);
  if (typeof settings.events !== "object" || settings.events === null) {
    fail("wrong-type", `events is ${String(settings.events)}; an object of options is needed`, {
      argument: "events",
    });
  }
  const { cutoff: eventCutoff = null, ...eventOptions } = settings.events;
  const eventCopy = eventCutoff === null ? filtered : filteredCopy(stated, { cutoff: eventCutoff }, true);
  const events = detectEvents(eventCopy, eventOptions);
  refuseNoContact(eventCopy, events);

  const steps = stepsOf(events.contacts);
  const byForce = massByForce(filtered, steps);
  const inferred = inferSurface(filtered, events.contacts);
  const measured: GroundReaction = { ...inferred.ground, ...(byForce !== null && { massByForce: byForce }) };
  const { rows, unmet } = computeRows(measured, steps, settings.metrics);

  const pairs = stridePairs(rows);
  const units = pairs.length > 0 ? pairs : rows.map((_, k) => [k]);
  const statedMass = measured.subject.mass ?? null;
  const mass = statedMass ?? byForce;
  const normalisers = { mass, gravity: measured.gravity, speed: measured.speed ?? null };
  const summaries: Record<string, MetricSummary> = {};
  const notComputed: NotComputed[] = [];
  for (const metric of settings.metrics) {
    const need = unmet.get(metric.id);
    const absent = need === undefined ? nowhere(metric, rows) : reasonOf(metric, need);
    if (absent !== null) notComputed.push(absent);
    const summary = absent === null ? summarise(metric, rows, units, normalisers, level) : undefined;
    if (summary !== undefined) summaries[metric.id] = summary;
  }

  const computed = settings.metrics
    .map(({ id }) => id)
    .filter((id) => !notComputed.some((entry) => entry.id === id));
  const cautions: Caution[] = [
    ...stated.cautions,
    ...recordingCautions(stated, pairs.length, computed),
    ...massCautions(statedMass, byForce),
    ...balanceCautions(measured, steps),
    ...inferred.cautions,
    ...events.cautions,
  ];
  return {
    schema: "gait-kinetics/trial/1",
    settings: settingsOf(measured, events, { mass, statedMass, byForce, eventCutoff, level }),
    subject: measured.subject,
    contacts: events.contacts,
    partialContacts: events.partialContacts,
    steps: rows,
    summary: {
      strides: pairs.length,
      impactPeakShare: shareWithImpactPeak(measured, steps),
      metrics: summaries,
    },
    curves: curvesOf(measured, events),
    notComputed,
    cautions,
  };
}

function requireGroundReaction(ground: GroundReaction): void {
  if (ground?.force?.up instanceof Float64Array) return;
  fail(
    "wrong-type",
    "ground is no ground reaction: its force.up must be a Float64Array; a recording becomes one by toGroundReaction",
    {
      argument: "ground",
    },
  );
}

/** The ground reaction with what the options state in place of what it says itself. */
function withStatements(ground: GroundReaction, settings: Complete<AnalyseTrialOptions>): GroundReaction {
  const { mass, speed, surface, grade } = settings;
  if (mass !== null)
    requireNumber("mass", mass, {
      above: 0,
      below: 500,
      unit: "kg",
      hint: "a larger number may be a weight in newtons",
    });
  if (speed !== null)
    requireNumber("speed", speed, {
      from: 0,
      below: 13,
      unit: "m/s",
      hint: "a larger number may be in km/h",
    });
  if (surface !== null) requireOneOf("surface", surface, ["ground", "belt"]);
  if (grade !== null)
    requireNumber("grade", grade, { above: -1, below: 1, hint: "rise over run: 5 % is 0.05" });
  return {
    ...ground,
    ...(mass !== null && { subject: { ...ground.subject, mass } }),
    ...(speed !== null && { speed }),
    ...(surface !== null && { surface }),
    ...(grade !== null && { grade }),
  };
}

function filteredCopy(ground: GroundReaction, filter: TrialFilter | null, asked: boolean): GroundReaction {
  if (filter === null) return ground;
  if (ground.settings.filter !== null && !asked) return ground;
  if (!asked && filter.cutoff >= ground.sampleRate / 2) {
    fail(
      "out-of-range",
      `the sampling rate is ${ground.sampleRate} Hz; the default filter of ${filter.cutoff} Hz needs more than ${2 * filter.cutoff} Hz: state a lower cutoff, or no filter`,
      { argument: "filter", values: { sampleRate: ground.sampleRate, cutoff: filter.cutoff } },
    );
  }
  return lowPassGroundReaction(ground, filter);
}

/** No running contact with a flight on either side fits into less, s. */
const SHORT_RECORDING = 0.5;

function refuseNoContact(ground: GroundReaction, { contacts, partialContacts, settings }: Events): void {
  if (contacts.length > 0) return;
  const { threshold, shortestContact } = settings;
  let least = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  // Of plates kept apart the most loaded one, since contacts are looked for on each.
  for (const { force } of ground.plates ?? [ground]) {
    const [low, high] = extremesOf(force.up);
    if (high > largest) [least, largest] = [low, high];
  }
  // A recording shorter than a contact or two says nothing of the platform.
  const short = ground.force.up.length < SHORT_RECORDING * ground.sampleRate;
  const why = short ? "; the recording is too short to hold one" : noContactBecause(least, largest, settings);
  const { length } = partialContacts;
  const cut =
    length > 0
      ? `; ${length} contact${length > 1 ? "s are" : " is"} cut by the recording's ends${ground.plates === undefined ? "" : " or part of a foot across two plates"}`
      : "";
  fail(
    "no-contact",
    `no complete contact was found: the vertical force reaches ${largest.toFixed(1)} N and a contact must rise above and fall below ${threshold.toFixed(1)} N and last ${shortestContact} s or longer${why}${cut}`,
    { argument: "ground", values: { least, largest, threshold, partialContacts: length } },
  );
}

function extremesOf(samples: Float64Array): [least: number, largest: number] {
  let least = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  for (const value of samples) {
    if (value < least) least = value;
    if (value > largest) largest = value;
  }
  return [least, largest];
}

function noContactBecause(least: number, largest: number, settings: Events["settings"]): string {
  const { threshold, shortestFlight } = settings;
  if (least > threshold) {
    return `; it never falls below ${least.toFixed(0)} N: nobody leaves the ground, or the platform was not zeroed`;
  }
  if (largest < threshold) return "";
  return `; it rises and falls, but stays up for less, or stays down for less than the ${shortestFlight} s that end a contact: is the sampling rate right?`;
}

function shareWithImpactPeak(ground: GroundReaction, steps: readonly Step[]): number | null {
  if (ground.massByForce === undefined && ground.subject.mass === undefined) return null;
  return steps.filter((step) => impactPeak(ground, step) !== null).length / steps.length;
}

function curvesOf(ground: GroundReaction, { contacts }: Events): Trial["curves"] {
  const { forward, right } = ground.force;
  const curve = (direction: Direction) => meanCurves(ground, direction, contacts);
  return {
    percent: Array.from({ length: CURVE_POINTS }, (_, p) => p),
    up: curve("up"),
    ...(forward && { forward: curve("forward") }),
    ...(right && { right: curve("right") }),
  };
}

function settingsOf(
  ground: GroundReaction,
  events: Events,
  rest: {
    mass: number | null;
    statedMass: number | null;
    byForce: number | null;
    eventCutoff: number | null;
    level: number;
  },
): Trial["settings"] {
  const { threshold, fallLevel, shortestContact, shortestFlight, sides } = events.settings;
  return {
    version: VERSION,
    sampleRate: ground.sampleRate,
    duration: ground.force.up.length / ground.sampleRate,
    mass: rest.mass,
    massStated: rest.statedMass !== null,
    massByForce: rest.byForce,
    gravity: ground.gravity,
    speed: ground.speed ?? null,
    surface: ground.surface ?? null,
    grade: ground.grade ?? 0,
    filter: ground.settings.filter,
    events: { threshold, fallLevel, cutoff: rest.eventCutoff, shortestContact, shortestFlight, sides },
    force: {
      offset: ground.settings.offset ?? {},
      driftRemoved: ground.settings.driftRemoved,
      flights: ground.settings.flights,
      ...(ground.settings.plates && { plates: ground.settings.plates }),
      ...(ground.plates && { apart: ground.plates.map(({ plate }, k) => plate ?? `plate ${k + 1}`) }),
    },
    level: rest.level,
    interval: "Student's t with the effective number of strides",
  };
}
