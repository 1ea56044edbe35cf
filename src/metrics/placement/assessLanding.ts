import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import {
  LANDING_BALANCE_LIMIT,
  LANDING_MARGIN,
  type LandingMargin,
  landingMargin,
} from "../../models/index.js";
import {
  type Caution,
  type Complete,
  type Fraction,
  type MetresPerSecond,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { landingOf } from "./landingOf.js";

/** Mean forward force over the strides, as a share of the vertical beyond the grade, from which it is said. */
export const LANDING_BALANCE_CAUTION: Fraction = 0.005;
/** Share of the stated mass that the ground may fail to carry; more may be in somebody's hands. A judgement. */
export const LANDING_MISSING_WEIGHT: Fraction = 0.05;
/** Share of the contacts with a stride that may lack a distance before it is said. */
const FEW_ABSENT = 0.1;

/** What a trial says of its touchdown and take-off distances as a whole. */
export interface LandingAssessment {
  /** Why they are not to be given for this trial; `null` where they may. */
  readonly absence: { readonly code: string; readonly message: string } | null;
  /** How far they may be off as a whole: half widths of what no number of strides takes away; `null` with an absence. */
  readonly margin: LandingMargin | null;
  readonly cautions: readonly Caution[];
}

/** What is known beside the recording. */
export interface AssessLandingOptions {
  /** How far the stated speed of the belt may be off. */
  readonly speedError?: MetresPerSecond | undefined;
}

/** The speed as it is stated. */
export const ASSESS_LANDING_DEFAULTS: Complete<AssessLandingOptions> = { speedError: 0 };

/**
 * Says whether a trial keeps the assumptions of touchdown and take-off distance by force, and how far they may be off.
 *
 * Formula: `landingMargin` of mean forward ÷ mean vertical force − grade over all strides, the toe's share of it alone with a
 * measured centre of mass; on a belt whose speed may be off by e, plus e × the mean time between touch and foot level, by
 * which the belt carries the foot.
 * Units: m out.
 * Limits: below 5 % of the stated mass, weight that a hand carries is not told from a scale's error, and moves both by some
 * 4 mm for each per cent; nor is a plate that stands elsewhere than stated.
 * Source: the size of a neglected forward force follows from the balance of angular momentum; the toe's share is a judgement.
 * @param ground - As the metrics get it.
 * @param steps - Contacts with their neighbours.
 * @param options - {@link ASSESS_LANDING_DEFAULTS} where left out.
 * @returns The reason where the trial has no such distances, the margin and the cautions where it has.
 * @throws GaitKineticsError `wrong-type`, `out-of-range`, `missing-value`: as the metrics; `out-of-range`, `not-finite`: a
 * speed's error below 0.
 * @example
 * assessLanding({ ...ground, surface: "belt", speed: 3 }, steps).absence // null
 */
export function assessLanding(
  ground: GroundReaction,
  steps: readonly Step[],
  options: AssessLandingOptions = {},
): LandingAssessment {
  const { speedError } = withDefaults<AssessLandingOptions>(ASSESS_LANDING_DEFAULTS, options);
  requireNumber("speedError", speedError, { from: 0, unit: "m/s" });
  const measured = ground.centreOfMass !== undefined;
  const tried = steps.filter(({ nextSameSide }) => measured || nextSameSide !== undefined);
  if (tried.length === 0) return absent("no-stride", "the recording holds no whole stride");
  const { balance, mass, strideTime } = measured ? MEASURED : strideMeans(ground, tried);
  if (Math.abs(balance) > LANDING_BALANCE_LIMIT) {
    return absent(
      "forward-unbalanced",
      `over whole strides the mean forward force is ${(100 * balance).toFixed(1)} % of the vertical beyond the grade: the runner is pulled, speeds up or slows down, or the grade is not the stated one`,
    );
  }
  const stated = ground.subject.mass;
  if (mass !== null && stated !== undefined && mass < (1 - LANDING_MISSING_WEIGHT) * stated) {
    return absent(
      "weight-missing",
      `over whole strides the ground carries ${mass.toFixed(1)} kg of the stated ${stated.toFixed(1)} kg: a hand on a rail or a harness may carry the rest, which moves the distances unseen`,
    );
  }
  const reasons = new Map<string, { readonly message: string; readonly contacts: number }>();
  let [found, loading, unloading] = [0, 0, 0];
  for (const step of tried) {
    const landing = landingOf(ground, step, {});
    if (landing.refused === undefined) {
      found++;
      loading += landing.loading;
      unloading += landing.unloading;
      continue;
    }
    const before = reasons.get(landing.refused);
    reasons.set(landing.refused, {
      message: before?.message ?? landing.message,
      contacts: (before?.contacts ?? 0) + 1,
    });
  }
  const [most] = [...reasons].sort(([, a], [, b]) => b.contacts - a.contacts);
  const without = [...reasons.values()].reduce((sum, { contacts }) => sum + contacts, 0);
  if (most !== undefined && without === tried.length) return absent(most[0], most[1].message);
  const cautions: Caution[] = [];
  if (most !== undefined && without > FEW_ABSENT * tried.length) {
    cautions.push({
      code: "landing-partly-absent",
      message: `${without} of ${tried.length} contacts have no touchdown and take-off distance, most of them since ${most[1].message}`,
      where: WHERE,
      values: { absent: without, contacts: tried.length },
    });
  }
  const { forwardBalance = 0, grade, gravity, subject } = ground;
  const how = { balance: forwardBalance, grade, gravity, height: subject.height };
  const still = measured ? LANDING_MARGIN : landingMargin(balance - forwardBalance, strideTime, how);
  const carried = ground.surface === "belt" ? speedError / found : 0;
  const margin = {
    touchdown: still.touchdown + carried * loading,
    takeOff: still.takeOff + carried * unloading,
  };
  if (Math.abs(balance) > LANDING_BALANCE_CAUTION) {
    cautions.push({
      code: "landing-shifted",
      message: `the mean forward force of ${(100 * balance).toFixed(2)} % of the vertical beyond the grade may move touchdown and take-off distance by ${(1000 * (still.touchdown - LANDING_MARGIN.touchdown)).toFixed(0)} mm; differences between recordings of one session keep less of it`,
      where: WHERE,
      values: { balance, touchdownMargin: margin.touchdown, takeOffMargin: margin.takeOff },
    });
  }
  return { absence: null, margin, cautions };
}

const MEASURED = { balance: 0, mass: null, strideTime: 0 } as const;

const WHERE = "touchdownDistance, takeOffDistance";

function absent(code: string, message: string): LandingAssessment {
  return { absence: { code, message }, margin: null, cautions: [] };
}

/** Mean forward over mean vertical force of all strides together, less the grade, the mass that they carry, kg, and their time. */
function strideMeans(
  { force: { forward, up }, sampleRate, gravity, grade = 0 }: GroundReaction,
  steps: readonly Step[],
): { balance: number; mass: number; strideTime: number } {
  let [sumForward, sumUp, samples] = [0, 0, 0];
  for (const { contact, nextSameSide } of steps) {
    const start = Math.ceil(contact.initialContact * sampleRate);
    const end = Math.ceil((nextSameSide?.initialContact ?? 0) * sampleRate);
    samples += end - start;
    sumUp += sumOf(up, start, end);
    if (forward !== undefined) sumForward += sumOf(forward, start, end);
  }
  const mass = ((sumUp / samples) * Math.hypot(1, grade)) / gravity;
  const balance = forward === undefined ? 0 : sumForward / sumUp - grade;
  return { balance, mass, strideTime: samples / sampleRate / steps.length };
}

function sumOf(samples: Float64Array, start: number, end: number): number {
  let sum = 0;
  for (let i = start; i < end; i++) sum += samples[i] as number;
  return sum;
}
