import type { Spread, TrialSettings } from "../../trial/index.js";
import { element } from "../markup/element.js";
import { scaleLinear } from "../plot.js";
import { capitalised } from "../wording/capitalised.js";
import { paint } from "./paint.js";
import { fitted } from "./parts/fitted.js";
import { mark } from "./parts/mark.js";
import { marker } from "./parts/marker.js";
import { roundedPath } from "./parts/roundedPath.js";
import { rule } from "./parts/rule.js";
import { touchArea } from "./parts/touchArea.js";
import { FIRST_STYLE, SECOND_STYLE, type TrialStyle } from "./parts/trialStyle.js";
import { headingWords, SMALL_SIZE, words } from "./parts/words.js";
import { wrapped } from "./parts/wrapped.js";
import { svgFigure } from "./svgFigure.js";

/** Where the foot of one trial lands and leaves the ground; m, strides. */
export interface Landing {
  /** Empty where there is one trial alone. */
  readonly label: string;
  /** Ahead of the centre of mass. */
  readonly touchdown: Spread | null;
  /** Behind it. */
  readonly takeOff: Spread | null;
  /** Of the centre of pressure under the foot, by difference. */
  readonly travel: number | null;
  readonly margin: NonNullable<TrialSettings["landing"]>["margin"] | null;
}

/** Size of the drawing, and where the centre of mass is. */
export interface LandingPanel {
  readonly id: string;
  readonly width: number;
  /** Above the ground, m. */
  readonly centreHeight: number;
  readonly centreNote: string;
}

const LEFT = 40;
const RIGHT = 16;
const TOP = 62;
const LANE = 20;
const LINE = 15;
/** Largest height of the centre of mass in the drawing, as a share of its width. */
const TALLEST = 0.68;

/** Of the sign of the centre of mass. */
const RADIUS = 7;

/** How metres become places: one scale in both directions. */
interface Ruler {
  readonly x: (ahead: number) => number;
  readonly y: (above: number) => number;
  readonly ticks: readonly number[];
  readonly heights: readonly number[];
}

/** Draws the centre of mass, its plumb line, the ground, the way to both feet, spreads, rulers and numbers. */
export function drawLanding(landings: readonly Landing[], panel: LandingPanel): string {
  const { id, width, centreHeight, centreNote } = panel;
  const ruler = rulerOf(landings, panel);
  const ground = ruler.y(0);
  const axis = ground + 12 + LANE * landings.length;
  const table = axis + 52;
  const rows = table + 10;
  const notes = notesOf(landings, centreNote).flatMap((note) => wrapped(note, width, SMALL_SIZE, 4));
  const noteTop = rows + LINE * landings.length + 8;
  return svgFigure(
    {
      id,
      width,
      height: noteTop + LINE * notes.length + 2,
      title: "Where the foot landed and left the ground, against the centre of mass",
      description: `${landings.map(describe).join(" ")} ${notesOf(landings, centreNote).join(" ")}`,
    },
    headingWords(0, 15, "Foot against centre of mass, to scale"),
    words(ruler.x(0), 34, "centre of mass", { "text-anchor": "middle" }),
    words(width - RIGHT, 34, "running →", { "text-anchor": "end", "font-style": "italic" }),
    ...upright(ruler, ground),
    rule([LEFT, ground], [width - RIGHT, ground], "ink", { "stroke-width": 1.6 }),
    rule([ruler.x(0), ruler.y(centreHeight) + RADIUS], [ruler.x(0), axis], "ink", {
      "stroke-width": 1,
      "stroke-dasharray": "2 3",
    }),
    ...landings.map((landing, i) => legs(landing, styleOf(i), ruler, centreHeight)),
    centreOfMass(ruler.x(0), ruler.y(centreHeight)),
    ...landings.map((landing, i) => lane(landing, styleOf(i), ruler, ground + 14 + LANE * i)),
    ...level(ruler, axis, width),
    ...numbers(landings, table, rows, width),
    ...notes.map((line, i) => words(0, noteTop + LINE * (i + 1) - 4, line)),
  );
}

function styleOf(i: number): TrialStyle {
  return i === 0 ? FIRST_STYLE : SECOND_STYLE;
}

