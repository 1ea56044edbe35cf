import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import { type ExternalWork, externalWork } from "../../models/index.js";
import { type Complete, type Newtons, requireNumber, withDefaults } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { sharedResult } from "../common/sharedResult.js";
import { stepTime } from "../timing/stepTime.js";
import { strideTime } from "../timing/strideTime.js";

/** What work over ground may take into account. */
export interface StepWorkOptions {
  /** Air drag, a constant force backward, as of `airDrag`; none on a belt. */
  readonly drag?: Newtons | undefined;
}

/** Still air on a belt: no drag. */
export const STEP_WORK_DEFAULTS: Complete<StepWorkOptions> = { drag: 0 };

/**
 * Works out the work of a step by axis over the stride that begins with it; `null` without both neighbours.
 *
 * @param ground - The recording; without a speed the forward parts have no meaning.
 * @param step - The step.
 * @param options - Drag.
 */
export function workOfStep(
  ground: GroundReaction,
  step: Step,
  options: StepWorkOptions = STEP_WORK_DEFAULTS,
): ExternalWork | null {
  const { drag } = withDefaults(STEP_WORK_DEFAULTS, options);
  requireNumber("drag", drag, { unit: "N" });
  const { initialContact } = requireContact(ground, step);
  const next = stepTime(ground, step);
  const stride = strideTime(ground, step);
  if (next === null || stride === null) return null;
  const { gravity, grade, speed = 0 } = ground;
  return sharedResult(ground, step, "work", drag, () =>
    externalWork(ground, initialContact, initialContact + stride, speed, {
      mass: massForStep(ground, step),
      gravity,
      grade,
      drag,
      until: initialContact + next,
    }),
  );
}
