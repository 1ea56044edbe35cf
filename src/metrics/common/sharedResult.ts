import type { GroundReaction } from "../../force/index.js";
import { SHARED_RESULTS, type SharingStep } from "./shareResults.js";

/**
 * Gives a result that several metrics of a step need: worked out once where the step shares, each time elsewhere. The latest of a
 * name is kept.
 *
 * @param ground - The recording it belongs to.
 * @param step - The step; one of `shareResults` shares.
 * @param name - One name a result.
 * @param setting - What it depends on beside recording, step and name.
 * @param compute - Works it out.
 */
export function sharedResult<T>(
  ground: GroundReaction,
  step: SharingStep,
  name: string,
  setting: unknown,
  compute: () => T,
): T {
  const results = step[SHARED_RESULTS];
  if (results === undefined) return compute();
  const known = results.get(name);
  if (known !== undefined && known.of === ground && known.setting === setting) return known.value as T;
  const value = compute();
  results.set(name, { of: ground, setting, value });
  return value;
}
