import { integralBetween } from "../filters/index.js";
import { type FlightNoise, flightNoise, type GroundReaction } from "../force/index.js";
import { type Caution, type Fraction, fail, type Newtons, requireNumber } from "../units/index.js";
import type { Step } from "./contact.js";

/** Least threshold by rule, N. Common practice. */
export const LEAST_THRESHOLD: Newtons = 20;
/** Standard deviations of the force in flight that the threshold by rule stays above its mean. */
export const THRESHOLD_NOISE_FACTOR = 5;
/** Least threshold from the noise alone, N: where a recording has none, the threshold must still be above zero. */
const LEAST_NOISE_THRESHOLD: Newtons = 1;
/** A threshold from the noise with fewer standard deviations moves events by tens of milliseconds (synthetic truth). */
const SAFE_NOISE_FACTOR = 4;

/** How a contact threshold was come by. */
export type ThresholdRule = "default" | "stated" | "share of body weight" | "noise in flight";

/** What was asked of the threshold. */
export interface ThresholdChoice {
  readonly threshold: Newtons | null;
  readonly thresholdShare: Fraction | null;
  readonly noiseFactor: number | null;
}

/** The threshold and what it rests on. */
export interface ChosenThreshold {
  readonly threshold: Newtons;
  readonly rule: ThresholdRule;
  /** Of the body, where a share of it was asked for. */
  readonly bodyWeight: Newtons | null;
  /** Of every plate whose flights tell. */
  readonly noises: readonly FlightNoise[];
  readonly cautions: readonly Caution[];
}

/**
 * Chooses the contact threshold.
 *
 * @param ground - The copy that events are read from.
 * @param choice - What was asked for; at most one of the three.
 * @param firstPass - Steps by the default threshold, which the body weight is taken from where no mass is stated.
 */
export function chooseThreshold(
  ground: GroundReaction,
  choice: ThresholdChoice,
  firstPass: () => readonly Step[],
): ChosenThreshold {
  refuseTwo(choice);
  const noises = (ground.plates ?? [ground]).map(flightNoise).filter((plate) => plate !== null);
  const chosen = (
    threshold: Newtons,
    rule: ThresholdRule,
    bodyWeight: Newtons | null = null,
  ): ChosenThreshold => ({
    threshold,
    rule,
    bodyWeight,
    noises,
    cautions: thresholdCautions(threshold, rule, noises, choice.noiseFactor),
  });
  if (choice.threshold !== null) {
    return chosen(requireNumber("threshold", choice.threshold, { above: 0, unit: "N" }), "stated");
  }
  if (choice.thresholdShare !== null) {
    const share = requireNumber("thresholdShare", choice.thresholdShare, {
      above: 0,
      below: 1,
      hint: "a share of body weight: 5 % is 0.05",
    });
    const weight = bodyWeightOf(ground, firstPass);
    return chosen(share * weight, "share of body weight", weight);
  }
  if (choice.noiseFactor !== null) {
    const factor = requireNumber("noiseFactor", choice.noiseFactor, { above: 0 });
    const worst = noisiest(noises, factor);
    if (worst === null) {
      fail(
        "missing-value",
        "noiseFactor asks for a threshold from the noise in flight, and no flight phase was found: state a threshold in newtons",
        { argument: "noiseFactor" },
      );
    }
    return chosen(Math.max(LEAST_NOISE_THRESHOLD, levelAbove(worst, factor)), "noise in flight");
  }
  const worst = noisiest(noises, THRESHOLD_NOISE_FACTOR);
  const above = worst === null ? 0 : levelAbove(worst, THRESHOLD_NOISE_FACTOR);
  return chosen(Math.max(LEAST_THRESHOLD, above), "default");
}

/** Level that lies a number of standard deviations above the mean force in flight. */
export function levelAbove({ mean, sd }: FlightNoise, factor: number): Newtons {
  return mean + factor * sd;
}

function refuseTwo(choice: ThresholdChoice): void {
  const given = (["threshold", "thresholdShare", "noiseFactor"] as const).filter(
    (name) => choice[name] !== null,
  );
  if (given.length < 2) return;
  fail("conflict", `${given.join(" and ")} are given; the threshold follows from one of them`, {
    argument: given[1],
    values: { given },
  });
}

function noisiest(noises: readonly FlightNoise[], factor: number): FlightNoise | null {
  return noises.reduce<FlightNoise | null>(
    (worst, noise) =>
      worst === null || levelAbove(noise, factor) > levelAbove(worst, factor) ? noise : worst,
    null,
  );
}

/** Stated mass × gravity; else the mean vertical force over whole strides, which carries the body, over the slope's cosine. */
function bodyWeightOf(ground: GroundReaction, firstPass: () => readonly Step[]): Newtons {
  const { subject, gravity, grade = 0, sampleRate } = ground;
  if (subject.mass !== undefined) return subject.mass * gravity;
  let impulse = 0;
  let time = 0;
  let until = Number.NEGATIVE_INFINITY;
  for (const { contact, nextSameSide } of firstPass()) {
    if (nextSameSide === undefined || contact.initialContact < until) continue;
    until = nextSameSide.initialContact;
    impulse += integralBetween(ground.force.up, sampleRate, contact.initialContact, until);
    time += until - contact.initialContact;
  }
  if (time > 0) return (impulse / time) * Math.hypot(1, grade);
  fail(
    "missing-value",
    "thresholdShare is a share of body weight, and the mass is neither stated nor to be had from whole strides: state it, or a threshold in newtons",
    { argument: "mass" },
  );
}

function thresholdCautions(
  threshold: Newtons,
  rule: ThresholdRule,
  noises: readonly FlightNoise[],
  noiseFactor: number | null,
): Caution[] {
  const noise = noisiest(noises, THRESHOLD_NOISE_FACTOR);
  if (noise === null) return [];
  const values = { threshold, mean: noise.mean, sd: noise.sd };
  const inFlight = `(mean ${noise.mean.toFixed(1)}, SD ${noise.sd.toFixed(1)} N)`;
  if (rule === "default") {
    if (threshold <= LEAST_THRESHOLD) return [];
    return [
      {
        code: "threshold-raised",
        message: `the contact threshold is ${threshold.toFixed(1)} N instead of ${LEAST_THRESHOLD} N, to stay clear of the force in flight ${inFlight}; contact times read shorter`,
        values,
      },
    ];
  }
  const clear = levelAbove(noise, THRESHOLD_NOISE_FACTOR);
  const asked = noiseFactor !== null && noiseFactor >= SAFE_NOISE_FACTOR;
  if (threshold >= clear || asked) return [];
  return [
    {
      code: "threshold-in-noise",
      message: `the contact threshold of ${Number(threshold.toFixed(1))} N lies within the force in flight ${inFlight}; events may be tens of milliseconds off, ${clear.toFixed(0)} N would clear it`,
      values,
    },
  ];
}
