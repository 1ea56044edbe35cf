import { element } from "../markup/element.js";
import { area } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { counted } from "../wording/counted.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatDifference } from "../wording/formatDifference.js";
import { formatNumber } from "../wording/formatNumber.js";
import { labelled } from "../wording/labelled.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { mark } from "./parts/mark.js";
import { type MarkerShape, marker } from "./parts/marker.js";
import { roundedPath } from "./parts/roundedPath.js";
import { rule } from "./parts/rule.js";
import { scaleOver, type ValueScale } from "./parts/scaleOver.js";
import { textWidth } from "./parts/textWidth.js";
import { tickWords } from "./parts/tickWords.js";
import { FIRST_STYLE, SECOND_STYLE, type TrialStyle } from "./parts/trialStyle.js";
import { HEADING_SIZE, headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";
import { type StepBin, stepBins } from "./stepBins.js";
import type { SeriesPoint, StepSeries } from "./stepSeriesOf.js";
import { svgFigure } from "./svgFigure.js";

/** Size of the drawing and what it is of. */
export interface StepSeriesPanel {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** Marks of a drawing; more could not be told apart, and would make it large. */
const MOST_MARKS = 300;
/** Least distance of two runs, in the drawing's units. */
const LEAST_DISTANCE = 4;
const LEFT = 50;
const RIGHT = 12;
const GAP = 14;
const LINE = 15;

const SHAPES: Readonly<Record<SeriesPoint["side"], MarkerShape>> = {
  left: "circle",
  right: "up",
  unknown: "diamond",
};

interface Panel {
  readonly series: StepSeries;
  readonly style: TrialStyle;
  readonly from: number;
  readonly to: number;
  /** `null` where every contact has its own mark. */
  readonly bins: readonly StepBin[] | null;
}

/** Draws one panel for each trial, on one scale of values and one of time. */
export function drawStepSeries(all: readonly StepSeries[], panel: StepSeriesPanel): string {
  const { id, name, width, height } = panel;
  const unit = all[0]?.unit ?? "1";
  const across = (width - LEFT - RIGHT - GAP * (all.length - 1)) / all.length;
  const panels = all.map((series, i): Panel => {
    const from = LEFT + i * (across + GAP);
    const most = Math.floor(MOST_MARKS / all.length);
    const runs = Math.min(Math.floor(most / 2), Math.floor(across / LEAST_DISTANCE));
    return {
      series,
      style: i === 0 ? FIRST_STYLE : SECOND_STYLE,
      from,
      to: from + across,
      bins: series.points.length > Math.min(most, across) ? stepBins(series.points, runs) : null,
    };
  });
  const heads = panels.map((one) => headOf(one.series, across));
  const top = 24 + LINE * Math.max(...heads.map((lines) => lines.length));
  const key = keyLines(panels, width);
  const bottom = height - 40 - LINE * key.length;
  const values = scaleOver(valuesOf(all), [bottom, top + 4], 5);
  const longest = Math.max(...all.map((series) => series.points.at(-1)?.time ?? 0));
  return svgFigure(
    {
      id,
      width,
      height,
      title: `${capitalised(name)} step by step`,
      description: panels.map((one) => describe(one, unit)).join(" "),
    },
    headingWords(0, 15, fitted(capitalised(labelled(name, unit)), width, HEADING_SIZE, true)),
    ...values.ticks.map(({ at, label }) => words(LEFT - 7, at + 4, label, { "text-anchor": "end" })),
    ...panels.map((one, i) => {
      const head = (heads[i] ?? []).map((line, k) =>
        words(
          one.from,
          33 + LINE * k,
          line,
          k === 0 && one.series.label !== "" ? { "font-weight": 600 } : {},
        ),
      );
      return [...head, drawPanel(one, values, [0, longest], [top, bottom], unit)].join("");
    }),
    words((LEFT + width - RIGHT) / 2, bottom + 34, "time, s", {
      "text-anchor": "middle",
    }),
    ...key.map((line, i) => line(bottom + 38 + LINE * (i + 1) - 4)),
  );
}

function valuesOf(all: readonly StepSeries[]): number[] {
  return all.flatMap(({ points, summary, line }) => [
    ...points.map(({ value }) => value),
    summary.mean,
    ...(line === null ? [] : [line.from.value, line.to.value]),
  ]);
}

/** What stands over a panel: the trial, its mean, its drift. */
function headOf({ label, summary, line }: StepSeries, room: number): readonly string[] {
  const decimals = decimalsFor(summary.mean, summary.sd);
  const mean = `mean ${formatNumber(summary.mean, decimals)}`;
  const drift = line === null ? null : `drift ${formatDifference(line.to.value - line.from.value, decimals)}`;
  const together = drift === null ? mean : `${mean}, ${drift}`;
  const numbers = textWidth(together, SMALL_SIZE) <= room || drift === null ? [together] : [mean, drift];
  return (label === "" ? numbers : [label, ...numbers]).map((text) => fitted(text, room, SMALL_SIZE, true));
}

function drawPanel(
  { series, style, from, to, bins }: Panel,
  { place, ticks }: ValueScale,
  times: readonly [number, number],
  [top, bottom]: readonly [number, number],
  unit: string,
): string {
  const x = scaleOver(times, [from + 5, to - 5], 3);
  const { summary, line } = series;
  const mean = place(summary.mean);
  const marks =
    bins === null
      ? series.points.map((point) =>
          mark(pointSentence(point, unit), pointMarker(point, x.place(point.time), place(point.value))),
        )
      : bins.flatMap((bin) => binMarks(bin, unit, x.place, place));
  return [
    ...ticks.map(({ at, value }) => gridRule([from, at], [to, at], value === 0)),
    rule([from, bottom], [to, bottom], "rule", { "stroke-width": 1 }),
    rule([from, top], [from, bottom], "rule", { "stroke-width": 1 }),
    ...tickWords(x.ticks, bottom + 18, to + RIGHT),
    bins === null ? "" : range(bins, x.place, place, style),
    element("g", { ...paint("stroke", style.role), "stroke-width": 1.1 }, ...marks),
    rule([from, mean], [to, mean], "ink", { "stroke-width": 1.2, "stroke-dasharray": "2 3" }),
    line === null
      ? ""
      : rule(
          [x.place(line.from.time), place(line.from.value)],
          [x.place(line.to.time), place(line.to.value)],
          "ink",
          { "stroke-width": 1.6, "stroke-dasharray": "9 4" },
        ),
  ].join("");
}

/** Left marks are open, right ones full. */
function pointMarker({ side }: SeriesPoint, x: number, y: number): string {
  const fill = side === "right" ? { fill: "currentColor", "fill-opacity": 0.75 } : { fill: "none" };
  return marker(SHAPES[side], x, y, 2.4, { ...fill, "pointer-events": "all" });
}

function binMarks(
  { from, to, low, high, means }: StepBin,
  unit: string,
  x: (time: number) => number,
  y: (value: number) => number,
): readonly string[] {
  const behind = unit === "1" ? "" : ` ${unit}`;
  return means.map((point) => {
    const read = `${sideOf(point)}${from.toFixed(1)} to ${to.toFixed(1)} s: mean of ${counted(point.n, "contact")} ${formatNumber(point.value)}${behind}; all from ${formatNumber(low)} to ${formatNumber(high)}`;
    return mark(read, pointMarker(point, x(point.time), y(point.value)));
  });
}

function range(
  bins: readonly StepBin[],
  x: (time: number) => number,
  y: (value: number) => number,
  { role }: TrialStyle,
): string {
  const shape = area<StepBin>(
    ({ from, to }) => x((from + to) / 2),
    ({ low }) => y(low),
    ({ high }) => y(high),
  );
  return element("path", { d: roundedPath(shape([...bins])), "fill-opacity": 0.16, ...paint("fill", role) });
}

function sideOf({ side }: SeriesPoint): string {
  return side === "unknown" ? "" : `${side}, `;
}

function pointSentence(point: SeriesPoint, unit: string): string {
  return `${sideOf(point)}${point.time.toFixed(1)} s: ${formatNumber(point.value)}${unit === "1" ? "" : ` ${unit}`}`;
}

/** What the marks and lines stand for, of those that are drawn. */
function keyLines(panels: readonly Panel[], width: number): readonly ((y: number) => string)[] {
  const sides = new Set(panels.flatMap(({ series }) => series.points.map(({ side }) => side)));
  const names = { left: "left", right: "right", unknown: "side not told" } as const;
  const drawn = (["left", "right", "unknown"] as const).filter((side) => sides.has(side));
  const lines: ((y: number) => string)[] = [
    (y) => {
      let at = 4;
      const parts: string[] = [];
      for (const side of drawn) {
        const shape = pointMarker({ side, time: 0, value: 0 }, at, y - 4);
        parts.push(element("g", paint("stroke", "ink"), shape), words(at + 9, y, names[side]));
        at += 22 + textWidth(names[side], SMALL_SIZE);
      }
      const sample = (dash: string, text: string): void => {
        parts.push(
          rule([at, y - 4], [at + 24, y - 4], "ink", { "stroke-width": 1.4, "stroke-dasharray": dash }),
          words(at + 29, y, text),
        );
        at += 40 + textWidth(text, SMALL_SIZE);
      };
      sample("2 3", "mean");
      if (panels.some(({ series }) => series.line !== null)) sample("9 4", "straight line");
      return parts.join("");
    },
  ];
  const binned = panels.flatMap(({ bins, series }) =>
    bins === null ? [] : [Math.ceil(series.points.length / bins.length)],
  );
  if (binned.length === 0) return lines;
  const sizes = [...new Set(binned)].join(" and ");
  const text = `Marks are means of runs of ${sizes} contacts; the shaded range spans each run from least to greatest.`;
  return [...lines, ...wrapped(text, width, SMALL_SIZE, 3).map((line) => (y: number) => words(0, y, line))];
}

function describe({ series, bins }: Panel, unit: string): string {
  const { label, points, summary, line } = series;
  const behind = unit === "1" ? "" : ` ${unit}`;
  const decimals = decimalsFor(summary.mean, summary.sd);
  const spread = summary.sd === null ? "" : ` (SD ${formatNumber(summary.sd, decimals)})`;
  const drift =
    line === null
      ? ""
      : `; by the straight line ${formatDifference(line.to.value - line.from.value, decimals)}${behind} from ${line.from.time.toFixed(1)} to ${line.to.time.toFixed(1)} s`;
  const runs =
    bins === null
      ? ""
      : ` Drawn in ${bins.length} runs of ${Math.ceil(points.length / bins.length)} contacts: means of each foot, and the range of all values.`;
  return `${label === "" ? "" : `${label}: `}${counted(points.length, "contact")}, mean ${formatNumber(summary.mean, decimals)}${behind}${spread}${drift}.${runs}`;
}
