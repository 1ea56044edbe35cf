import type { Symmetry } from "../../trial/index.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatNumber } from "../wording/formatNumber.js";
import { formatPercent } from "../wording/formatPercent.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { mark } from "./parts/mark.js";
import { marker } from "./parts/marker.js";
import { rule } from "./parts/rule.js";
import { scaleOver, type ValueScale } from "./parts/scaleOver.js";
import { tickWords } from "./parts/tickWords.js";
import { touchArea } from "./parts/touchArea.js";
import { FIRST_STYLE, SECOND_STYLE } from "./parts/trialStyle.js";
import { HEADING_SIZE, headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";
import { svgFigure } from "./svgFigure.js";

/** One trial's index of a metric, or why it has none. */
export interface SymmetryRow {
  /** Empty where there is one trial alone. */
  readonly label: string;
  readonly symmetry: Symmetry | null;
  readonly reason: string | null;
}

/** A metric with its rows. */
export interface SymmetryBlock {
  readonly heading: string;
  readonly rows: readonly SymmetryRow[];
}

/** Size of the drawing. */
export interface SymmetryPanel {
  readonly id: string;
  readonly width: number;
}

const WORDS = 160;
const RIGHT = 16;
const TOP = 40;
const LINE = 15;
const HEADING = 24;

/** A row with its place; `lines` are the words left of the scale, or the reason across the drawing. */
interface PlacedRow extends SymmetryRow {
  readonly top: number;
  readonly height: number;
  readonly lines: readonly string[];
  readonly i: number;
}

/** Draws blocks of rows over one scale of per cent. */
export function drawSymmetry(blocks: readonly SymmetryBlock[], { id, width }: SymmetryPanel): string {
  const found = blocks.flatMap(({ rows }) => rows.flatMap(({ symmetry }) => symmetry ?? []));
  const scale = scaleOver(
    [0, ...found.flatMap(({ index, interval }) => [index, interval.low, interval.high])],
    [WORDS, width - RIGHT],
    4,
  );
  const drawn: string[] = [];
  let bottom = TOP;
  for (const { heading, rows } of blocks) {
    drawn.push(headingWords(0, bottom + 17, fitted(heading, width, HEADING_SIZE, true)));
    bottom += HEADING;
    rows.forEach((row, i) => {
      const placed = placedRow(row, bottom, i, width);
      drawn.push(drawRow(placed, scale, width));
      bottom += placed.height;
    });
    bottom += 6;
  }
  const level = found[0]?.interval.level ?? 0.95;
  const zero = scale.place(0);
  const italic = { "font-style": "italic" } as const;
  return svgFigure(
    {
      id,
      width,
      height: bottom + 58,
      title: "Right foot against left: symmetry index",
      description: blocks.map(describe).join(" "),
    },
    headingWords(0, 15, "Symmetry index, %"),
    zero - WORDS > 66 || zero > 90
      ? words(zero - 6, 36, "left larger", { ...italic, "text-anchor": "end" })
      : "",
    width - zero > 82 ? words(zero + 6, 36, "right larger", italic) : "",
    ...drawn,
    ...tickWords(scale.ticks, bottom + 12, width, true),
    rule([2, bottom + 32], [30, bottom + 32], "ink", { "stroke-width": 3 }),
    words(0, bottom + 52, "100 × (right − left) ÷ mean of both feet"),
    words(38, bottom + 36, `${plainNumber(100 * level)} % interval`),
  );
}

function placedRow(row: SymmetryRow, top: number, i: number, width: number): PlacedRow {
  const { label, symmetry, reason } = row;
  if (symmetry === null) {
    const text = `${label === "" ? "" : `${label}: `}no index, ${reason ?? "not computed"}`;
    const lines = wrapped(text, width, SMALL_SIZE, 4);
    return { ...row, top, i, lines, height: 6 + LINE * lines.length };
  }
  const lines = [
    ...(label === "" ? [] : [fitted(label, WORDS - 8, SMALL_SIZE)]),
    feet(symmetry),
    fitted(indexWords(symmetry), WORDS, SMALL_SIZE),
  ];
  return { ...row, top, i, lines, height: 8 + LINE * lines.length };
}

function drawRow(
  { label, symmetry, top, height, lines, i }: PlacedRow,
  scale: ValueScale,
  width: number,
): string {
  const text = lines.map((line, k) => words(0, top + 14 + LINE * k, line));
  if (symmetry === null) return text.join("");
  const { place, ticks } = scale;
  const { role, shape, dash } = i === 0 ? FIRST_STYLE : SECOND_STYLE;
  const { index, interval, unit } = symmetry;
  const middle = top + height / 2;
  const who = label === "" ? "" : `${label}: `;
  const behind = unit === "1" ? "" : ` ${unit}`;
  return [
    ...ticks.map((tick) => gridRule([tick.at, top], [tick.at, top + height], tick.value === 0)),
    ...text,
    mark(
      `${who}${feet(symmetry)}${behind}, symmetry index ${indexWords(symmetry)}`,
      touchArea(0, top, width, height),
      rule([place(interval.low), middle], [place(interval.high), middle], role, {
        "stroke-width": 3,
        "stroke-dasharray": dash === undefined ? undefined : "5 2",
      }),
      marker(shape, place(index), middle, 4, paint("fill", role)),
    ),
  ].join("");
}

function feet({ left, right, difference }: Symmetry): string {
  const { low, high } = difference.interval;
  const decimals = decimalsFor(Math.max(Math.abs(left.mean), Math.abs(right.mean)), (high - low) / 2);
  return `left ${formatNumber(left.mean, decimals)}, right ${formatNumber(right.mean, decimals)}`;
}

function indexWords({ index, interval }: Symmetry): string {
  return `${formatPercent(index)} % (${formatPercent(interval.low)} to ${formatPercent(interval.high)})`;
}

function describe({ heading, rows }: SymmetryBlock): string {
  const parts = rows.map(({ label, symmetry, reason }) => {
    const who = label === "" ? "" : `${label} `;
    return symmetry === null
      ? `${who}no index, ${reason ?? "not computed"}`
      : `${who}${feet(symmetry)}, index ${indexWords(symmetry)}`;
  });
  return `${heading}: ${parts.join("; ")}.`;
}
