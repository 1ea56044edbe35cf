import type { SessionSeries } from "../../compare/index.js";
import { CATALOGUE, type Metric } from "../../metrics/index.js";
import { type Complete, fail, requireNumber, withDefaults } from "../../units/index.js";
import { metricName } from "../wording/metricName.js";
import { drawSessions } from "./drawSessions.js";
import { idPart } from "./parts/idPart.js";

/** How the sessions of one runner are drawn. */
export interface SessionsFigureOptions {
  /** Id of the metric; `null` for the first one in the series. */
  readonly metric?: string | null | undefined;
  /** Entries that name the metric. */
  readonly metrics?: readonly Metric[] | undefined;
  /** Prefix of the ids in the drawing; `null` for one made of the metric. */
  readonly id?: string | null | undefined;
  /** Size of the drawing in its own units, from 300 and 200; sessions that are listed under it add to the height. */
  readonly width?: number | undefined;
  readonly height?: number | undefined;
}

/** The first metric; the width of a paper's column, 85 mm at 96 dots per inch. */
export const SESSIONS_FIGURE_DEFAULTS: Complete<SessionsFigureOptions> = {
  metric: null,
  metrics: CATALOGUE,
  id: null,
  width: 321,
  height: 240,
};

/**
 * Draws a metric session by session with its interval, against the runner's own baseline and the smallest detectable
 * change around it, as an SVG string. The shape of a mark says where the session lies.
 *
 * Formula: session means and intervals, baseline ± smallest detectable change, as the series holds them.
 * Units: the metric's.
 * Limits: sessions stand in their order, whatever time lay between them; those that gather the baseline have none to be
 * held against. Names too long for the axis are replaced by numbers, and sessions that lie outside are listed by name.
 * Source: layout of this library.
 * @param series - Sessions of one runner.
 * @param options - {@link SESSIONS_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a metric that is not in the series, a width below 300, a height below 200;
 * `missing-value`: a series or a metric without a session.
 * @example
 * const session = { n: 20, mean: 0.25, sd: 0.01, interval: { low: 0.245, high: 0.255, level: 0.95 } };
 * const metric = { id: "contactTime", unit: "s", sessions: [{ name: "first", session, against: null }] };
 * sessionsFigure({ metrics: [metric], settings: { level: 0.95 } }).startsWith("<svg") // true
 */
export function sessionsFigure(series: SessionSeries, options: SessionsFigureOptions = {}): string {
  const { metric, metrics, id, width, height } = withDefaults<SessionsFigureOptions>(
    SESSIONS_FIGURE_DEFAULTS,
    options,
  );
  requireNumber("width", width, { from: 300 });
  requireNumber("height", height, { from: 200 });
  const found = metric === null ? series.metrics[0] : series.metrics.find((one) => one.id === metric);
  if (found === undefined && metric !== null) {
    fail("out-of-range", `"${metric}" is not in the series`, {
      argument: "metric",
      values: { given: metric, allowed: series.metrics.map((one) => one.id) },
    });
  }
  if (found === undefined || found.sessions.length === 0) {
    fail("missing-value", "there is no session to draw", { argument: "series" });
  }
  return drawSessions(found, {
    id: id ?? idPart(`sessions-${found.id}`),
    name: metricName(found.id, metrics),
    width,
    height,
    level: series.settings.level,
  });
}
