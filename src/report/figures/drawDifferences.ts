import type { Interval } from "../../statistics/index.js";
import { element } from "../markup/element.js";
import { escapeMarkup } from "../markup/escapeMarkup.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { marginSample, marginShade } from "./parts/marginShade.js";
import { mark } from "./parts/mark.js";
import { marker } from "./parts/marker.js";
import { rule } from "./parts/rule.js";
import { scaleOver, type ValueScale } from "./parts/scaleOver.js";
import { textWidth } from "./parts/textWidth.js";
import { tickWords } from "./parts/tickWords.js";
import { touchArea } from "./parts/touchArea.js";
import { HEADING_SIZE, headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";
import { svgFigure } from "./svgFigure.js";

/** One difference with its intervals, in the unit of its scale. */
export interface DifferenceRow {
  /** Beside the line, such as "per step". */
  readonly label: string;
  /** Of the load; `null` where none is taken. */
  readonly reading: string | null;
  readonly value: number;
  readonly shown: Interval;
  /** Interval a reading is taken from; `null` where it is not known in this unit. */
  readonly deciding: Interval | null;
  /** Half width of the range around zero within which a difference is similar. */
  readonly margin: number | null;
  /** The number and its interval, written out. */
  readonly number: string;
  readonly range: string;
  /** All of it in a sentence. */
  readonly read: string;
}

/** The differences of one component or metric under its heading. */
export interface DifferenceBlock {
  readonly heading: string;
  /** What the differences are of, or why there are none. */
  readonly what: string;
  readonly rows: readonly DifferenceRow[];
}

/** Size of the drawing, its words and the levels of its intervals. */
export interface DifferencePanel {
  readonly id: string;
  readonly width: number;
  readonly title: string;
  /** Over the drawing. */
  readonly heading: string;
  /** One scale under all rows; else each row has its own. */
  readonly oneScale: boolean;
  readonly shownLevel: number;
  readonly readingLevel: number;
}

/** Width of the column of words, left of the scale. */
const WORDS = 168;
const RIGHT = 16;
const TOP = 40;
/** The same where no word stands over the scale. */
const TOP_WITHOUT_SIDES = 22;
const LINE = 15;
const AXIS = 20;
const TICKS = 4;

/** What is drawn of a block, and where. */
interface PlacedBlock extends DifferenceBlock {
  readonly top: number;
  readonly headings: readonly string[];
}

/** Draws blocks of differences with the zero of the scale, the margins and a key to the intervals. */
export function drawDifferences(blocks: readonly DifferenceBlock[], panel: DifferencePanel): string {
  const { id, width, title, heading, oneScale } = panel;
  const rows = blocks.flatMap((block) => block.rows);
  const scaleFor = (of: readonly DifferenceRow[]): ValueScale =>
    scaleOver([0, ...endsOf(of)], [WORDS, width - RIGHT], TICKS);
  const common = oneScale ? scaleFor(rows) : null;
  const placed: PlacedBlock[] = [];
  let bottom = oneScale ? TOP : TOP_WITHOUT_SIDES;
  for (const block of blocks) {
    const headings = headingLines(block, width);
    placed.push({ ...block, top: bottom, headings });
    bottom += blockHeight(block, headings, oneScale);
  }
  const zero = common === null ? (WORDS + width - RIGHT) / 2 : common.place(0);
  const key = keyOf(rows, panel);
  return svgFigure(
    {
      id,
      width,
      height: bottom + (common === null ? 6 : AXIS) + LINE * key.length + 6,
      title,
      description: blocks.map(describe).join(" "),
    },
    headingWords(0, 15, heading),
    ...(common === null ? [] : sideWords(zero, width)),
    ...placed.map((block) => drawBlock(block, (of) => common ?? scaleFor([of]), common === null, width)),
    ...(common === null ? [] : tickWords(common.ticks, bottom + 15, width, true)),
    ...key.map((line, i) => line(bottom + (common === null ? 6 : AXIS) + LINE * (i + 1))),
  );
}

function endsOf(rows: readonly DifferenceRow[]): number[] {
  const ends = rows.flatMap(({ value, shown, deciding }) => [
    value,
    shown.low,
    shown.high,
    ...(deciding === null ? [] : [deciding.low, deciding.high]),
  ]);
  const reach = 3 * Math.max(...ends.map(Math.abs));
  // A margin far beyond all differences would leave them no room; its shade then fills the drawing.
  const margins = rows.flatMap(({ margin }) => (margin === null || margin > reach ? [] : [-margin, margin]));
  return [...ends, ...margins];
}

/** The heading and what it is of, on one line where both fit. */
function headingLines({ heading, what }: DifferenceBlock, width: number): readonly string[] {
  const whole = what === "" ? heading : `${heading}: ${what}`;
  if (what === "") return wrapped(whole, width / 1.1, HEADING_SIZE, 2);
  return textWidth(whole, HEADING_SIZE) <= width
    ? [whole]
    : [fitted(heading, width, HEADING_SIZE, true), ...wrapped(what, width, SMALL_SIZE, 2)];
}

function rowLines({ number, range }: DifferenceRow): readonly string[] {
  const whole = `${number} ${range}`;
  return textWidth(whole, SMALL_SIZE) <= WORDS - 2 ? [whole] : [number, range];
}

function rowHeight(row: DifferenceRow): number {
  return 6 + LINE * (1 + rowLines(row).length);
}

function blockHeight({ rows }: DifferenceBlock, headings: readonly string[], oneScale: boolean): number {
  const own = rows.reduce((sum, row) => sum + rowHeight(row) + (oneScale ? 0 : AXIS), 0);
  return 12 + (LINE + 1) * headings.length + own;
}

/** Lines of the scale run behind the rows only, so that none crosses a heading. */
function drawBlock(
  { heading, rows, top, headings }: PlacedBlock,
  scaleOf: (row: DifferenceRow) => ValueScale,
  ownAxis: boolean,
  width: number,
): string {
  const lines = headings.map((line, i) => headingLine(line, heading, i, top + 19 + (LINE + 1) * i));
  let start = top + 12 + (LINE + 1) * headings.length;
  const drawn = rows.map((row) => {
    const scale = scaleOf(row);
    const height = rowHeight(row);
    const at = start;
    start += height + (ownAxis ? AXIS : 0);
    return (
      drawRow(row, at, height, scale, width) +
      (ownAxis ? tickWords(scale.ticks, at + height + 13, width, true).join("") : "")
    );
  });
  return [...lines, ...drawn].join("");
}

function headingLine(line: string, heading: string, i: number, y: number): string {
  const rest = line.startsWith(`${heading}: `) ? line.slice(heading.length) : null;
  if (i > 0 || (rest === null && line !== heading)) {
    return i > 0 ? words(0, y, line) : headingWords(0, y, line);
  }
  const bold = element("tspan", { "font-weight": 600 }, escapeMarkup(heading));
  return element("text", { x: 0, y }, bold, escapeMarkup(rest ?? ""));
}

function drawRow(
  row: DifferenceRow,
  top: number,
  height: number,
  { place, ticks }: ValueScale,
  width: number,
): string {
  const { label, reading, value, shown, deciding, margin, read } = row;
  const middle = top + height / 2;
  const across = ({ low, high }: Interval, thickness: number): string =>
    rule([place(low), middle], [place(high), middle], "first", { "stroke-width": thickness });
  return [
    margin === null
      ? ""
      : marginShade({ from: place(-margin), to: place(margin), top, bottom: top + height }, [
          WORDS,
          width - RIGHT,
        ]),
    ...ticks.map((tick) => gridRule([tick.at, top], [tick.at, top + height], tick.value === 0)),
    ...[reading === null ? label : `${label}: ${reading}`, ...rowLines(row)].map((line, i) =>
      words(0, top + 15 + LINE * i, line),
    ),
    mark(
      read,
      touchArea(0, top, width, height),
      deciding === null ? "" : across(deciding, 1.4),
      across(shown, 5),
      marker("circle", place(value), middle, 3.5, paint("fill", "ink")),
    ),
  ].join("");
}

function sideWords(zero: number, width: number): readonly string[] {
  const italic = { "font-style": "italic" };
  return [
    zero > 44 ? words(zero - 6, 36, "lower", { ...italic, "text-anchor": "end" }) : "",
    width - RIGHT - zero > 44 ? words(zero + 6, 36, "higher", italic) : "",
  ];
}

/** What the lines and the shade stand for, of those that are drawn. */
function keyOf(
  rows: readonly DifferenceRow[],
  { shownLevel, readingLevel }: DifferencePanel,
): readonly ((y: number) => string)[] {
  const level = (share: number): string => `${plainNumber(100 * share)} % interval`;
  const sample = (y: number, thickness: number): string =>
    rule([2, y - 4], [30, y - 4], "first", { "stroke-width": thickness });
  const lines = [(y: number) => sample(y, 5) + words(38, y, level(shownLevel))];
  if (rows.some(({ deciding }) => deciding !== null)) {
    lines.push((y) => sample(y, 1.4) + words(38, y, `${level(readingLevel)}, for readings`));
  }
  if (rows.some(({ margin }) => margin !== null)) {
    lines.push((y) => marginSample(y) + words(38, y, "within the margin of similar"));
  }
  return lines;
}

function describe({ heading, what, rows }: DifferenceBlock): string {
  const name = what === "" ? heading : `${heading}, ${what}`;
  if (rows.length === 0) return `${name}: no difference to draw.`;
  return `${name}: ${rows
    .map(({ label, reading, number, range }) => `${label} ${number} ${range}, ${reading ?? "no reading"}`)
    .join("; ")}.`;
}
