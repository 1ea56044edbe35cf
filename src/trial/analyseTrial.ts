import { type DetectEventsOptions, detectEvents, type Gait, type Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import { CATALOGUE, impactPeak, type Metric, shareResults } from "../metrics/index.js";
import { checkFootwear, type Direction, type Surface } from "../recording/index.js";
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
import { againstAir, airDragCautions, airDragOf, type TrialAirDrag } from "./airDragOf.js";
import { computeRows, requireMetrics } from "./computeRows.js";
import { filteredCopy, TRIAL_FILTER, type TrialFilter } from "./filteredCopy.js";
import { hasSteps, notOfGait, stepsInGait } from "./gait.js";
import { inferSurface } from "./inferSurface.js";
import { massByForce } from "./massByForce.js";
import { meanCurves } from "./meanCurves.js";
import { noStrideHas, nowhere, reasonOf } from "./notComputed.js";
import { notOfOneFoot } from "./oneFoot/notOfOneFoot.js";
import { ofOneFoot, stepsOfOneFoot } from "./oneFoot/ofOneFoot.js";
import { oneFootAlone } from "./oneFoot/oneFootAlone.js";
import { belowZeroCautions } from "./quality/belowZeroCautions.js";
import { flightCautions } from "./quality/flightCautions.js";
import { spacingCautions } from "./quality/spacingCautions.js";
import { speedCheck } from "./quality/speedCheck.js";
import { spikeCautions } from "./quality/spikeCautions.js";
import { travelCautions } from "./quality/travelCautions.js";
import { refuseImplausibleForce } from "./refuseImplausibleForce.js";
import { refuseNoContact } from "./refuseNoContact.js";
import { sidesByMarkers, type ToldEvents } from "./sidesByMarkers.js";
import { CURVE_POINTS, wholeContacts } from "./stanceCurve.js";
import { strideBalance } from "./strideBalance.js";
import { stridePairs } from "./strideValues.js";
import { summarise } from "./summarise.js";
import { travelOf } from "./travelOf.js";
import type { LandingSettings, MetricSummary, NotComputed, Trial } from "./trial.js";
import { balanceCautions, massCautions, recordingCautions } from "./trialCautions.js";
import { trialLanding } from "./trialLanding.js";

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
  /** What was on the feet, in words: one line of text, such as `road shoe, 250 g`. */
  readonly footwear?: string | null | undefined;
  /**
   * Drag of the air, N backward, that the work is done against; `"estimated"` from speed, mass and height, none on a belt;
   * `null` for none.
   */
  readonly airDrag?: TrialAirDrag | undefined;
  /** `null` for no filter. */
  readonly filter?: TrialFilter | null | undefined;
  readonly events?: TrialEventsOptions | undefined;
  /** What the recording holds; `auto` tells it from the contacts. The same option of `events` goes before it. */
  readonly gait?: Gait | "auto" | undefined;
  readonly metrics?: readonly Metric[] | undefined;
  /** Of the intervals of means. */
  readonly level?: Fraction | undefined;
}

