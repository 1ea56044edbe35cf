import {
  centreOfMassAt,
  contactAtThreshold,
  forceAt,
  type SyntheticTruth,
  type TrueContact,
} from "../../src/synthetic/index.js";
import { FOOT_LENGTH, FORCE_COST, HEEL_BEHIND } from "./held.js";

/** Step of the sums and searches, s. */
const GRID = 2.5e-4;

/** A true contact with the two that follow it and the runner. */
interface Place {
  readonly contact: TrueContact;
  readonly next: TrueContact;
  readonly afterNext: TrueContact;
  readonly truth: SyntheticTruth;
  readonly height: number;
  /** What the threshold sees of the contact. */
  readonly from: number;
  readonly to: number;
}

/**
 * Works out, from the formulas of a synthetic contact alone, what the metrics without a closed truth should give: slopes of
 * the force's own formula, energies and places of the centre of mass by the closed integrals, on a grid of 0.25 ms. Empty
 * for the last two contacts, which have no stride behind them.
 */
export function formulaValues(
  truth: SyntheticTruth,
  index: number,
  threshold: number,
  height: number,
): Readonly<Record<string, number | null>> {
  const [contact, next, afterNext] = truth.contacts.slice(index, index + 3);
  if (contact === undefined || next === undefined || afterNext === undefined) return {};
  const seen = contactAtThreshold(contact, threshold);
  const place: Place = {
    contact,
    next,
    afterNext,
    truth,
    height,
    from: seen.initialContact,
    to: seen.toeOff,
  };
  return {
    ...timesOf(place, threshold),
    ...slopesOf(place),
    ...workOf(place),
    ...springOf(place),
    ...feetOf(place),
  };
}

function timesOf({ contact, afterNext, truth, from, to }: Place, threshold: number): Record<string, number> {
  const stride = contactAtThreshold(afterNext, threshold).initialContact - from;
  const strideLength = truth.speed * (afterNext.initialContact - contact.initialContact);
  return {
    strideTime: afterNext.initialContact - contact.initialContact,
    dutyFactor: (to - from) / stride,
    strideLength,
    forceGenerationCost: (FORCE_COST * truth.gravity) / (to - from),
  };
}

function slopesOf({ contact, from, to }: Place): Record<string, number | null> {
  const up = (time: number) => forceAt(contact, time).up;
  const mean = (start: number, end: number) => (up(end) - up(start)) / (end - start);
  const steepest = (force: (time: number) => number, start: number, end: number) =>
    largestOf(start, end, (time) => (force(time + 1e-6) - force(time - 1e-6)) / 2e-6);
  const peak = contact.values.timeToImpactPeak;
  const rise = peak === null ? null : contact.initialContact + peak - from;
  const brake = contact.initialContact + contact.stance.crossTime / 2 - from;
  return {
    averageLoadingRate: rise === null ? null : mean(from + 0.2 * rise, from + 0.8 * rise),
    instantaneousLoadingRate: rise === null ? null : steepest(up, from + 0.2 * rise, from + 0.8 * rise),
    earlyLoadingRate: mean(from + 0.03 * (to - from), from + 0.12 * (to - from)),
    brakingLoadingRate: steepest(
      (time) => -forceAt(contact, time).forward,
      from + 0.2 * brake,
      from + 0.8 * brake,
    ),
    halfSineFit: halfSineFit(up, from, to),
  };
}

/** R² of the formula with the half sine of the same impulse, by sums over the grid. */
function halfSineFit(up: (time: number) => number, from: number, to: number): number {
  const times = gridOf(from, to);
  const forces = times.map(up);
  const impulse = forces.reduce(
    (sum, f, i) => sum + (i === 0 ? 0 : ((f + (forces[i - 1] as number)) / 2) * GRID),
    0,
  );
  const peak = ((Math.PI / 2) * impulse) / ((times.length - 1) * GRID);
  const average = forces.reduce((sum, f) => sum + f, 0) / forces.length;
  const squares = (part: (force: number, time: number) => number) =>
    forces.reduce((sum, f, i) => sum + part(f, times[i] as number) ** 2, 0);
  const sine = (time: number) => peak * Math.sin((Math.PI * (time - from)) / (to - from));
  return 1 - squares((f, time) => f - sine(time)) / squares((f) => f - average);
}

