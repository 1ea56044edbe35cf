import type { Metric } from "../metrics/index.js";
import { changeIn } from "./changeIn.js";
import type { SpeedAlone } from "./comparison.js";
import { relativeDifference } from "./obstacles.js";
import { SAME_SPEED, type Settings, type SourcedChange } from "./options.js";
import { PUBLISHED_SPEED_EFFECTS } from "./publishedSpeedEffects.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";

/**
 * What the difference in speed alone would do to a metric: its effect per m/s, the caller's own or the first published
 * one whose speeds hold both, times the difference. `null` where the speeds agree or are not known, no effect is known, or
 * it is in a normalised unit and the baseline has no mass.
 * @param baselineMean - Of the metric, for an effect in per cent.
 */
export function speedAlone(
  metric: Metric,
  trials: OfBoth<PairedTrial>,
  baselineMean: number,
  settings: Settings,
): SpeedAlone | null {
  const { baseline, changed } = trials;
  const [from, to] = [baseline.trial.settings.speed, changed.trial.settings.speed];
  if (from === null || to === null || relativeDifference(from, to) <= SAME_SPEED) return null;
  const effect = effectOf(metric.id, from, to, settings);
  if (effect === null) return null;
  const { mass, gravity } = baseline.trial.settings;
  if (mass === null && effect.unit !== metric.unit && effect.unit !== "%") return null;
  const perMetrePerSecond = changeIn(metric, effect, mass, gravity, "speedEffects")(baselineMean);
  return {
    difference: perMetrePerSecond.value * (to - from),
    source: effect.source,
    takenOff: settings.speedEffect === "removed",
  };
}

function effectOf(id: string, from: number, to: number, { speedEffects }: Settings): SourcedChange | null {
  if (Object.hasOwn(speedEffects, id)) return speedEffects[id] ?? null;
  return PUBLISHED_SPEED_EFFECTS.find((effect) => effect.metric === id && holds(effect, from, to)) ?? null;
}

function holds(
  { from, to }: { readonly from: number | null; readonly to: number | null },
  ...speeds: readonly number[]
): boolean {
  return speeds.every((speed) => (from === null || speed >= from) && (to === null || speed <= to));
}