/** The whole catalogue behind {@link TRIAL_FILTER}; 95 % intervals. */
export const ANALYSE_TRIAL_DEFAULTS: Complete<AnalyseTrialOptions> = {
  mass: null,
  speed: null,
  surface: null,
  grade: null,
  footwear: null,
  airDrag: null,
  filter: TRIAL_FILTER,
  events: {},
  gait: "auto",
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
 * outside what it allows, a sampling rate too low for the default filter, or a force that no person's ground reaction is; `missing-value`: a drag is to be
 * estimated without speed, surface, mass or height; `wrong-type`, `not-finite`, `unknown-option`: no ground reaction, an option that is none, or a metric of the caller's own that gives
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
  const found = detectEvents(eventCopy, { gait: settings.gait, ...eventOptions });
  refuseNoContact(eventCopy, found);
  const told = sidesByMarkers(stated, found, eventOptions.firstFoot ?? stated.firstFoot ?? null);
  const oneFoot = oneFootAlone(filtered, told);
  const events = oneFoot === null ? told : ofOneFoot(told);

  const { contacts, partialContacts } = events;
  const { gait } = events.settings;
  const steps = oneFoot === null ? stepsInGait(contacts, partialContacts, gait) : stepsOfOneFoot(events);
  const byForce = oneFoot === null ? massByForce(filtered, steps) : null;
  refuseImplausibleForce(filtered, contacts, byForce);
  const travel = travelOf(filtered, contacts);
  const inferred = inferSurface(filtered, contacts, travel);
  const balance = oneFoot === null ? strideBalance(inferred.ground, steps) : null;
  const measured: GroundReaction = {
    ...inferred.ground,
    ...(byForce !== null && { massByForce: byForce }),
    ...(balance?.forward && { forwardBalance: balance.forward.share }),
  };
  const airDrag = airDragOf(measured, settings.airDrag);
  // Assessment and metrics of one step share what they work out.
  const shared = steps.map(shareResults);
  const paced = hasSteps(gait) ? speedCheck(measured, contacts) : null;
  const sided = contacts.some(({ side }) => side !== "unknown");
  const ofBoth = oneFoot === null ? [] : notOfOneFoot(settings.metrics, sided);
  const given = settings.metrics.filter(({ id }) => !ofBoth.some((entry) => entry.id === id));
  const landing = trialLanding(measured, shared, given, paced?.off ?? 0);
  const dropped = [...ofBoth, ...landing.dropped, ...notOfGait(settings.metrics, gait)];
  const without = new Map(dropped.map((entry) => [entry.id, entry]));
  const wanted = settings.metrics.filter(({ id }) => !without.has(id));
  const { rows, unmet } = computeRows(measured, shared, againstAir(wanted, airDrag));

  const about = { partialContacts, cautions: oneFoot === null ? [] : [oneFoot] };
  const pairs = hasSteps(gait) ? stridePairs(rows, about) : [];
  const units = pairs.length > 0 ? pairs : rows.map((_, k) => [k]);
  const statedMass = measured.subject.mass ?? null;
  const mass = statedMass ?? byForce;
  const normalisers = { mass, gravity: measured.gravity, speed: measured.speed ?? null };
  const summaries: Record<string, MetricSummary> = {};
  const notComputed: NotComputed[] = [];
  for (const metric of settings.metrics) {
    const need = unmet.get(metric.id);
    const absent =
      without.get(metric.id) ?? (need === undefined ? nowhere(metric, rows) : reasonOf(metric, need));
    if (absent !== null) notComputed.push(absent);
    if (absent !== null) continue;
    const summary = summarise(metric, rows, units, normalisers, level);
    if (summary === undefined) notComputed.push(noStrideHas(metric));
    else summaries[metric.id] = summary;
  }

  const computed = settings.metrics.filter(({ id }) => !notComputed.some((entry) => entry.id === id));
  const cautions: Caution[] = [
    ...stated.cautions,
    ...recordingCautions(
      stated,
      { pairs: pairs.length, whole: steps.some(({ nextSameSide }) => nextSameSide !== undefined) },
      computed.map(({ id }) => id),
    ).filter(({ code }) => hasSteps(gait) || code !== "no-stride"),
    ...massCautions(statedMass, byForce),
    ...balanceCautions(balance, measured),
    ...flightCautions(measured, contacts, partialContacts),
    ...spikeCautions(measured, contacts),
    ...about.cautions,
    ...spacingCautions(contacts, partialContacts),
    ...travelCautions(measured, travel),
    ...(paced?.cautions ?? []),
    ...belowZeroCautions(rows),
    ...landing.cautions,
    ...airDragCautions(measured, airDrag, computed),
    ...inferred.cautions,
    ...events.cautions,
  ];
  return {
    schema: "gait-kinetics/trial/1",
    settings: settingsOf(measured, events, {
      mass,
      statedMass,
      byForce,
      landing: landing.settings,
      airDrag,
      eventCutoff,
      level,
    }),
    subject: measured.subject,
    contacts,
    partialContacts,
    steps: rows,
    summary: {
      strides: pairs.length,
      impactPeakShare: gait === "running" ? shareWithImpactPeak(measured, steps) : null,
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
  const { mass, speed, surface, grade, footwear } = settings;
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
  if (footwear !== null) checkFootwear("footwear", footwear);
  return {
    ...ground,
    ...(mass !== null && { subject: { ...ground.subject, mass } }),
    ...(speed !== null && { speed }),
    ...(surface !== null && { surface }),
    ...(grade !== null && { grade }),
    ...(footwear !== null && { footwear }),
  };
}

function shareWithImpactPeak(ground: GroundReaction, steps: readonly Step[]): number | null {
  if (ground.massByForce === undefined && ground.subject.mass === undefined) return null;
  return steps.filter((step) => impactPeak(ground, step) !== null).length / steps.length;
}

function curvesOf(ground: GroundReaction, { contacts }: ToldEvents): Trial["curves"] {
  const { forward, right } = ground.force;
  const own = wholeContacts(contacts);
  const curve = (direction: Direction) => meanCurves(ground, direction, own);
  return {
    percent: Array.from({ length: CURVE_POINTS }, (_, p) => p),
    up: curve("up"),
    ...(forward && { forward: curve("forward") }),
    ...(right && { right: curve("right") }),
  };
}

function settingsOf(
  ground: GroundReaction,
  events: ToldEvents,
  rest: {
    mass: number | null;
    statedMass: number | null;
    byForce: number | null;
    landing: LandingSettings | null;
    airDrag: number | null;
    eventCutoff: number | null;
    level: number;
  },
): Trial["settings"] {
  const { gait, gaitStated, ...found } = events.settings;
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
    footwear: ground.footwear ?? null,
    grade: ground.grade ?? 0,
    filter: ground.settings.filter,
    landing: rest.landing,
    airDrag: rest.airDrag,
    gait,
    gaitStated,
    events: { ...found, cutoff: rest.eventCutoff },
    force: {
      offset: ground.settings.offset ?? {},
      driftRemoved: ground.settings.driftRemoved,
      flights: ground.settings.flights,
      ...(ground.settings.plates && { plates: ground.settings.plates }),
      ...(ground.settings.markers && { markers: ground.settings.markers }),
      ...(ground.plates && { apart: ground.plates.map(({ plate }, k) => plate ?? `plate ${k + 1}`) }),
    },
    level: rest.level,
    interval: "Student's t with the effective number of strides",
  };
}
