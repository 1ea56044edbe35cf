import {
  type Caution,
  type Complete,
  type Fraction,
  fail,
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type NewtonSeconds,
  type Newtons,
  type Quantity,
  requireNumber,
  type Seconds,
  STANDARD_GRAVITY,
  type StepsPerMinute,
  withDefaults,
} from "../../units/index.js";
import { LEG_LENGTH_PER_HEIGHT } from "../springMass/legGeometry.js";
import { type PublishedCadenceChange, publishedCadenceChanges } from "./publishedCadenceChanges.js";
import { type SpringMassStep, type SteadyRunner, springMassStep, stepOfStiffness } from "./springMassStep.js";

/** Means of a runner's trial; what is not stated among the last five is taken from the model. */
export interface CadenceRunner {
  readonly mass: Kilograms;
  readonly speed: MetresPerSecond;
  readonly cadence: StepsPerMinute;
  readonly contactTime: Seconds;
  /** Greater trochanter to ground; or give `height`. */
  readonly legLength?: Metres | undefined;
  readonly height?: Metres | undefined;
  /** Forward travel of the centre of pressure in contact; 0 where left out. */
  readonly copTravel?: Metres | undefined;
  readonly peakVerticalForce?: Newtons | undefined;
  readonly verticalOscillation?: Metres | undefined;
  readonly verticalStiffness?: Quantity<"N/m"> | undefined;
  readonly legStiffness?: Quantity<"N/m"> | undefined;
  readonly peakBrakingForce?: Newtons | undefined;
  readonly brakingImpulse?: NewtonSeconds | undefined;
}

