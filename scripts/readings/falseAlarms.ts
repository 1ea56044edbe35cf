import { type CompareTrialsOptions, type Comparison, compareTrials } from "../../src/compare/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { PRIMARY_IDS } from "../../tests/compare/trialOf.js";
import { type Condition, trialPair } from "./strides.js";

/** Per cent of pairs without any true difference. */
export interface FalseAlarms {
  /** Readings `lower` or `higher`, of three a pair. */
  readonly component: number;
  /** Pairs of which a component is named lower or higher, so that `reduced`, `raised`, `shifted` or `unsettled` is said. */
  readonly overall: number;
  /** The same by a rule that asks for no more than the reading interval and 0.8 standard deviations. */
  readonly plain: number;
}

/** The metrics that speak for a component. */
export const PRIMARIES: NonNullable<CompareTrialsOptions["metrics"]> = CATALOGUE.filter(({ id }) =>
  PRIMARY_IDS.some((primary) => primary === id),
);

/**
 * Compares pairs that are drawn anew each; the same pairs whatever the options.
 *
 * @param seed - Of the pairs; each condition's own where left out.
 */
export function falseAlarms(
  condition: Condition,
  pairs: number,
  options: CompareTrialsOptions = {},
  seed: number = seedOf(condition),
): FalseAlarms {
  const random = seededRandom(seed);
  let component = 0;
  let overall = 0;
  let plain = 0;
  for (let pair = 0; pair < pairs; pair++) {
    const comparison = compareTrials(...trialPair(random, condition), {
      metrics: PRIMARIES,
      resamples: 100,
      ...options,
    });
    component += comparison.components.filter(
      ({ reading }) => reading === "lower" || reading === "higher",
    ).length;
    if (isNamed(comparison)) overall++;
    if (isNamedPlainly(comparison)) plain++;
  }
  const percent = (count: number) => (100 * count) / pairs;
  return { component: percent(component) / 3, overall: percent(overall), plain: percent(plain) };
}

/** Whether a component is named lower or higher. */
function isNamed({ overall }: Comparison): boolean {
  return overall.lower.length + overall.higher.length > 0;
}

function isNamedPlainly({ components, metrics }: Comparison): boolean {
  return metrics.some(({ id, readingInterval: { low, high }, difference, baseline, changed }) => {
    const sentence = components.find(({ metric }) => metric === id)?.sentence ?? "";
    if (sentence.includes("too few strides")) return false;
    const pooled = Math.sqrt(((baseline.sd ?? 0) ** 2 + (changed.sd ?? 0) ** 2) / 2);
    return (low > 0 || high < 0) && Math.abs(difference) > 0.8 * pooled;
  });
}

function seedOf({ strides, correlation, slow, memory }: Condition): number {
  if (memory !== undefined) {
    const place = memory.kind === "fractional" ? 100 + 10 * memory.d : 10 * memory.first + memory.second;
    return 9_000_000 + 1000 * strides + Math.round(10 * place);
  }
  const kinds = ["none", "line", "wave", "cut", "run"];
  const size = slow.kind === "none" ? 0 : slow.size;
  return 1_000_000 * kinds.indexOf(slow.kind) + 100_000 * size + 1000 * strides + 10 * correlation;
}
