import type { ComponentName, CurveComparison } from "../../compare/index.js";
import { element } from "../markup/element.js";
import { area, line, scaleLinear } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { counted } from "../wording/counted.js";
import { formatNumber } from "../wording/formatNumber.js";
import { plainNumber } from "../wording/plainNumber.js";
import { clusterBars, clusterLines } from "./clusterBars.js";
import { directionWords } from "./directionWords.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { reading } from "./parts/reading.js";
import { roundedPath } from "./parts/roundedPath.js";
import { rule } from "./parts/rule.js";
import { scaleOver } from "./parts/scaleOver.js";
import { FIRST_STYLE, SECOND_STYLE, type TrialStyle } from "./parts/trialStyle.js";
import { HEADING_SIZE, headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { svgFigure } from "./svgFigure.js";

/** One mean curve with its spread, in the unit of the figure. */
export interface Series {
  readonly side: "left" | "right" | "unknown";
  readonly label: string;
  readonly n: number;
  readonly percent: readonly number[];
  readonly mean: readonly number[];
  /** `null` for a single contact, which is drawn without a band. */
  readonly sd: readonly number[] | null;
}

/** What the drawing is of, and its size. */
export interface CurvePanel {
  readonly component: ComponentName;
  readonly side: "left" | "right" | "both";
  readonly unit: "BW" | "N";
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** Curves that must fit the scale, shown or not. */
  readonly scaleFor: readonly Series[];
  /** Where the curves differ; `null` where that was not asked for. */
  readonly clusters: CurveComparison | null;
}

const STYLES: readonly TrialStyle[] = [FIRST_STYLE, SECOND_STYLE];
const LEFT = 46;
const RIGHT = 14;
const BOTTOM = 44;
const LEGEND_ROW = 19;
/** Between the curves and the numbers under them, where clusters are drawn. */
const LANE = 22;
const LINE = 15;

/**
 * Draws at most two curves with their bands, axes, zero line and legend; bars where they differ make the drawing higher
 * than the panel asks for.
 */
export function drawCurves(series: readonly Series[], panel: CurvePanel): string {
  const { component, side, unit, id, width, height, scaleFor, clusters } = panel;
  const top = 30 + LEGEND_ROW * series.length;
  const bottom = height - BOTTOM;
  const end = width - RIGHT;
  const edges = scaleFor.flatMap(({ mean, sd }) =>
    mean.flatMap((value, i) => [value - (sd?.[i] ?? 0), value + (sd?.[i] ?? 0)]),
  );
  const x = scaleLinear([0, 100], [LEFT, end]);
  const { place: y, ticks } = scaleOver([0, ...edges], [bottom, top], 5);
  const directions = directionWords(component, side);
  const foot = side === "both" ? "" : `, ${side} foot`;
  const heading = `${capitalised(component)} force${foot}`;
  const bands = series.some(({ sd }) => sd !== null)
    ? " Bands show one standard deviation between contacts."
    : "";
  const differing = clusters === null ? [] : clusterLines(clusters, width);
  const lane = clusters === null ? 0 : LANE;
  const axis = bottom + lane;
  return svgFigure(
    {
      id,
      width,
      height: height + lane + LINE * differing.length,
      title: `${heading}: mean curve over stance`,
      description:
        `${series.map((one) => describe(one, unit)).join(" ")}${bands} ${differing.join(" ")}`.trim(),
    },
    headingWords(0, 15, `${heading}, ${unit}`),
    ...series.map((one, i) => legendRow(one, i, width)),
    ...ticks.flatMap(({ value, at, label }) => [
      gridRule([LEFT, at], [end, at], value === 0),
      words(LEFT - 7, at + 4, label, { "text-anchor": "end" }),
    ]),
    ...[0, 25, 50, 75, 100].map((tick) =>
      words(x(tick), axis + 18, String(tick), { "text-anchor": "middle" }),
    ),
    words((LEFT + end) / 2, axis + 38, "stance, %", {
      "text-anchor": "middle",
      "font-size": HEADING_SIZE,
    }),
    ...series.map((one, i) => band(one, i, x, y)),
    ...series.map((one, i) => curve(one, i, x, y)),
    ...(directions === null ? [] : [directionWord(directions.positive, end, top + 11)]),
    ...(directions === null ? [] : [directionWord(directions.negative, end, bottom - 5)]),
    ...readings(series, unit, x, y, [top, bottom]),
    ...(clusters === null ? [] : clusterBars(clusters, x, bottom + 4)),
    ...differing.map((text, i) => words(0, axis + 38 + 18 + LINE * i, text)),
  );
}

type Scale = (value: number) => number;

function directionWord(text: string, end: number, y: number): string {
  return words(end - 2, y, text, { "text-anchor": "end", "font-style": "italic" });
}

/** Numbers at every tenth of stance, for who points there. */
function readings(
  series: readonly Series[],
  unit: string,
  x: Scale,
  y: Scale,
  [top, bottom]: readonly [number, number],
): readonly string[] {
  return (series[0]?.percent ?? []).flatMap((percent, k) => {
    if (percent % 10 !== 0) return [];
    const parts = series.map(({ label, mean, sd }) => {
      const spread = sd === null ? "" : ` (SD ${formatNumber(sd[k] ?? 0)})`;
      return `${label} ${formatNumber(mean[k] ?? 0)} ${unit}${spread}`;
    });
    const [from, to] = [x(Math.max(percent - 5, 0)), x(Math.min(percent + 5, 100))];
    return [
      reading(
        `${plainNumber(percent)} % of stance: ${parts.join(", ")}`,
        { at: x(percent), from, to, top, bottom },
        series.map(({ mean }) => y(mean[k] ?? 0)),
      ),
    ];
  });
}

function legendRow({ label, n }: Series, i: number, width: number): string {
  const y = 34 + i * LEGEND_ROW;
  const { role, dash } = STYLES[i] ?? SECOND_STYLE;
  const count = `, ${counted(n, "contact")}`;
  const room = width - LEFT - 7 * count.length;
  return (
    rule([1, y - 4], [37, y - 4], role, { "stroke-width": 2.2, "stroke-dasharray": dash }) +
    words(LEFT, y, `${fitted(label, room, SMALL_SIZE)}${count}`)
  );
}

function band({ percent, mean, sd }: Series, i: number, x: Scale, y: Scale): string {
  if (sd === null) return "";
  const shape = area<number>(
    (_, k) => x(percent[k] ?? 0),
    (value, k) => y(value - (sd[k] ?? 0)),
    (value, k) => y(value + (sd[k] ?? 0)),
  );
  return element("path", {
    d: roundedPath(shape([...mean])),
    "fill-opacity": 0.32,
    "stroke-width": 0.9,
    "stroke-opacity": 0.75,
    ...paint("fill", (STYLES[i] ?? SECOND_STYLE).role),
    ...paint("stroke", (STYLES[i] ?? SECOND_STYLE).role),
  });
}

function curve({ percent, mean }: Series, i: number, x: Scale, y: Scale): string {
  const { role, dash } = STYLES[i] ?? SECOND_STYLE;
  const shape = line<number>((_, k) => x(percent[k] ?? 0), y);
  return element("path", {
    d: roundedPath(shape([...mean])),
    fill: "none",
    "stroke-width": 1.7,
    "stroke-linejoin": "round",
    "stroke-dasharray": dash,
    ...paint("stroke", role),
  });
}

function describe({ label, n, percent, mean }: Series, unit: string): string {
  const highest = Math.max(...mean);
  const lowest = Math.min(...mean);
  const at = (value: number): string => `${plainNumber(percent[mean.indexOf(value)] ?? 0)} % of stance`;
  return `${label}, mean of ${counted(n, "contact")}: highest ${formatNumber(highest)} ${unit} at ${at(highest)}, lowest ${formatNumber(lowest)} ${unit} at ${at(lowest)}.`;
}
