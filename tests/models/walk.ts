import type { LimbRecords } from "../../src/models/index.js";
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6

const WEIGHT = models.walking.mass * 9.80665;

/** Force of a foot at a share of its stance: up, forward, medial. */
function foot(u: number): readonly [up: number, forward: number, medial: number] {
  const s = (k: number): number => Math.sin(k * Math.PI * u);
  return [
    WEIGHT * models.walking.scale * (1.05 * s(1) + 0.3 * s(3) + 0.03 * s(5)),
    -0.2 * WEIGHT * s(2) * (1 - 0.25 * Math.cos(2 * Math.PI * u)),
    WEIGHT * (0.055 * s(1) + 0.015 * s(3)),
  ];
}

/** One stride of the fixture's walk from its formulas, right contact first, each foot on a plate of its own. */
export function walk(sampleRate: number): LimbRecords {
  const { strideTime, stanceTime } = models.walking;
  const length = Math.round(strideTime * sampleRate) + 1;
  const record = (contact: number, medial: number): LimbRecords["left"] => {
    const [up, forward, right] = [0, 1, 2].map(() => new Float64Array(length)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    for (let i = 0; i < length; i++) {
      const since = (i / sampleRate - contact + strideTime) % strideTime;
      if (since > stanceTime) continue;
      const [vertical, along, inward] = foot(since / stanceTime);
      up[i] = vertical;
      forward[i] = along;
      right[i] = medial * inward;
    }
    return { sampleRate, force: { up, forward, right } };
  };
  return { right: record(0, -1), left: record(strideTime / 2, 1) };
}

/** Both feet as one record. */
export function bothFeet({ left, right }: LimbRecords): LimbRecords["left"] {
  const sum = (a: Float64Array, b: Float64Array): Float64Array => a.map((f, i) => f + (b[i] as number));
  return {
    sampleRate: left.sampleRate,
    force: {
      up: sum(left.force.up, right.force.up),
      forward: sum(left.force.forward as Float64Array, right.force.forward as Float64Array),
      right: sum(left.force.right as Float64Array, right.force.right as Float64Array),
    },
  };
}