function rulerOf(landings: readonly Landing[], { width, centreHeight }: LandingPanel): Ruler {
  const ends = landings.flatMap(({ touchdown, takeOff }) => [
    ...(touchdown === null ? [] : endsOf(touchdown)),
    ...(takeOff === null ? [] : endsOf(takeOff).map((end) => -end)),
  ]);
  const low = Math.min(-0.1, ...ends);
  const high = Math.max(0.1, ...ends);
  const room = width - LEFT - RIGHT - 12;
  const perMetre = Math.min(room / (high - low), (TALLEST * width) / centreHeight);
  const zero = LEFT + 6 + room / 2 - (perMetre * (low + high)) / 2;
  const ground = TOP + perMetre * centreHeight;
  const reach = [(LEFT - zero) / perMetre, (width - RIGHT - zero) / perMetre] as const;
  const ticks = scaleLinear(reach, [0, 1]).ticks(6);
  // A label each 40 units of the drawing, two at least.
  const heights = scaleLinear([0, centreHeight], [0, 1]).ticks(Math.max((perMetre * centreHeight) / 40, 1));
  return { x: (ahead) => zero + perMetre * ahead, y: (above) => ground - perMetre * above, ticks, heights };
}

function endsOf({ mean, sd }: Spread): readonly number[] {
  return [mean - (sd ?? 0), mean + (sd ?? 0)];
}

/** The way from the centre of mass to the foot at both moments. */
function legs(
  { touchdown, takeOff }: Landing,
  { role, dash, shape }: TrialStyle,
  { x, y }: Ruler,
  centreHeight: number,
): string {
  const places = [
    ...(touchdown === null ? [] : [touchdown.mean]),
    ...(takeOff === null ? [] : [-takeOff.mean]),
  ];
  const from = [x(0), y(centreHeight)] as const;
  return places
    .map((ahead) => {
      const to = [x(ahead), y(0)] as const;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const part = length > RADIUS ? RADIUS / length : 0;
      // The line begins at the edge of the sign.
      const edge = [from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])] as const;
      return (
        rule(edge, to, role, { "stroke-width": 2, "stroke-dasharray": dash }) +
        marker(shape, to[0], to[1], 4.5, paint("fill", role))
      );
    })
    .join("");
}

/** The sign of a centre of mass: a circle with two opposite quarters full. */
function centreOfMass(x: number, y: number): string {
  const [left, right, over, under] = [x - RADIUS, x + RADIUS, y - RADIUS, y + RADIUS];
  const arc = `A${RADIUS},${RADIUS} 0 0 1`;
  return (
    element("circle", {
      cx: x,
      cy: y,
      r: RADIUS,
      "stroke-width": 1.4,
      fill: "none",
      ...paint("stroke", "ink"),
    }) +
    element("path", {
      d: roundedPath(`M${x},${y}V${over}${arc} ${right},${y}ZM${x},${y}V${under}${arc} ${left},${y}Z`),
      ...paint("fill", "ink"),
    })
  );
}

/** Mean and spread of one trial under the ground. */
function lane(landing: Landing, { role, shape }: TrialStyle, { x }: Ruler, y: number): string {
  const whisker = (spread: Spread | null, sign: 1 | -1, what: string, where: string): string => {
    if (spread === null) return "";
    const { mean, sd } = spread;
    const [from, to] = [x(sign * (mean - (sd ?? 0))), x(sign * (mean + (sd ?? 0)))];
    const who = landing.label === "" ? "" : `${landing.label}, `;
    const cap = (at: number): string => rule([at, y - 4], [at, y + 4], role, { "stroke-width": 1.6 });
    return mark(
      `${who}${what}: ${numberOf(spread)} m ${where} the centre of mass`,
      touchArea(Math.min(from, to) - 6, y - 9, Math.abs(to - from) + 12, 18),
      sd === null ? "" : rule([from, y], [to, y], role, { "stroke-width": 1.6 }) + cap(from) + cap(to),
      marker(shape, x(sign * mean), y, 4, paint("fill", role)),
    );
  };
  return (
    whisker(landing.takeOff, -1, "take-off", "behind") +
    whisker(landing.touchdown, 1, "touchdown", "ahead of")
  );
}

/** The ruler along the ground. */
function level({ x, ticks }: Ruler, y: number, width: number): readonly string[] {
  const decimals = tickDecimals(ticks);
  return [
    rule([LEFT, y], [width - RIGHT, y], "rule", { "stroke-width": 1 }),
    ...ticks.flatMap((tick) => [
      rule([x(tick), y], [x(tick), y + 5], "rule", { "stroke-width": 1 }),
      words(x(tick), y + 18, Math.abs(tick).toFixed(decimals), { "text-anchor": "middle" }),
    ]),
    words(LEFT, y + 33, "← take-off", { "font-style": "italic" }),
    words((LEFT + width - RIGHT) / 2, y + 33, "m", { "text-anchor": "middle" }),
    words(width - RIGHT, y + 33, "touchdown →", { "text-anchor": "end", "font-style": "italic" }),
  ];
}