/** What {@link cadenceWhatIf} assumes. */
export interface CadenceWhatIfOptions {
  /** Changes of cadence as shares of it, each within −0.26 to 0.36 and not 0. */
  readonly changes?: readonly Fraction[] | undefined;
  /** Leg stiffness grows with cadence to this power. */
  readonly stiffnessExponent?: number | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/**
 * Cadence 10 and 5 % lower and higher. The exponent takes leg stiffness from 7.0 to 16.3 kN/m while stride frequency goes
 * from 26 % below to 36 % above the preferred one. Source: Farley & González 1996, J Biomech 29:181, at 2.5 m/s.
 */
export const CADENCE_WHAT_IF_DEFAULTS: Complete<CadenceWhatIfOptions> = {
  changes: [-0.1, -0.05, 0.05, 0.1],
  stiffnessExponent: 1.389,
  gravity: STANDARD_GRAVITY,
};

/** A range with what it starts from. */
export interface WhatIfRange {
  readonly unit: string;
  /** At the runner's own cadence. */
  readonly baseline: number;
  readonly low: number;
  readonly high: number;
}

/** One quantity at another cadence. */
export interface CadenceQuantity extends WhatIfRange {
  /** Id of the metric. */
  readonly id: keyof SpringMassStep;
  /** Whether `baseline` is the runner's own value or the model's. */
  readonly from: "measured" | "model";
  /** The value of a step times the steps of a kilometre; `null` where such a sum means nothing. */
  readonly perKilometre: WhatIfRange | null;
}

/** What one change of cadence may bring. */
export interface CadenceChange {
  readonly change: Fraction;
  readonly cadence: StepsPerMinute;
  /** At the same speed. */
  readonly stepsPerKilometre: number;
  /** What experiments found: read this first. */
  readonly published: readonly PublishedCadenceChange[];
  /** The runner's own values carried through the model. */
  readonly quantities: readonly CadenceQuantity[];
}

/** An answer in ranges. */
export interface CadenceWhatIf {
  readonly changes: readonly CadenceChange[];
  readonly assumptions: readonly string[];
  /** What the model has no part of. */
  readonly notModelled: readonly string[];
  readonly settings: Complete<CadenceWhatIfOptions>;
  readonly cautions: readonly Caution[];
}

/** Unit of each quantity, and of its sum over a kilometre. */
const QUANTITIES: Readonly<Record<keyof SpringMassStep, readonly [step: string, kilometre: string | null]>> =
  {
    peakVerticalForce: ["N", "N/km"],
    verticalOscillation: ["m", "m/km"],
    peakBrakingForce: ["N", "N/km"],
    brakingImpulse: ["N s", "N s/km"],
    contactTime: ["s", "s/km"],
    aerialTime: ["s", "s/km"],
    legStiffness: ["N/m", null],
    verticalStiffness: ["N/m", null],
  };

/** Measured and modelled peak force may be this far apart before it is said. Source: this library's choice. */
const MODEL_MISFIT = 0.1;

/**
 * Says in ranges what another cadence at the same speed may bring: what experiments found, and the runner's own values
 * carried through the spring-mass model under two assumptions.
 *
 * Formula: sine-wave model of {@link springMassFromTimes} at the new step time, once with the duty factor unchanged, once with
 * k_leg = k₀ (cadence ÷ own cadence)ⁿ; vertical oscillation = drop + g t_a²/8; braking as the forward part of a force through the
 * centre of mass. A measured value is multiplied by the model's ratio. `low` and `high` bound
 * the results for all contact times from the one to the other; per kilometre each times
 * 1000 × cadence/(60 × speed).
 * Units: SI and steps/min in and out.
 * Limits: a thought experiment, not a forecast: ranges hold what the two assumptions span, not how runners differ. The
 * model knows no impact, no sideways force and no foot strike. A lower value per step may be a higher one per kilometre. It
 * describes load between foot and ground; it does not diagnose.
 * Source: Morin et al. 2005, J Appl Biomech 21:167; Farley & González 1996, J Biomech 29:181; published changes name theirs.
 * @param runner - Means of a trial, running: contact shorter than the step.
 * @param options - Changes, exponent, gravity; {@link CADENCE_WHAT_IF_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-value`: neither leg length nor height; `out-of-range`, `wrong-type`, `not-finite`: a number out
 * of bounds, a contact as long as the step, a sweep that does not fit the leg.
 * @example
 * const runner = { mass: 70, speed: 3, cadence: 166.67, contactTime: 0.245, height: 1.75 };
 * const [quicker] = cadenceWhatIf(runner, { changes: [0.1] }).changes;
 * quicker.quantities.find(({ id }) => id === "verticalOscillation").low; // 0.06435
 */
export function cadenceWhatIf(
  runner: CadenceRunner,
  options: CadenceWhatIfOptions = CADENCE_WHAT_IF_DEFAULTS,
): CadenceWhatIf {
  const settings = withDefaults(CADENCE_WHAT_IF_DEFAULTS, options);
  const { stiffnessExponent, gravity } = settings;
  const exponentHint = "0 keeps the stiffness, 2 is near a constant duty factor";
  requireNumber("stiffnessExponent", stiffnessExponent, { from: 0, to: 3, hint: exponentHint });
  const steady = steadyRunner(runner, gravity);
  const stepTime =
    60 / requireNumber("cadence", runner.cadence, { above: 60, below: 400, unit: "steps/min" });
  const hint = "in running a contact is shorter than a step";
  requireNumber("contactTime", runner.contactTime, { above: 0, below: stepTime, unit: "s", hint });
  const own = springMassStep(steady, stepTime, runner.contactTime);
  if (own === null) {
    fail("out-of-range", "speed × contact time does not fit twice the leg; one of the three is wrong", {
      argument: "speed",
      values: { speed: runner.speed, contactTime: runner.contactTime, legLength: steady.legLength },
    });
  }
  for (const [id, [unit]] of Object.entries(QUANTITIES)) {
    const stated = id === "aerialTime" ? undefined : runner[id as keyof CadenceRunner];
    if (stated !== undefined) requireNumber(id, stated, { above: 0, unit });
  }
  const cautions: Caution[] = [];
  const measured = runner.peakVerticalForce;
  if (measured !== undefined && Math.abs(own.peakVerticalForce / measured - 1) > MODEL_MISFIT) {
    cautions.push({
      code: "model-misfit",
      message: `the model's peak force is ${own.peakVerticalForce} N, the measured one ${measured} N; ratios from a model that misses by more than 10 % are a rougher guide`,
      where: "peakVerticalForce",
      values: { model: own.peakVerticalForce, measured },
    });
  }
  const changes = settings.changes.map((change): CadenceChange => {
    requireNumber("changes", change, { from: -0.26, to: 0.36, hint: "0.05 is 5 % more steps a minute" });
    if (change === 0)
      fail("out-of-range", "changes holds 0; there is nothing to ask", { argument: "changes" });
    const rate = 1 + change;
    const kept = springMassStep(steady, stepTime / rate, runner.contactTime / rate);
    const stiffened = stepOfStiffness(steady, stepTime / rate, own.legStiffness * rate ** stiffnessExponent);
    const steps = kept && stiffened && stepsBetween(steady, stepTime / rate, kept, stiffened);
    if (steps === null) cautions.push(noSuchStep(change));
    const cadence = runner.cadence * rate;
    return {
      change,
      cadence,
      stepsPerKilometre: stepsPerKilometre(cadence, runner.speed),
      published: publishedCadenceChanges(change > 0 ? "higher" : "lower"),
      quantities: steps === null ? [] : quantitiesOf(runner, own, steps, cadence),
    };
  });
  return {
    changes,
    assumptions: [
      "the same speed",
      `one end of each range: the duty factor stays, so contact time falls as cadence rises`,
      `the other: leg stiffness grows with cadence to the power ${stiffnessExponent} (Farley & González 1996: 7.0 to 16.3 kN/m over −26 to +36 % of the preferred stride frequency, at 2.5 m/s)`,
      "leg length and the travel of the centre of pressure stay",
      "the force points from foot to centre of mass and rises and falls as half a sine",
    ],
    notModelled: ["impact peak and loading rates", "mediolateral force", "foot strike", "metabolic cost"],
    settings,
    cautions,
  };
}

function steadyRunner(runner: CadenceRunner, gravity: number): SteadyRunner {
  const { mass, speed, height, copTravel = 0 } = runner;
  const legLength = runner.legLength ?? (height === undefined ? undefined : LEG_LENGTH_PER_HEIGHT * height);
  if (legLength === undefined) {
    fail("missing-value", "the model needs legLength or height", { argument: "legLength" });
  }
  requireNumber("speed", speed, { above: 0, unit: "m/s" });
  return { mass, speed, legLength, copTravel, gravity };
}

function stepsPerKilometre(cadence: number, speed: number): number {
  return (1000 * cadence) / (60 * speed);
}

/** Steps whose contact times lie evenly from one end of the range to the other: a quantity may turn between them. */
function stepsBetween(
  runner: SteadyRunner,
  stepTime: number,
  one: SpringMassStep,
  other: SpringMassStep,
): readonly SpringMassStep[] {
  const inner = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9].flatMap((part) => {
    const contactTime = one.contactTime + part * (other.contactTime - one.contactTime);
    return springMassStep(runner, stepTime, contactTime) ?? [];
  });
  return [one, ...inner, other];
}

