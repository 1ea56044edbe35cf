import type { Trial } from "../trial/index.js";
import { MASS_RATIO_TOLERANCE, type Settings } from "./options.js";
import { apart, digits, percentApart } from "./wording.js";

/** What stands in the way of a reading whatever the numbers are, and what would remove it. */
export interface Obstacle {
  /** In two or three words. */
  readonly brief: string;
  /** In a sentence's part. */
  readonly reason: string;
  readonly toSettle: readonly string[];
}

/** Rounding, as of a number that was typed in another unit, is no difference. */
export const SAME = 1e-9;

/** Speeds too far apart for any reading. */
export function speedsApart(baseline: Trial, changed: Trial, { speedTolerance }: Settings): Obstacle | null {
  const [one, other] = [baseline.settings.speed, changed.settings.speed];
  if (one === null || other === null) return null;
  const differ = (a: number, b: number) => Math.abs(b - a) > (speedTolerance + SAME) * Math.min(a, b);
  if (!differ(one, other)) return null;
  return {
    brief: "speeds apart",
    reason: `the speeds, ${apart(one, other, differ).join(" and ")} m/s, are more than ${digits(100 * speedTolerance)} % apart, and speed alone moves most loads`,
    toSettle: ["both recordings at one speed"],
  };
}

/** Forces on different scales: the mass they give, held against the stated one, tells. */
export function scalesApart(baseline: Trial, changed: Trial): Obstacle | null {
  const ratios = [baseline.settings, changed.settings].map(({ mass, massStated, massByForce }) =>
    massStated && mass !== null && massByForce !== null ? massByForce / mass : null,
  );
  const [one, other] = ratios;
  if (one == null || other == null) return null;
  if (!massesApart(one, other)) return null;
  const [before, after] = apart(one, other, massesApart);
  return {
    brief: "force scales apart",
    reason: `mass by force over stated mass is ${before} in the baseline and ${after} in the changed trial, ${percentApart(relativeDifference(one, other), MASS_RATIO_TOLERANCE)} % apart where ${digits(100 * MASS_RATIO_TOLERANCE)} % is allowed: the forces are not on one scale (calibration, drift, slope), or a stated mass is not right, and loads cannot be set against each other`,
    toSettle: [
      "the platform zeroed and its scale checked, or the right mass stated, so that both recordings are on one scale",
    ],
  };
}

/** Takes obstacles together; `null` where there is none. */
export function together(obstacles: readonly (Obstacle | null)[]): Obstacle | null {
  const found = obstacles.filter((obstacle) => obstacle !== null);
  if (found.length === 0) return null;
  return {
    brief: found.map(({ brief }) => brief).join(", "),
    reason: found.map(({ reason }) => reason).join("; "),
    toSettle: found.flatMap(({ toSettle }) => toSettle),
  };
}

/** Whether masses, or their ratios, differ by more than is allowed. */
export function massesApart(one: number, other: number): boolean {
  return relativeDifference(one, other) > MASS_RATIO_TOLERANCE + SAME;
}

/** Difference as a share of the smaller size. */
export function relativeDifference(one: number, other: number): number {
  return one === other ? 0 : Math.abs(other - one) / Math.min(Math.abs(one), Math.abs(other));
}