function workOf({ contact, next, truth, from, to }: Place): Record<string, number> {
  const { mass, gravity } = truth;
  const end = contact.initialContact + contact.stance.stepTime;
  const states = gridOf(contact.initialContact, end).map((time) =>
    centreOfMassAt(contact, Math.min(time, end)),
  );
  const half = (speed: number) => (mass * speed * speed) / 2;
  const vertical = states.map(({ position, velocity }) => mass * gravity * position.up + half(velocity.up));
  const forward = states.map(({ velocity }) => half(velocity.forward));
  const aside = (of: TrueContact) => {
    const last = of.initialContact + of.stance.stepTime;
    return gridOf(of.initialContact, last).map(
      (time) => centreOfMassAt(of, Math.min(time, last)).position.right,
    );
  };
  const places = [...aside(contact), ...aside(next)];
  const { push, brake } = pushAndBrake(contact, from, to);
  return {
    positiveWorkVertical: risesOf(vertical),
    positiveWorkForward: risesOf(forward),
    positiveWorkLateral: risesOf(states.map(({ velocity }) => half(velocity.right))),
    positiveExternalWork: risesOf(vertical.map((energy, i) => energy + (forward[i] as number))),
    mediolateralExcursion: Math.max(...places) - Math.min(...places),
    pushToBrakeTimeRatio: push / brake,
  };
}

/** Times in contact in which the power of the force is above and below 0, its crossings between two points of the grid. */
function pushAndBrake(contact: TrueContact, from: number, to: number): { push: number; brake: number } {
  const power = (time: number) => {
    const { forward, up } = forceAt(contact, time);
    const { velocity } = centreOfMassAt(contact, time);
    return forward * velocity.forward + up * velocity.up;
  };
  const count = Math.ceil((to - from) / GRID);
  const step = (to - from) / count;
  let push = 0;
  for (let i = 0; i < count; i++) {
    const [a, b] = [power(from + i * step), power(from + (i + 1) * step)];
    const share = a > 0 === b > 0 ? (a > 0 ? 1 : 0) : Math.max(a, b) / Math.abs(a - b);
    push += share * step;
  }
  return { push, brake: to - from - push };
}

function springOf({ contact, truth, height, from, to }: Place): Record<string, number> {
  const up = (time: number) => centreOfMassAt(contact, time).position.up;
  const drop = up(from) + largestOf(from, to, (time) => -up(time));
  const force = contact.values.peakVerticalForce;
  const leg = 0.53 * height;
  const half = (truth.speed * (to - from)) / 2;
  return {
    verticalStiffness: force / drop,
    elasticEnergy: (force * drop) / 2,
    legStiffness: force / (leg - Math.sqrt(leg * leg - half * half) + drop),
  };
}

function feetOf({ contact, next }: Place): Record<string, number> {
  const right = contact.side === "right" ? contact : next;
  const left = contact.side === "right" ? next : contact;
  let time = contact.initialContact;
  while (forceAt(contact, time).up < 250) time += 1e-5;
  const { copRoll, contactTime } = contact.stance;
  const share = Math.min((time - contact.initialContact) / contactTime / 0.85, 1);
  const rolled = (copRoll * (1 - Math.cos(Math.PI * share))) / 2;
  return {
    stepWidth: right.foot.right - left.foot.right,
    strikeIndex: (HEEL_BEHIND + rolled) / FOOT_LENGTH,
  };
}

function gridOf(from: number, to: number): number[] {
  return Array.from({ length: Math.floor((to - from) / GRID + 1e-9) + 1 }, (_, i) => from + i * GRID);
}

function largestOf(from: number, to: number, value: (time: number) => number): number {
  return gridOf(from, to).reduce((most, time) => Math.max(most, value(time)), value(to));
}

function risesOf(energies: readonly number[]): number {
  return energies.reduce((sum, energy, i) => sum + Math.max(0, energy - (energies[i - 1] ?? energy)), 0);
}
