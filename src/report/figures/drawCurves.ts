import type { ComponentName } from "../../compare/index.js";
import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { area, line, scaleLinear } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { formatNumber } from "../wording/formatNumber.js";
import { plainNumber } from "../wording/plainNumber.js";
import { directionWords } from "./directionWords.js";
import { paint, type Role } from "./paint.js";
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
}

const ROLES: readonly Role[] = ["first", "second"];
const DASHES = [undefined, "7 4"] as const;
const LEFT = 46;
const RIGHT = 14;
const BOTTOM = 44;
const LEGEND_ROW = 19;

/** Draws at most two curves with their bands, axes, zero line and legend. */
export function drawCurves(series: readonly Series[], panel: CurvePanel): string {
  const { component, side, unit, id, width, height, scaleFor } = panel;
  const top = 30 + LEGEND_ROW * series.length;
  const bottom = height - BOTTOM;
  const edges = scaleFor.flatMap(({ mean, sd }) =>
    mean.flatMap((value, i) => [value - (sd?.[i] ?? 0), value + (sd?.[i] ?? 0)]),
  );
  const x = scaleLinear([0, 100], [LEFT, width - RIGHT]);
  const y = scaleLinear([Math.min(0, ...edges), Math.max(0, ...edges)], [bottom, top]).nice(5);
  const words = directionWords(component, side);
  const foot = side === "both" ? "" : `, ${side} foot`;
  const heading = `${capitalised(component)} force${foot}`;
  const bands = series.some(({ sd }) => sd !== null)
    ? " Bands show one standard deviation between contacts."
    : "";
  return svgFigure(
    {
      id,
      width,
      height,
      title: `${heading}: mean curve over stance`,
      description: `${series.map((one) => describe(one, unit)).join(" ")}${bands}`,
    },
    element("text", { x: 0, y: 15, "font-weight": 600 }, escapeMarkup(`${heading}, ${unit}`)),
    ...series.map((one, i) => legendRow(one, i)),
    ...y
      .ticks(5)
      .map((tick) => gridLine(y(tick), LEFT, width - RIGHT, plainNumber(tick).replace("-", "−"), tick === 0)),
    ...[0, 25, 50, 75, 100].map((tick) =>
      element("text", { x: x(tick), y: bottom + 18, "text-anchor": "middle", "font-size": 12 }, String(tick)),
    ),
    element("text", { x: (LEFT + width - RIGHT) / 2, y: height - 6, "text-anchor": "middle" }, "stance, %"),
    ...series.map((one, i) => band(one, i, x, y)),
    ...series.map((one, i) => curve(one, i, x, y)),
    ...(words === null
      ? []
      : [
          element(
            "text",
            {
              x: width - RIGHT - 2,
              y: top + 11,
              "text-anchor": "end",
              "font-size": 12,
              "font-style": "italic",
            },
            words.positive,
          ),
          element(
            "text",
            {
              x: width - RIGHT - 2,
              y: bottom - 5,
              "text-anchor": "end",
              "font-size": 12,
              "font-style": "italic",
            },
            words.negative,
          ),
        ]),
  );
}

type Scale = (value: number) => number;

function legendRow({ label, n }: Series, i: number): string {
  const y = 34 + i * LEGEND_ROW;
  return (
    element("line", {
      x1: 1,
      x2: 37,
      y1: y - 4,
      y2: y - 4,
      "stroke-width": 2.2,
      "stroke-dasharray": DASHES[i],
      ...paint("stroke", ROLES[i] ?? "ink"),
    }) + element("text", { x: LEFT, y }, escapeMarkup(`${label}, ${contacts(n)}`))
  );
}

function gridLine(y: number, from: number, to: number, label: string, zero: boolean): string {
  return (
    element("line", {
      x1: from,
      x2: to,
      y1: y,
      y2: y,
      "stroke-width": zero ? 1.2 : 0.6,
      "stroke-opacity": zero ? 1 : 0.5,
      ...paint("stroke", zero ? "ink" : "rule"),
    }) + element("text", { x: from - 7, y: y + 4, "text-anchor": "end", "font-size": 12 }, label)
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
    d: rounded(shape([...mean])),
    "fill-opacity": 0.16,
    ...paint("fill", ROLES[i] ?? "ink"),
  });
}

function curve({ percent, mean }: Series, i: number, x: Scale, y: Scale): string {
  const shape = line<number>((_, k) => x(percent[k] ?? 0), y);
  return element("path", {
    d: rounded(shape([...mean])),
    fill: "none",
    "stroke-width": 2.2,
    "stroke-linejoin": "round",
    "stroke-dasharray": DASHES[i],
    ...paint("stroke", ROLES[i] ?? "ink"),
  });
}

/** Coordinates to a tenth: a third of the bytes, and nothing that an eye could see. */
function rounded(path: string | null): string {
  return (path ?? "").replace(/-?\d+\.\d+/g, (number) => String(Number(Number(number).toFixed(1))));
}

function describe({ label, n, percent, mean }: Series, unit: string): string {
  const highest = Math.max(...mean);
  const lowest = Math.min(...mean);
  const at = (value: number) => `${plainNumber(percent[mean.indexOf(value)] ?? 0)} % of stance`;
  return `${label}, mean of ${contacts(n)}: highest ${formatNumber(highest)} ${unit} at ${at(highest)}, lowest ${formatNumber(lowest)} ${unit} at ${at(lowest)}.`;
}

function contacts(n: number): string {
  return `${n} contact${n === 1 ? "" : "s"}`;
}
