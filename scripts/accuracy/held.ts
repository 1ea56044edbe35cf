import type { GroundReaction } from "../../src/force/index.js";
import { CATALOGUE, forceGenerationCost, type Metric } from "../../src/metrics/index.js";
import type { SyntheticTruth } from "../../src/synthetic/index.js";

/** Coefficient that the cost of generating force is computed with, J/N: Kipp et al. 2018 at 2.2 m/s. */
export const FORCE_COST = 0.265;
/** From the first centre of pressure back to the heel, m. */
export const HEEL_BEHIND = 0.05;
/** Heel to toes, m. */
export const FOOT_LENGTH = 0.27;

/** The catalogue, with a coefficient where a metric asks for one. */
export const HELD_METRICS: readonly Metric[] = CATALOGUE.map((metric) =>
  metric.id === "forceGenerationCost"
    ? {
        ...metric,
        needs: [],
        compute: (ground, step) => forceGenerationCost(ground, step, { coefficient: FORCE_COST }),
      }
    : metric,
);

/** Gives a synthetic run the heels and toes of its feet, which stand still on the surface. */
export function withFeet(ground: GroundReaction, truth: SyntheticTruth): GroundReaction {
  const { sampleRate, force } = ground;
  const track = () => ({
    forward: new Float64Array(force.up.length),
    right: new Float64Array(force.up.length),
  });
  const feet = { left: { heel: track(), toe: track() }, right: { heel: track(), toe: track() } };
  const belt = ground.surface === "belt" ? truth.speed : 0;
  const begin = truth.contacts[0]?.initialContact ?? 0;
  for (const { side, initialContact, toeOff, foot } of truth.contacts) {
    const last = Math.min(force.up.length - 1, Math.ceil((toeOff + 0.02) * sampleRate));
    for (let i = Math.max(0, Math.floor((initialContact - 0.02) * sampleRate)); i <= last; i++) {
      const heel = foot.forward - HEEL_BEHIND - belt * (i / sampleRate - begin);
      const { heel: back, toe: front } = feet[side];
      back.forward[i] = heel;
      front.forward[i] = heel + FOOT_LENGTH;
      back.right[i] = foot.right;
      front.right[i] = foot.right;
    }
  }
  return { ...ground, feet };
}