function quantitiesOf(
  runner: CadenceRunner,
  own: SpringMassStep,
  reached: readonly SpringMassStep[],
  cadence: number,
): readonly CadenceQuantity[] {
  const stepsBefore = stepsPerKilometre(runner.cadence, runner.speed);
  const steps = stepsPerKilometre(cadence, runner.speed);
  return (Object.keys(QUANTITIES) as (keyof SpringMassStep)[]).map((id) => {
    const [unit, kilometre] = QUANTITIES[id];
    const stated = id === "aerialTime" ? undefined : runner[id];
    const baseline = stated ?? own[id];
    const values = reached.map((step) => (baseline * step[id]) / own[id]);
    const low = Math.min(...values);
    const high = Math.max(...values);
    return {
      id,
      // The aerial time is what cadence and contact time leave of the step.
      from: stated === undefined && id !== "aerialTime" ? "model" : "measured",
      unit,
      baseline,
      low,
      high,
      perKilometre:
        kilometre === null
          ? null
          : { unit: kilometre, baseline: baseline * stepsBefore, low: low * steps, high: high * steps },
    };
  });
}

function noSuchStep(change: number): Caution {
  return {
    code: "no-such-step",
    message: `at ${Math.round(1000 * change) / 10} % change of cadence the model has no step that keeps one of its assumptions: no flight would be left, or the leg would be too short; no range is given`,
    where: "changes",
    values: { change },
  };
}
