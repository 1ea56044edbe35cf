import type { Step } from "../../events/index.js";
import { CENTRE_OF_PRESSURE_FLOOR, type GroundReaction } from "../../force/index.js";
import {
  type Complete,
  type NewtonMetres,
  type Newtons,
  type Quantity,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { requireContact } from "../common/requireContact.js";
import { requireForce } from "../common/requireForce.js";
import { requireMoment } from "../common/requireMoment.js";
import { sharedResult } from "../common/sharedResult.js";

/** Where in a contact the free moment is read. */
export interface FreeMomentOptions {
  /** Vertical force below which there is no centre of pressure, and so no free moment. */
  readonly floor?: Newtons | undefined;
}

/** The library's floor of the centre of pressure. */
export const FREE_MOMENT_DEFAULTS: Complete<FreeMomentOptions> = { floor: CENTRE_OF_PRESSURE_FLOOR };

/** Size of the free moment of a contact. */
export interface FreeMoment {
  readonly peak: NewtonMetres;
  readonly impulse: Quantity<"N m s">;
}

/**
 * Works out the free moment of a contact where the foot is loaded; `null` where it never is.
 *
 * Formula: T = M_up − (c_right F_forward − c_forward F_right), c_forward = M_right/F_up, c_right = −M_forward/F_up, which is
 * (M · F)/F_up.
 *
 * @param ground - The recording.
 * @param step - The step; its contact alone is used.
 * @param options - The floor.
 * @param metric - The metric that needs it, for messages.
 */
export function freeMomentOf(
  ground: GroundReaction,
  step: Step,
  options: FreeMomentOptions,
  metric: string,
): FreeMoment | null {
  const { floor } = withDefaults(FREE_MOMENT_DEFAULTS, options);
  requireNumber("floor", floor, { above: 0, unit: "N" });
  return sharedResult(ground, step, "free moment", floor, () =>
    overContact(footOf(ground, step), step, floor, metric),
  );
}

function overContact(foot: GroundReaction, step: Step, floor: number, metric: string): FreeMoment | null {
  const forward = requireForce(foot, "forward", metric);
  const right = requireForce(foot, "right", metric);
  const aboutForward = requireMoment(foot, "forward", metric);
  const aboutUp = requireMoment(foot, "up", metric);
  const aboutRight = requireMoment(foot, "right", metric);
  const { initialContact, toeOff } = requireContact(foot, step);
  const { sampleRate } = foot;
  const { up } = foot.force;
  const load = foot.unfiltered?.force.up ?? up;
  const last = Math.floor(toeOff * sampleRate);
  let peak = -1;
  let area = 0;
  let before = Number.NaN;
  for (let i = Math.ceil(initialContact * sampleRate); i <= last; i++) {
    const weight = up[i] as number;
    if (weight < floor || (load[i] as number) < floor) {
      before = Number.NaN;
      continue;
    }
    const turning =
      (aboutForward[i] as number) * (forward[i] as number) + (aboutRight[i] as number) * (right[i] as number);
    const moment = (aboutUp[i] as number) + turning / weight;
    peak = Math.max(peak, Math.abs(moment));
    area += Number.isNaN(before) ? 0 : areaOf(before, moment);
    before = moment;
  }
  return peak < 0 ? null : { peak, impulse: area / sampleRate };
}

/** Area between 0 and the straight line from `a` to `b` over a width of 1, both sides positive. */
function areaOf(a: number, b: number): number {
  if (a * b >= 0) return Math.abs(a + b) / 2;
  return (a * a + b * b) / (2 * Math.abs(a - b));
}
