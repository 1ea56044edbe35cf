import type { CurveComparison } from "../../compare/index.js";
import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { element } from "../markup/element.js";
import { line, scaleLinear } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { formatNumber } from "../wording/formatNumber.js";
import { plainNumber } from "../wording/plainNumber.js";
import { clusterBars, clusterLines } from "./clusterBars.js";
import { paint } from "./paint.js";
import { gridRule } from "./parts/gridRule.js";
import { reading } from "./parts/reading.js";
import { roundedPath } from "./parts/roundedPath.js";
import { rule } from "./parts/rule.js";
import { scaleOver } from "./parts/scaleOver.js";
import { HEADING_SIZE, headingWords, words } from "./parts/words.js";
import { svgFigure } from "./svgFigure.js";

/** How the statistic of whole curves is drawn. */
export interface StatisticFigureOptions {
  /** Prefix of the ids in the drawing; `null` for one made of component and side. */
  readonly id?: string | null | undefined;
  /** Size of the drawing in its own units, from 300 and 200; clusters that are listed add to the height. */
  readonly width?: number | undefined;
  readonly height?: number | undefined;
}

/** The width of a paper's column, 85 mm at 96 dots per inch. */
export const STATISTIC_FIGURE_DEFAULTS: Complete<StatisticFigureOptions> = {
  id: null,
  width: 321,
  height: 240,
};

const LEFT = 46;
const RIGHT = 14;
const BOTTOM = 66;
const LINE = 15;

/**
 * Draws Student's t over stance with the thresholds for the whole curve, and a bar with a letter where it lies beyond
 * them, as an SVG string.
 *
 * Formula: statistic, thresholds and clusters as the comparison holds them.
 * Units: 0 to 100 % of stance; t has none.
 * Limits: points where t is not finite break the line.
 * Source: t over the whole curve with its threshold is the field's common practice in statistical parametric mapping.
 * @param curves - Two sets of curves set against each other.
 * @param options - {@link STATISTIC_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a width below 300 or a height below 200.
 * @example
 * const [curves] = compareStanceCurves({ ground, trial }, { ground, trial }).curves;
 * statisticFigure(curves).startsWith("<svg") // true
 */
export function statisticFigure(curves: CurveComparison, options: StatisticFigureOptions = {}): string {
  const { id, width, height } = withDefaults<StatisticFigureOptions>(STATISTIC_FIGURE_DEFAULTS, options);
  requireNumber("width", width, { from: 300 });
  requireNumber("height", height, { from: 200 });
  const { component, side, statistic, percent, threshold, permutationThreshold, degreesOfFreedom, test } =
    curves;
  const thresholds = thresholdsOf(curves);
  const top = 30 + LINE * thresholds.length;
  const bottom = height - BOTTOM;
  const end = width - RIGHT;
  const x = scaleLinear([0, 100], [LEFT, end]);
  const levels = [threshold, ...(permutationThreshold === null ? [] : [permutationThreshold])];
  const { place: y, ticks } = scaleOver(
    [0, ...statistic, ...levels, ...levels.map((level) => -level)],
    [bottom, top],
    5,
  );
  const foot = side === "both" ? "" : `, ${side} foot`;
  const freedom = `${capitalised(test)} t, ${Number(degreesOfFreedom.toFixed(1))} degrees of freedom.`;
  const listed = [...clusterLines(curves, width), freedom];
  const shape = line<number>((_, k) => x(percent[k] ?? 0), y).defined(Number.isFinite);
  return svgFigure(
    {
      id: id ?? `statistic-${component}-${side}`,
      width,
      height: height + LINE * listed.length,
      title: `${capitalised(component)} force${foot}: Student's t over stance`,
      description: `${describe(curves)} ${listed.join(" ")}`,
    },
    headingWords(0, 15, `${capitalised(component)} force${foot}, t`),
    ...thresholds.map(({ label, dash }, i) => {
      const at = 33 + LINE * i;
      return (
        rule([1, at - 4], [37, at - 4], "second", { "stroke-width": 1.4, "stroke-dasharray": dash }) +
        words(LEFT, at, label)
      );
    }),
    ...ticks.flatMap(({ value, at, label }) => [
      gridRule([LEFT, at], [end, at], value === 0),
      words(LEFT - 7, at + 4, label, { "text-anchor": "end" }),
    ]),
    ...thresholds.flatMap(({ level, dash }) =>
      [y(level), y(-level)].map((at) =>
        rule([LEFT, at], [end, at], "second", { "stroke-width": 1.4, "stroke-dasharray": dash }),
      ),
    ),
    element("path", {
      d: roundedPath(shape([...statistic])),
      fill: "none",
      "stroke-width": 2.2,
      "stroke-linejoin": "round",
      ...paint("stroke", "first"),
    }),
    ...percent.flatMap((at, k) => readingAt(at, statistic[k], x, y, [top, bottom])),
    ...clusterBars(curves, x, bottom + 4),
    ...[0, 25, 50, 75, 100].map((tick) =>
      words(x(tick), bottom + 40, String(tick), { "text-anchor": "middle" }),
    ),
    words((LEFT + end) / 2, bottom + 60, "stance, %", { "text-anchor": "middle", "font-size": HEADING_SIZE }),
    ...listed.map((text, i) => words(0, bottom + 78 + LINE * i, text)),
  );
}

interface Threshold {
  readonly level: number;
  readonly label: string;
  readonly dash: string;
}

function thresholdsOf(curves: CurveComparison): readonly Threshold[] {
  const { threshold, thresholdRule, permutationThreshold, level } = curves;
  const rule = thresholdRule === "random field" ? "random field theory" : "Bonferroni";
  return [
    {
      level: threshold,
      label: `±${formatNumber(threshold, 2)} by ${rule}, α = ${Number(level.toPrecision(2))}`,
      dash: "7 4",
    },
    ...(permutationThreshold === null
      ? []
      : [
          {
            level: permutationThreshold,
            label: `±${formatNumber(permutationThreshold, 2)} by permutation`,
            dash: "2 3",
          },
        ]),
  ];
}

/** Numbers at every tenth of stance, for who points there. */
function readingAt(
  percent: number,
  value: number | undefined,
  x: (percent: number) => number,
  y: (value: number) => number,
  [top, bottom]: readonly [number, number],
): readonly string[] {
  if (percent % 10 !== 0 || value === undefined || !Number.isFinite(value)) return [];
  const [from, to] = [x(Math.max(percent - 5, 0)), x(Math.min(percent + 5, 100))];
  const read = `${plainNumber(percent)} % of stance: t = ${formatNumber(value, 2)}`;
  return [reading(read, { at: x(percent), from, to, top, bottom }, [y(value)])];
}

function describe(curves: CurveComparison): string {
  const { statistic, percent, test, of } = curves;
  const finite = statistic.filter(Number.isFinite);
  const extremes =
    finite.length === 0
      ? ""
      : [Math.max(...finite), Math.min(...finite)]
          .map(
            (value) =>
              `${formatNumber(value, 2)} at ${plainNumber(percent[statistic.indexOf(value)] ?? 0)} % of stance`,
          )
          .join(" to ");
  const thresholds = thresholdsOf(curves).map(({ label }) => label);
  return `${capitalised(test)} t of changed less baseline, of ${curves.curves.baseline} and ${curves.curves.changed} ${of}: ${extremes}. Thresholds for the whole curve: ${thresholds.join("; ")}.`;
}
