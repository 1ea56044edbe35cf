import type { Step } from "../../events/index.js";
import { valueAt } from "../../filters/index.js";
import type { GroundReaction } from "../../force/index.js";
import { footOf } from "../common/footOf.js";
import { levelCrossing } from "../common/levelCrossing.js";
import { requireContact } from "../common/requireContact.js";
import { requireMoment } from "../common/requireMoment.js";
import { requireSpeed } from "../common/requireSpeed.js";

/** Vertical force at which the centre of pressure is read, N: below it a treadmill's is known to centimetres only. */
const FOOT_LEVEL = 250;

/**
 * Gives the forward travel of the centre of pressure over the surface in a contact, m, from where the unfiltered vertical force
 * first reaches 250 N to where it last does; `null` where it never does.
 *
 * @param ground - The recording.
 * @param step - The step; its contact alone is used.
 * @param metric - The metric that needs it, for messages.
 */
export function copTravelOf(ground: GroundReaction, step: Step, metric: string): number | null {
  const foot = footOf(ground, step);
  const { initialContact, toeOff } = requireContact(ground, step);
  const speed = requireSpeed(ground, metric);
  const { force, moment } = foot.unfiltered ?? foot;
  const turning = requireMoment({ ...(moment && { moment }) }, "right", metric);
  const { sampleRate } = ground;
  const first = Math.ceil(initialContact * sampleRate);
  const last = Math.floor(toeOff * sampleRate);
  const [from, to] = (["first", "last"] as const).map((end) =>
    levelCrossing(force.up, first, last, FOOT_LEVEL, end),
  ) as [number | null, number | null];
  if (from === null || to === null) return null;
  const place = (at: number) => valueAt(turning, 1, at) / valueAt(force.up, 1, at);
  const carried = ground.surface === "belt" ? (speed * (to - from)) / sampleRate : 0;
  return place(to) - place(from) + carried;
}
