import type { ComponentComparison } from "./comparison.js";
import type { ComponentState, PrimaryReading } from "./readComponent.js";
import { capital, digits, lessIsMore, loadChange, numbersOf } from "./wording.js";

/** Puts a component's reading into one sentence with its numbers. */
export function describeComponent({ component, primary, absence }: ComponentState): ComponentComparison {
  if (primary === null) {
    const words = absence.kind === "not recorded" ? "not recorded in both trials" : absence.words;
    return {
      component,
      metric: null,
      moreLoad: null,
      reading: null,
      perKilometre: null,
      missing: absence.kind,
      sentence: `${capital(component)}: ${words}.`,
    };
  }
  const { pair, reading, perKilometre, obstacle, reason } = primary;
  const { id, name, unit, moreLoad } = pair.metric;
  const numbers =
    pair.comparison === null
      ? ""
      : `: ${name} goes from ${numbersOf(pair.comparison, unit)}${lessIsMore(moreLoad)}`;
  const because = obstacle?.brief ?? reason;
  const why = because === null ? "" : ` (${because})`;
  return {
    component,
    metric: id,
    moreLoad,
    reading,
    perKilometre,
    missing: pair.comparison === null ? "not compared" : null,
    sentence: `${capital(component)} ${reading}${why}${numbers}${bySpeed(primary)}${kilometre(primary)}.`,
  };
}

/** What the difference in speed alone would do, where it is known. */
function bySpeed({ pair: { metric, comparison } }: PrimaryReading): string {
  const alone = comparison?.speedAlone;
  if (comparison === null || alone === undefined) return "";
  const percent = (100 * alone.difference) / Math.abs(comparison.baseline.mean);
  const size =
    comparison.percent === null
      ? `${digits(alone.difference)} ${metric.unit}`
      : `${percent > 0 ? "+" : ""}${percent.toFixed(1)} %`;
  return `; the difference in speed alone would make about ${size}, which was ${alone.takenOff ? "" : "not "}taken off`;
}

/** The reading per kilometre with its change, where it is another one. */
function kilometre({ pair: { metric, comparison }, reading, perKilometre }: PrimaryReading): string {
  const values = comparison?.perKilometre;
  if (perKilometre === null || perKilometre === reading || values === undefined) return "";
  return `; per kilometre ${perKilometre} (${loadChange(values, `${metric.unit}/km`, metric)})`;
}
