import type { CurveCluster, CurveComparison } from "../../compare/index.js";
import { element } from "../markup/element.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatDifference } from "../wording/formatDifference.js";
import { formatNumber } from "../wording/formatNumber.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { mark } from "./parts/mark.js";
import { SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";

/** More lines than these would be a table. */
const MOST_LISTED = 6;

/** Draws a bar with a letter for each stretch in which the curves differ. */
export function clusterBars(
  curves: CurveComparison,
  x: (percent: number) => number,
  top: number,
): readonly string[] {
  return curves.clusters.map((cluster, i) => {
    const from = x(cluster.from);
    // A single point would be no wider than its ink.
    const width = Math.max(x(cluster.to) - from, 2);
    return (
      words(from + width / 2, top + 16, letterOf(i), { "text-anchor": "middle" }) +
      mark(
        clusterSentence(curves, cluster),
        element("rect", { x: from, y: top, width, height: 5, ...paint("fill", "ink") }),
      )
    );
  });
}

/** Lists the stretches under a drawing, one beside each letter; says so where there are none. */
export function clusterLines(curves: CurveComparison, width: number): readonly string[] {
  const { clusters } = curves;
  if (clusters.length === 0) {
    return wrapped("No stretch differs beyond the threshold of the whole curve.", width, SMALL_SIZE, 2);
  }
  const listed = clusters
    .slice(0, MOST_LISTED)
    .flatMap((cluster, i) =>
      wrapped(`${letterOf(i)}: ${placeOf(cluster)}: ${sizeOf(curves, cluster)}`, width, SMALL_SIZE, 2),
    );
  const more = clusters.length - MOST_LISTED;
  return more > 0 ? [...listed, `and ${more} more`] : listed;
}

function letterOf(i: number): string {
  return i < 26 ? String.fromCharCode(97 + i) : String(i + 1);
}

function placeOf({ from, to, fromTime, toTime }: CurveCluster): string {
  const whole = (value: number): string => value.toFixed(0);
  const times =
    fromTime === null || toTime === null ? "" : `, ${whole(1000 * fromTime)}–${whole(1000 * toTime)} ms`;
  return `${whole(from)}–${whole(to)} % of stance${times}`;
}

function sizeOf({ unit }: CurveComparison, { difference }: CurveCluster): string {
  return `${formatDifference(difference, Math.min(decimalsFor(difference), 3))}\u00a0${unit}`;
}

function clusterSentence(curves: CurveComparison, cluster: CurveCluster): string {
  const { p, peak, peakAt } = cluster;
  const chance = p < 0.001 ? "p < 0.001" : `p = ${p.toFixed(3)}`;
  return `${placeOf(cluster)}: changed less baseline ${sizeOf(curves, cluster)} in the mean, largest t ${formatNumber(peak, 1)} at ${plainNumber(peakAt)} %, ${chance}`;
}
