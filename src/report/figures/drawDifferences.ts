import type { ComponentName } from "../../compare/index.js";
import type { Interval } from "../../statistics/index.js";
import { type Attributes, element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { scaleLinear } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { formatPercent } from "../wording/formatPercent.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint, type Role } from "./paint.js";
import { svgFigure } from "./svgFigure.js";

/** One difference with its intervals, in per cent of the baseline. */
export interface DifferenceRow {
  readonly label: string;
  readonly reading: string | null;
  readonly percent: number;
  readonly shown: Interval;
  readonly deciding: Interval;
}

/** The differences of one component under its heading. */
export interface DifferenceBlock {
  readonly component: ComponentName;
  /** What the differences are of, or why there are none. */
  readonly what: string;
  readonly rows: readonly DifferenceRow[];
}

/** Size of the drawing and levels of its intervals. */
export interface DifferencePanel {
  readonly id: string;
  readonly width: number;
  readonly shownLevel: number;
  readonly readingLevel: number;
}

/** Width of the column of words, left of the scale. */
const WORDS = 156;
const RIGHT = 14;
const TOP = 40;
const HEADING = 28;
const ROW = 36;

type Scale = (value: number) => number;

/** Draws blocks of differences over one scale, with the scale's zero and a key to the intervals. */
export function drawDifferences(
  blocks: readonly DifferenceBlock[],
  { id, width, shownLevel, readingLevel }: DifferencePanel,
): string {
  const ends = blocks
    .flatMap(({ rows }) => rows)
    .flatMap(({ shown, deciding }) => [shown.low, shown.high, deciding.low, deciding.high]);
  const scale = scaleLinear([Math.min(0, ...ends), Math.max(0, ...ends)], [WORDS, width - RIGHT]).nice(4);
  const ticks = scale.ticks(4);
  const x: Scale = (value) => scale(value);
  const tops = blocks.map(
    (_, i) => TOP + blocks.slice(0, i).reduce((sum, block) => sum + heightOf(block), 0),
  );
  const bottom = TOP + blocks.reduce((sum, block) => sum + heightOf(block), 0);
  return svgFigure(
    {
      id,
      width,
      height: bottom + 66,
      title: "Difference in every component, per cent of the baseline",
      description: blocks.map(describe).join(" "),
    },
    words(0, 15, "Changed less baseline, % of baseline", { "font-weight": 600 }),
    words(x(0) - 6, 36, "lower", { ...SMALL, ...ITALIC, "text-anchor": "end" }),
    width - RIGHT - x(0) > 44 ? words(x(0) + 6, 36, "higher", { ...SMALL, ...ITALIC }) : "",
    ...blocks.map((block, i) => drawBlock(block, tops[i] ?? TOP, x, ticks)),
    ...ticks.map((tick) =>
      words(x(tick), bottom + 15, signed(tick).replace(".0", ""), { ...SMALL, "text-anchor": "middle" }),
    ),
    rule(2, 30, bottom + 34, 5, "first"),
    words(38, bottom + 38, `${plainNumber(100 * shownLevel)} % interval`, SMALL),
    rule(2, 30, bottom + 54, 1.4, "first"),
    words(
      38,
      bottom + 58,
      `${plainNumber(100 * readingLevel)} % interval, which the reading is taken from`,
      SMALL,
    ),
  );
}

const SMALL: Attributes = { "font-size": 12 };
const ITALIC: Attributes = { "font-style": "italic" };

function heightOf({ rows }: DifferenceBlock): number {
  return HEADING + ROW * rows.length;
}

/** Lines of the scale run behind the rows only, so that none crosses a heading. */
function drawBlock(
  { component, what, rows }: DifferenceBlock,
  top: number,
  x: Scale,
  ticks: readonly number[],
): string {
  const start = top + HEADING;
  const end = start + ROW * rows.length;
  const heading = element("tspan", { "font-weight": 600 }, capitalised(component));
  return [
    element("text", { x: 0, y: top + 19 }, heading, escapeMarkup(`: ${what}`)),
    ...(rows.length === 0 ? [] : ticks.map((tick) => tickLine(x(tick), start, end, tick === 0))),
    ...rows.map((row, i) => drawRow(row, start + ROW * (i + 0.5), x)),
  ].join("");
}

function drawRow({ label, reading, percent, shown, deciding }: DifferenceRow, y: number, x: Scale): string {
  return [
    words(0, y - 3, `${label}${reading === null ? "" : `: ${reading}`}`, SMALL),
    words(0, y + 12, `${signed(percent)} % (${signed(shown.low)} to ${signed(shown.high)})`, SMALL),
    rule(x(deciding.low), x(deciding.high), y, 1.4, "first"),
    rule(x(shown.low), x(shown.high), y, 5, "first"),
    element("circle", { cx: x(percent), cy: y, r: 3.5, ...paint("fill", "ink") }),
  ].join("");
}

function words(x: number, y: number, text: string, attributes: Attributes): string {
  return element("text", { x, y, ...attributes }, escapeMarkup(text));
}

function rule(x1: number, x2: number, y: number, width: number, role: Role): string {
  return element("line", { x1, x2, y1: y, y2: y, "stroke-width": width, ...paint("stroke", role) });
}

function tickLine(x: number, y1: number, y2: number, zero: boolean): string {
  const weight = { "stroke-width": zero ? 1.2 : 0.6, "stroke-opacity": zero ? 1 : 0.5 };
  return element("line", { x1: x, x2: x, y1, y2, ...weight, ...paint("stroke", zero ? "ink" : "rule") });
}

function signed(percent: number): string {
  return formatPercent(percent).replace("-", "−");
}

function describe({ component, rows }: DifferenceBlock): string {
  if (rows.length === 0) return `${capitalised(component)}: no difference to draw.`;
  const parts = rows.map(
    ({ label, percent, shown, reading }) =>
      `${label} ${signed(percent)} % (${signed(shown.low)} to ${signed(shown.high)}), ${reading ?? "no reading"}`,
  );
  return `${capitalised(component)}: ${parts.join("; ")}.`;
}
