import type { CurveCluster, CurveComparison } from "../../compare/index.js";
import { capitalised } from "./capitalised.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatDifference } from "./formatDifference.js";
import { levelWords } from "./intervalWords.js";

/** Says, a sentence a cluster, where two sets of curves differ, in per cent of stance and in ms; one sentence where they nowhere do. */
export function clusterSentences(curves: CurveComparison): readonly string[] {
  const what = capitalised(
    `${curves.component} force, ${curves.side === "both" ? "both feet" : `${curves.side} foot`}`,
  );
  if (curves.clusters.length === 0) {
    return [
      `${what}: at no point of stance do the mean curves differ beyond the threshold for the whole curve (|t| below ${threshold(curves)}); not shown to differ is not the same.`,
    ];
  }
  return curves.clusters.map((cluster) => `${what}: ${clusterWords(cluster, curves)}.`);
}

/** Says how curves were compared, for a methods paragraph. */
export function curvesMethod(curves: readonly CurveComparison[]): string {
  const [first] = curves;
  if (first === undefined) return "";
  const rules = [...new Set(curves.map(({ thresholdRule }) => RULES[thresholdRule]))].join(" or ");
  const permuted = curves.some(({ permutationThreshold }) => permutationThreshold !== null)
    ? " and by permutation of whole curves, the larger of both"
    : "";
  const counts = [
    ...new Set(curves.map(({ curves: { baseline, changed } }) => `${baseline} and ${changed}`)),
  ];
  return `Mean curves of ${first.of} (${counts.join(", ")}) over ${first.percent.length} points of normalised stance were compared by Student's ${first.test} t at each point, two-sided, with the threshold for the whole curve at ${levelWords(first.level)} by ${rules}${permuted}.`;
}

const RULES: Readonly<Record<CurveComparison["thresholdRule"], string>> = {
  "random field": "random field theory",
  Bonferroni: "Bonferroni's bound",
};

function clusterWords(cluster: CurveCluster, { unit }: CurveComparison): string {
  const { from, to, fromTime, toTime, peak, peakAt, difference, p } = cluster;
  const time = fromTime === null || toTime === null ? "" : ` (${ms(fromTime)} to ${ms(toTime)} ms)`;
  const mean = formatDifference(difference, decimalsFor(difference, Math.abs(difference) / 10));
  return `${from.toFixed(1)} to ${to.toFixed(1)} % of stance${time}: on average ${mean} ${unit}, largest at ${peakAt.toFixed(0)} % (t ${formatDifference(peak, 1)}, ${probability(p)})`;
}

function probability(p: number): string {
  return p < 0.001 ? "p < 0.001" : `p = ${p.toFixed(3)}`;
}

function ms(seconds: number): string {
  return (1000 * seconds).toFixed(0);
}

function threshold({ threshold, permutationThreshold }: CurveComparison): string {
  return Math.max(threshold, permutationThreshold ?? 0).toFixed(2);
}
