import type { SessionMetric, SessionValue } from "../../compare/index.js";
import { element } from "../markup/element.js";
import { capitalised } from "../wording/capitalised.js";
import { counted } from "../wording/counted.js";
import { decimalsFor } from "../wording/decimalsFor.js";
import { formatDifference } from "../wording/formatDifference.js";
import { formatNumber } from "../wording/formatNumber.js";
import { labelled } from "../wording/labelled.js";
import { plainNumber } from "../wording/plainNumber.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { gridRule } from "./parts/gridRule.js";
import { mark } from "./parts/mark.js";
import { type MarkerShape, marker } from "./parts/marker.js";
import { rule } from "./parts/rule.js";
import { scaleOver } from "./parts/scaleOver.js";
import { textWidth } from "./parts/textWidth.js";
import { touchArea } from "./parts/touchArea.js";
import { HEADING_SIZE, headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";
import { svgFigure } from "./svgFigure.js";

/** Size of the drawing and its metric. */
export interface SessionsPanel {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Of the sessions' intervals. */
  readonly level: number;
}

type Place = "gathering" | "within" | "above" | "below";

const LEFT = 50;
const RIGHT = 12;
const LINE = 15;
/** More lines than these would be a table. */
const MOST_LISTED = 8;

const SHAPES: Readonly<Record<Place, MarkerShape>> = {
  gathering: "diamond",
  within: "circle",
  above: "up",
  below: "down",
};
const PLACE_WORDS: Readonly<Record<Place, string>> = {
  gathering: "makes the baseline",
  within: "within",
  above: "above",
  below: "below",
};

/** Draws the sessions in their order, with the baseline and its band behind each. */
export function drawSessions(metric: SessionMetric, panel: SessionsPanel): string {
  const { id, name, width, height, level } = panel;
  const { sessions, unit } = metric;
  const write = writer(metric);
  const end = width - RIGHT;
  const room = (end - LEFT) / sessions.length;
  const x = (i: number): number => LEFT + room * (i + 0.5);
  const key = keyRows(sessions, level, width);
  const top = 26;
  const bottom = height - 42 - LINE * key.length;
  const { place: y, ticks } = scaleOver(sessions.flatMap(endsOf), [bottom, top + 6], 5);
  const named = sessions.every((session) => textWidth(session.name, SMALL_SIZE) <= room - 6);
  const listed = named ? [] : outsideLines(sessions, width);
  const every = named ? 1 : Math.ceil(26 / room);
  return svgFigure(
    {
      id,
      width,
      height: height + LINE * listed.length,
      title: `${capitalised(name)} session by session`,
      description: describe(metric, write),
    },
    headingWords(0, 15, fitted(capitalised(labelled(name, unit)), width, HEADING_SIZE, true)),
    ...sessions.map((session, i) => band(session, x(i) - room / 2, room, y)),
    ...ticks.flatMap(({ value, at, label }) => [
      gridRule([LEFT, at], [end, at], value === 0),
      words(LEFT - 7, at + 4, label, { "text-anchor": "end" }),
    ]),
    rule([LEFT, bottom], [end, bottom], "rule", { "stroke-width": 1 }),
    ...sessions.map((session, i) => sessionMark(session, i, x(i), room, [top, bottom], y, write, unit)),
    ...sessions.flatMap((session, i) =>
      i % every === 0
        ? [words(x(i), bottom + 17, named ? session.name : String(i + 1), { "text-anchor": "middle" })]
        : [],
    ),
    words((LEFT + end) / 2, bottom + 33, "session", { "text-anchor": "middle" }),
    ...key.map((row, i) => row(bottom + 38 + LINE * (i + 1) - 4)),
    ...listed.map((line, i) => words(0, height + LINE * (i + 1) - 6, line)),
  );
}

function placeOf({ against }: SessionValue): Place {
  return against === null ? "gathering" : against.place;
}

function endsOf({ session, against }: SessionValue): number[] {
  const { mean, interval } = session;
  return [
    mean,
    ...(interval === null ? [] : [interval.low, interval.high]),
    ...(against === null
      ? []
      : [
          against.baseline - against.smallestDetectableChange.value,
          against.baseline + against.smallestDetectableChange.value,
        ]),
  ];
}

function writer({ sessions }: SessionMetric): (value: number) => string {
  const size = sessions.reduce((largest, { session }) => Math.max(largest, Math.abs(session.mean)), 0);
  const decimals = decimalsFor(size, sessions[0]?.session.sd ?? null);
  return (value) => formatNumber(value, decimals).replace("-", "−");
}

/** The baseline that stood at a session, and the smallest detectable change around it. */
function band({ against }: SessionValue, x: number, width: number, y: (value: number) => number): string {
  if (against === null) return "";
  const { baseline, smallestDetectableChange } = against;
  const [high, low] = [
    y(baseline + smallestDetectableChange.value),
    y(baseline - smallestDetectableChange.value),
  ];
  const edge = { "stroke-width": 1, "stroke-dasharray": "2 2" };
  return [
    element("rect", {
      x,
      y: Math.min(high, low),
      width,
      height: Math.abs(low - high),
      "fill-opacity": 0.16,
      ...paint("fill", "rule"),
    }),
    ...[high, low].map((at) => rule([x, at], [x + width, at], "rule", edge)),
    rule([x, y(baseline)], [x + width, y(baseline)], "ink", { "stroke-width": 1.2 }),
  ].join("");
}

function sessionMark(
  value: SessionValue,
  i: number,
  x: number,
  room: number,
  [top, bottom]: readonly [number, number],
  y: (value: number) => number,
  write: (value: number) => string,
  unit: string,
): string {
  const { session } = value;
  const { interval, mean } = session;
  const behind = unit === "1" ? "" : ` ${unit}`;
  return mark(
    `${i + 1}, ${sentenceOf(value, write, behind)}`,
    touchArea(x - room / 2, top, room, bottom - top),
    interval === null
      ? ""
      : rule([x, y(interval.low)], [x, y(interval.high)], "first", { "stroke-width": 1.6 }),
    placeMarker(placeOf(value), x, y(mean), Math.min(4, Math.max(room / 2.6, 1.4))),
  );
}

/** Sessions that make the baseline are open, the others full. */
function placeMarker(place: Place, x: number, y: number, radius: number): string {
  const open = place === "gathering";
  return marker(SHAPES[place], x, y, radius, {
    "stroke-width": 1.4,
    ...(open ? { fill: "none", ...paint("stroke", "first") } : paint("fill", "first")),
  });
}

function sentenceOf(
  { name, session, against }: SessionValue,
  write: (value: number) => string,
  behind: string,
): string {
  const { mean, interval } = session;
  const range = interval === null ? "" : ` (${write(interval.low)} to ${write(interval.high)})`;
  const place =
    against === null
      ? ", makes the baseline"
      : `, ${PLACE_WORDS[against.place]} ${write(against.baseline)} ± ${write(against.smallestDetectableChange.value)}`;
  return `${name}: ${write(mean)}${behind}${range}${place}`;
}

function outsideLines(sessions: readonly SessionValue[], width: number): readonly string[] {
  const outside = sessions.flatMap(({ name, against }, i) =>
    against === null || against.place === "within"
      ? []
      : [`${i + 1}: ${against.place}, ${formatDifference(against.difference)}; ${name}`],
  );
  const lines = outside.slice(0, MOST_LISTED).map((line) => fitted(line, width, SMALL_SIZE));
  return outside.length > MOST_LISTED
    ? [...lines, `and ${outside.length - MOST_LISTED} more outside`]
    : lines;
}

/** What the marks, the line and the shade stand for, of those that are drawn. */
function keyRows(
  sessions: readonly SessionValue[],
  level: number,
  width: number,
): readonly ((y: number) => string)[] {
  const places = (["gathering", "within", "above", "below"] as const).filter((place) =>
    sessions.some((session) => placeOf(session) === place),
  );
  const rows: ((y: number) => string)[] = [];
  let line: { readonly place: Place; readonly at: number }[] = [];
  let at = 5;
  const end = (): void => {
    const items = line;
    rows.push((y) =>
      items
        .map(
          (item) =>
            placeMarker(item.place, item.at, y - 4, 4) + words(item.at + 9, y, PLACE_WORDS[item.place]),
        )
        .join(""),
    );
    line = [];
    at = 5;
  };
  for (const place of places) {
    const room = 9 + textWidth(PLACE_WORDS[place], SMALL_SIZE);
    if (at + room > width) end();
    line.push({ place, at });
    at += room + 12;
  }
  end();
  const held = sessions.some(({ against }) => against !== null);
  const text = `Upright lines: ${plainNumber(100 * level)} % interval.${
    held ? " Level line and shade: the runner's own baseline ± smallest detectable change." : ""
  }`;
  return [...rows, ...wrapped(text, width, SMALL_SIZE, 3).map((line) => (y: number) => words(0, y, line))];
}

function describe({ sessions, unit }: SessionMetric, write: (value: number) => string): string {
  const behind = unit === "1" ? "" : ` ${unit}`;
  const outside = sessions.filter(({ against }) => against !== null && against.place !== "within");
  const listed = sessions.length <= 12 ? sessions : outside.slice(0, 12);
  const all = listed.map((session) => `${sentenceOf(session, write, behind)}.`).join(" ");
  return `${counted(sessions.length, "session")}, ${outside.length} outside: beyond the smallest detectable change with an interval clear of zero. ${all}`;
}
