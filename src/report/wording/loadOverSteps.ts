import type { Metric } from "../../metrics/index.js";
import { type CumulativeLoad, cumulativeLoad, type LoadSum, type Trial } from "../../trial/index.js";
import { capitalised } from "./capitalised.js";
import { measuredCells } from "./measuredCells.js";

/** Loads summed over the steps of a kilometre, or of a minute where the speed is not known, in words. */
export interface LoadOverStepsWords {
  readonly heading: string;
  /** How many steps, and what a sum over them is. */
  readonly sentence: string;
  readonly rows: readonly {
    readonly name: string;
    readonly sum: string;
    readonly unit: string;
    readonly normalised: string;
    readonly left: string;
    readonly right: string;
  }[];
}

/**
 * Says what the loads that speak for their components sum up to over the steps of a kilometre; `null` where none is there.
 *
 * @param trial - As `analyseTrial` gives it.
 * @param metrics - Catalogue entries, own ones included.
 */
export function loadOverSteps(trial: Trial, metrics: readonly Metric[]): LoadOverStepsWords | null {
  const loads = metrics
    .filter(
      ({ id, primary, perKilometre }) => primary && perKilometre && trial.summary.metrics[id] !== undefined,
    )
    .flatMap((metric) => {
      const load = cumulativeLoad(trial, metric, { level: trial.settings.level });
      return "perMinute" in load ? [{ name: capitalised(metric.name), load }] : [];
    });
  const [first] = loads;
  if (first === undefined) return null;
  const { stepsPerKilometre, stepsPerMinute } = first.load;
  const minute = `${stepsPerMinute.toFixed(0)} steps per minute`;
  const steps =
    stepsPerKilometre === null ? minute : `${stepsPerKilometre.toFixed(0)} steps per kilometre, ${minute}`;
  const why =
    first.load.noKilometre === null ? "" : ` None per kilometre: ${first.load.noKilometre.message}.`;
  return {
    heading: stepsPerKilometre === null ? "Load per minute" : "Load per kilometre",
    sentence: `${steps}; each row is the sum of its metric over them, every step counted alike. It is no dose that harms.${why}`,
    rows: loads.map(({ name, load }) => rowOf(name, sumOf(load))),
  };
}

function sumOf({ perKilometre, perMinute }: CumulativeLoad): LoadSum {
  return perKilometre ?? perMinute;
}

function rowOf(name: string, sum: LoadSum): LoadOverStepsWords["rows"][number] {
  const { unit, normalised, left, right } = sum;
  const { meanAndSd, write } = measuredCells(sum);
  return {
    name,
    sum: meanAndSd,
    unit,
    normalised: normalised === undefined ? "" : `${measuredCells(normalised).mean} ${normalised.unit}`,
    left: left === undefined ? "" : write(left.mean),
    right: right === undefined ? "" : write(right.mean),
  };
}
