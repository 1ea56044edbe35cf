import type { Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import { assessLanding, LANDING_DISTANCE_DEFAULTS, type Metric } from "../metrics/index.js";
import type { ToeShape } from "../models/index.js";
import type { Caution, MetresPerSecond } from "../units/index.js";
import { unmetNeed } from "./notComputed.js";
import type { LandingSettings, NotComputed } from "./trial.js";

const IDS: readonly string[] = ["touchdownDistance", "takeOffDistance"];

/** What a trial says of its touchdown and take-off distances. */
export interface TrialLanding {
  /** `null` where there are none. */
  readonly settings: LandingSettings | null;
  /** Those that were asked for and are not to be given. */
  readonly dropped: readonly NotComputed[];
  readonly cautions: readonly Caution[];
}

/**
 * Says how touchdown and take-off distance were had and how far they may be off, or why they are not given. Where a metric
 * lacks what it needs, that is said elsewhere.
 * @param speedError - How far the stated speed of a belt is off.
 */
export function trialLanding(
  ground: GroundReaction,
  steps: readonly Step[],
  metrics: readonly Metric[],
  speedError: MetresPerSecond,
): TrialLanding {
  const asked = metrics.filter(
    (metric) => IDS.includes(metric.id) && unmetNeed(metric, ground, steps) === null,
  );
  if (asked.length === 0) return { settings: null, dropped: [], cautions: [] };
  const { absence, margin, cautions } = assessLanding(ground, steps, { speedError });
  if (absence !== null || margin === null) {
    const { code, message } = absence ?? { code: "no-value", message: "no contact has a value" };
    return { settings: null, dropped: asked.map(({ id }) => ({ id, code, message })), cautions };
  }
  const { footLevel, toe } = LANDING_DISTANCE_DEFAULTS as { footLevel: number; toe: ToeShape };
  const measured = ground.centreOfMass !== undefined;
  const method = measured ? "measured" : "force";
  const balance = measured ? 0 : (ground.forwardBalance ?? 0);
  return { settings: { method, footLevel, toe, balance, margin }, dropped: [], cautions };
}
