import type { Caution } from "../units/index.js";
import { changeIn } from "./changeIn.js";
import type { MetricPair } from "./compareMetric.js";
import type { Settings } from "./options.js";
import { PUBLISHED_SPEED_EFFECTS } from "./publishedSpeedEffects.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";
import { apart, digits, listed } from "./wording.js";

/** What the difference in speed alone would do to the metrics it is known of. */
export function speedCaution(
  trials: OfBoth<PairedTrial>,
  pairs: readonly MetricPair[],
  settings: Settings,
): Caution[] {
  const [from, to] = [trials.baseline.trial.settings.speed, trials.changed.trial.settings.speed];
  const known = pairs.filter(({ comparison }) => comparison?.speedAlone !== undefined);
  if (from === null || to === null || known.length === 0) return [];
  const apartBy = to - from;
  const said = known.map(({ metric, comparison }) => {
    const alone = comparison?.speedAlone?.difference ?? 0;
    const mean = Math.abs(comparison?.baseline.mean ?? 0);
    const percent = mean === 0 ? "" : ` (${share(alone, mean)} %${spread(metric.id)})`;
    return `${metric.name} by ${alone > 0 ? "+" : ""}${digits(alone)} ${metric.unit}${percent}`;

    function spread(id: string): string {
      if (Object.hasOwn(settings.speedEffects, id)) return "";
      const { mass, gravity } = trials.baseline.trial.settings;
      const all = PUBLISHED_SPEED_EFFECTS.filter((effect) => effect.metric === id).map(
        (effect) => changeIn(metric, effect, mass, gravity, "speedEffects")(mean).value * apartBy,
      );
      if (all.length < 2) return "";
      return `; published effects reach from ${share(Math.min(...all), mean)} to ${share(Math.max(...all), mean)} %`;
    }
  });
  const done =
    settings.speedEffect === "removed"
      ? "this was taken off their differences; how much runners differ in it is not known and not in the intervals, and nothing of it was taken off per kilometre or off other metrics"
      : "nothing was taken off";
  return [
    {
      code: "speed-alone",
      message: `the speeds are ${apart(from, to).join(" and ")} m/s; by the effects of speed in other runners this alone would move ${listed(said)}: ${done}`,
      where: known.map(({ metric }) => metric.id).join(", "),
      values: Object.fromEntries(
        known.map(({ metric, comparison }) => [metric.id, comparison?.speedAlone?.difference ?? 0]),
      ),
    },
  ];
}

function share(value: number, mean: number): string {
  const percent = ((100 * value) / mean).toFixed(1);
  return value > 0 ? `+${percent}` : percent;
}
