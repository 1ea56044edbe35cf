import type { RunnerDifference, RunnersMetric } from "../../compare/index.js";
import type { Interval } from "../../statistics/index.js";
import { capitalised } from "../wording/capitalised.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatDifference } from "../wording/formatDifference.js";
import { formatPercent } from "../wording/formatPercent.js";
import { labelled } from "../wording/labelled.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { marginSample, marginShade } from "./parts/marginShade.js";
import { mark } from "./parts/mark.js";
import { marker } from "./parts/marker.js";
import { rule } from "./parts/rule.js";
import { scaleOver } from "./parts/scaleOver.js";
import { textWidth } from "./parts/textWidth.js";
import { tickWords } from "./parts/tickWords.js";
import { touchArea } from "./parts/touchArea.js";
import { HEADING_SIZE, headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { svgFigure } from "./svgFigure.js";

/** Size of the drawing, its metric and the levels of the average's intervals. */
export interface RunnersPanel {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly shownLevel: number;
  readonly readingLevel: number;
}

const TOP = 44;
const ROW = 19;
const LINE = 15;
const MOST_WORDS = 104;
const LEAST_WORDS = 56;
const AVERAGE = "average";

/** Draws a row for each runner, and the average under a line. */
export function drawRunners(metric: RunnersMetric, panel: RunnersPanel): string {
  const { id, name, width, shownLevel, readingLevel } = panel;
  const { runners, difference, interval, readingInterval, percent, unit } = metric;
  const write = writer(metric);
  const behind = unit === "1" ? "" : ` ${unit}`;
  const numbers = Math.max(
    44,
    ...[...runners, metric].map((one) => textWidth(write(one.difference), SMALL_SIZE) + 10),
  );
  const left = Math.min(
    Math.max(LEAST_WORDS, ...runners.map(({ runner }) => textWidth(runner, SMALL_SIZE) + 8)),
    MOST_WORDS,
  );
  const end = width - numbers;
  const { place: x, ticks } = scaleOver(endsOf(metric), [left + 4, end - 4], 4);
  const between = TOP + ROW * runners.length + 4;
  const middle = between + 4 + ROW / 2;
  const bottom = between + ROW + 8;
  const zero = x(0);
  const margin = metric.margin.value;
  const italic = { "font-style": "italic" } as const;
  const line = ({ low, high }: Interval, thickness: number): string =>
    rule([x(low), middle], [x(high), middle], "first", { "stroke-width": thickness });
  const average = `${AVERAGE} runner: ${write(difference)}${behind}${
    percent === null ? "" : ` (${formatPercent(percent)} %)`
  }, ${level(shownLevel)} ${write(interval.low)} to ${write(interval.high)}`;
  return svgFigure(
    {
      id,
      width,
      height: bottom + 84,
      title: `${capitalised(name)}: difference of each runner`,
      description: describe(metric, average, behind),
    },
    headingWords(0, 15, fitted(capitalised(labelled(name, unit)), width, HEADING_SIZE, true)),
    zero - left > 40 ? words(zero - 6, 36, "lower", { ...italic, "text-anchor": "end" }) : "",
    end - zero > 48 ? words(zero + 6, 36, "higher", italic) : "",
    marginShade({ from: x(-margin), to: x(margin), top: TOP, bottom }, [left, end]),
    ...ticks.map(({ value, at }) => gridRule([at, TOP], [at, bottom], value === 0)),
    ...tickWords(ticks, bottom + 15, width, true),
    ...runners.map((runner, i) => row(runner, TOP + ROW * i, left, width, x, write, behind)),
    rule([0, between], [width, between], "rule", { "stroke-width": 1 }),
    words(0, middle + 4, AVERAGE, { "font-weight": 600 }),
    words(width, middle + 4, write(difference), { "text-anchor": "end", "font-weight": 600 }),
    mark(
      average,
      touchArea(0, between, width, ROW + 8),
      line(readingInterval, 1.4),
      line(interval, 4),
      marker("diamond", x(difference), middle, 5, paint("fill", "ink")),
    ),
    rule([2, bottom + 32], [30, bottom + 32], "first", { "stroke-width": 4 }),
    words(38, bottom + 36, `${level(shownLevel)}`),
    rule([2, bottom + 47], [30, bottom + 47], "first", { "stroke-width": 1.4 }),
    words(38, bottom + 51, `${level(readingLevel)} of the average, for readings`),
    marginSample(bottom + 51 + LINE),
    words(38, bottom + 51 + LINE, "within the margin of similar"),
  );
}

function level(share: number): string {
  return `${plainNumber(100 * share)} % interval`;
}

/** One number of decimals for all rows. */
function writer({ difference, interval, runners }: RunnersMetric): (value: number) => string {
  const size = Math.max(...[difference, ...runners.map((one) => one.difference)].map(Math.abs));
  const decimals = decimalsFor(size, (interval.high - interval.low) / 2);
  return (value) => formatDifference(value, decimals).replace("-", "−");
}

function endsOf({ runners, difference, interval, readingInterval, margin }: RunnersMetric): number[] {
  const ends = [
    0,
    difference,
    interval.low,
    interval.high,
    readingInterval.low,
    readingInterval.high,
    ...runners.flatMap((one) => [
      one.difference,
      ...(one.interval === null ? [] : [one.interval.low, one.interval.high]),
    ]),
  ];
  const reach = 3 * ends.reduce((largest, end) => Math.max(largest, Math.abs(end)), 0);
  return margin.value > reach ? ends : [...ends, -margin.value, margin.value];
}

function row(
  { runner, difference, interval }: RunnerDifference,
  top: number,
  left: number,
  width: number,
  x: (value: number) => number,
  write: (value: number) => string,
  behind: string,
): string {
  const middle = top + ROW / 2;
  const range =
    interval === null ? "" : `, ${level(interval.level)} ${write(interval.low)} to ${write(interval.high)}`;
  return [
    words(0, middle + 4, fitted(runner, left - 6, SMALL_SIZE)),
    words(width, middle + 4, write(difference), { "text-anchor": "end" }),
    mark(
      `${runner}: ${write(difference)}${behind}${range}`,
      touchArea(0, top, width, ROW),
      interval === null
        ? ""
        : rule([x(interval.low), middle], [x(interval.high), middle], "first", { "stroke-width": 1.8 }),
      marker("square", x(difference), middle, 3.6, paint("fill", "first")),
    ),
  ].join("");
}

function describe({ runners, difference }: RunnersMetric, average: string, behind: string): string {
  const all = `${capitalised(average)}.`;
  if (runners.length === 0) return `${all} Independent groups: no differences of single runners.`;
  const values = runners.map((one) => one.difference);
  const write = (value: number): string => formatDifference(value);
  const same = values.filter((value) => value * difference > 0).length;
  return `${all} ${runners.length} runners from ${write(Math.min(...values))} to ${write(Math.max(...values))}${behind}; ${same} of them to the same side as the average.`;
}
