import type { Spread } from "../../trial/index.js";
import { element } from "../markup/element.js";
import { capitalised } from "../wording/capitalised.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { mark } from "./parts/mark.js";
import { marker } from "./parts/marker.js";
import { rule } from "./parts/rule.js";
import { scaleOver } from "./parts/scaleOver.js";
import { textWidth } from "./parts/textWidth.js";
import { tickWords } from "./parts/tickWords.js";
import { touchArea } from "./parts/touchArea.js";
import { FIRST_STYLE, SECOND_STYLE, type TrialStyle } from "./parts/trialStyle.js";
import { headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";
import { svgFigure } from "./svgFigure.js";

/** One line of the account, J/kg/m: a value for each trial, none where it is not known. */
export interface WorkRow {
  readonly name: string;
  readonly values: readonly Spread[];
}

/** Size of the drawing, names of the trials, and what stands under it. */
export interface WorkPanel {
  readonly id: string;
  readonly width: number;
  /** Empty for a single trial. */
  readonly labels: readonly string[];
  readonly note: string | null;
}

const UNIT = "J/kg/m";
const BAR = 17;
const LINE = 15;
const NOT_OXYGEN = "Mechanical work on the centre of mass is not oxygen uptake.";

/** Draws the bars with their intervals, a group each row. */
export function drawWork(rows: readonly WorkRow[], panel: WorkPanel): string {
  const { id, width, labels, note } = panel;
  const longest = Math.max(
    0,
    ...rows.flatMap(({ values }) => values.map((value) => textWidth(numberOf(value), SMALL_SIZE))),
  );
  const end = width - Math.min(longest + 12, 0.6 * width);
  const { place: x, ticks } = scaleOver(
    [0, ...rows.flatMap(({ values }) => values.flatMap(endsOf))],
    [4, end],
    3,
  );
  const top = 24 + LINE * labels.length;
  const heights = rows.map(({ values }) => 24 + BAR * Math.max(values.length, 0));
  const tops = heights.map((_, i) => top + heights.slice(0, i).reduce((sum, height) => sum + height, 0));
  const bottom = top + heights.reduce((sum, height) => sum + height, 0);
  const level = rows.flatMap(({ values }) => values.flatMap(({ interval }) => interval?.level ?? []))[0];
  const notes = [
    ...(note === null ? [] : [note]),
    ...(level === undefined ? [] : [`Lines on bars, and brackets: ${plainNumber(100 * level)} % intervals.`]),
    NOT_OXYGEN,
  ];
  const lines = notes.flatMap((text) => wrapped(text, width, SMALL_SIZE, 3));
  return svgFigure(
    {
      id,
      width,
      height: bottom + 26 + LINE * lines.length,
      title: "Positive mechanical work per metre and kilogram",
      description: [...rows.map((row) => describe(row, labels)), ...notes].join(" "),
    },
    headingWords(0, 15, `Positive work, ${UNIT}`),
    ...labels.map((label, i) => keyLine(label, i, 33 + LINE * i, width)),
    ...rows.flatMap(({ name, values }, i) => {
      const at = tops[i] ?? top;
      const start = at + 18;
      return [
        words(0, at + 14, values.length === 0 ? `${name}: not known` : name),
        ...(values.length === 0
          ? []
          : ticks.map((tick) =>
              gridRule([tick.at, start], [tick.at, start + BAR * values.length], tick.value === 0),
            )),
        ...values.map((value, k) => bar(value, name, labels[k] ?? "", k, start + BAR * k, x, [end, width])),
      ];
    }),
    ...tickWords(ticks, bottom + 14, width),
    ...lines.map((line, i) => words(0, bottom + 22 + LINE * (i + 1) - 4, line)),
  );
}

function endsOf({ mean, interval }: Spread): readonly number[] {
  return interval === null ? [mean] : [mean, interval.low, interval.high];
}

function styleOf(i: number): TrialStyle {
  return i === 0 ? FIRST_STYLE : SECOND_STYLE;
}

function box(x: number, y: number, width: number, i: number): string {
  const { role, dash } = styleOf(i);
  const edge = { "stroke-width": 1.2, "stroke-dasharray": dash === undefined ? undefined : "4 2" };
  const opacity = i === 0 ? 0.4 : 0.12;
  const area = { x, y, width, height: BAR - 6, "fill-opacity": opacity, ...paint("fill", role) };
  return element("g", { ...paint("stroke", role), ...edge }, element("rect", area));
}

function keyLine(label: string, i: number, y: number, width: number): string {
  return box(1, y - 10, 28, i) + words(38, y, fitted(label, width - 40, SMALL_SIZE));
}

function bar(
  value: Spread,
  name: string,
  label: string,
  i: number,
  top: number,
  x: (value: number) => number,
  [end, width]: readonly [number, number],
): string {
  const { mean, interval } = value;
  const { role, shape } = styleOf(i);
  const middle = top + BAR / 2;
  const [from, to] = [Math.min(x(0), x(mean)), Math.max(x(0), x(mean))];
  const who = label === "" ? "" : `, ${label}`;
  return (
    words(end + 12, middle + 4, numberOf(value)) +
    mark(
      `${name}${who}: ${numberOf(value)} ${UNIT}`,
      touchArea(0, top, width, BAR),
      box(from, top + 3, to - from, i),
      interval === null
        ? ""
        : rule([x(interval.low), middle], [x(interval.high), middle], "ink", { "stroke-width": 1.6 }),
      marker(shape, x(mean), middle, 3, paint("fill", role)),
    )
  );
}

function numberOf({ mean, interval }: Spread): string {
  const size = Math.max(Math.abs(mean), Math.abs(interval?.low ?? 0), Math.abs(interval?.high ?? 0));
  const write = (value: number): string =>
    (size < 1000 ? value.toFixed(size < 0.1 ? 4 : 3) : value.toExponential(2)).replace("-", "−");
  return interval === null ? write(mean) : `${write(mean)} (${write(interval.low)}–${write(interval.high)})`;
}

function describe({ name, values }: WorkRow, labels: readonly string[]): string {
  if (values.length === 0) return `${capitalised(name)}: not known.`;
  const parts = values.map(
    (value, i) => `${labels[i] === undefined ? "" : `${labels[i]} `}${numberOf(value)}`,
  );
  return `${capitalised(name)}: ${parts.join(", ")} ${UNIT}.`;
}