/** The ruler up from the ground, on the same scale. */
function upright({ y, heights }: Ruler, ground: number): readonly string[] {
  const decimals = tickDecimals(heights);
  const top = heights.at(-1) ?? 0;
  return [
    rule([LEFT, y(top)], [LEFT, ground], "rule", { "stroke-width": 1 }),
    ...heights.flatMap((height) => [
      rule([LEFT - 5, y(height)], [LEFT, y(height)], "rule", { "stroke-width": 1 }),
      words(LEFT - 8, y(height) + 4, height.toFixed(decimals), { "text-anchor": "end" }),
    ]),
    words(LEFT - 5, y(top) - 10, "m", { "text-anchor": "end" }),
  ];
}

function tickDecimals(ticks: readonly number[]): number {
  const step = (ticks[1] ?? 1) - (ticks[0] ?? 0);
  return Math.min(Math.max(0, -Math.floor(Math.log10(step) + 1e-9)), 6);
}

/** Means and spreads as a small table: a row each trial. */
function numbers(landings: readonly Landing[], head: number, top: number, width: number): readonly string[] {
  const columns = [width - 104, width] as const;
  const right = { "text-anchor": "end" } as const;
  return [
    words(columns[0], head, "touchdown, m", right),
    words(columns[1], head, "take-off, m", right),
    ...landings.flatMap(({ label, touchdown, takeOff }, i) => {
      const y = top + LINE * (i + 1) - 8;
      const { role, shape, dash } = styleOf(i);
      return [
        rule([0, y - 4], [30, y - 4], role, { "stroke-width": 2, "stroke-dasharray": dash }),
        marker(shape, 15, y - 4, 4, paint("fill", role)),
        words(36, y, fitted(label === "" ? "mean ± SD" : label, width - 240, SMALL_SIZE)),
        words(columns[0], y, touchdown === null ? "not known" : numberOf(touchdown), right),
        words(columns[1], y, takeOff === null ? "not known" : numberOf(takeOff), right),
      ];
    }),
  ];
}

/** To the millimetre, no finer than such distances are. */
function numberOf({ mean, sd }: Spread): string {
  const size = Math.max(Math.abs(mean), sd ?? 0);
  const write = (value: number): string => (size < 1e4 ? value.toFixed(3) : value.toExponential(2));
  return sd === null ? write(mean) : `${write(mean)} ± ${write(sd)}`;
}

function notesOf(landings: readonly Landing[], centreNote: string): readonly string[] {
  const travels = landings.flatMap(({ label, travel }) =>
    travel === null
      ? []
      : [`${travel.toFixed(2)} m${label === "" ? "" : ` (${fitted(label, 90, SMALL_SIZE)})`}`],
  );
  const margins = landings.flatMap(({ margin }) => margin ?? []);
  const largest = (of: "touchdown" | "takeOff"): string =>
    Math.max(...margins.map((margin) => margin[of])).toFixed(2);
  const spreads = landings.some(({ touchdown, takeOff }) => touchdown?.sd != null || takeOff?.sd != null);
  return [
    `Marks under the ground: means${spreads ? "; whiskers: one standard deviation between strides" : ""}.`,
    ...(travels.length === 0
      ? []
      : [`Centre of pressure under the foot travels ${travels.join(", ")}, by difference.`]),
    ...(margins.length === 0
      ? []
      : [
          `Distances may be off as a whole by ${largest("touchdown")} m (touchdown) and ${largest("takeOff")} m (take-off).`,
        ]),
    centreNote,
  ];
}

function describe({ label, touchdown, takeOff }: Landing): string {
  const parts = [
    ...(touchdown === null ? [] : [`the foot lands ${numberOf(touchdown)} m ahead of the centre of mass`]),
    ...(takeOff === null ? [] : [`leaves the ground ${numberOf(takeOff)} m behind it`]),
  ];
  const sentence = `${parts.join(" and ")}, mean ± standard deviation between strides.`;
  return label === "" ? capitalised(sentence) : `${label}: ${sentence}`;
}
