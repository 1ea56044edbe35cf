import type { Spread, Trial } from "../../trial/index.js";
import { type Complete, requireNumber, withDefaults } from "../../units/index.js";
import { drawLanding, type Landing } from "./drawLanding.js";

/** How landing is drawn. */
export interface LandingFigureOptions {
  /** A second trial, drawn over the first. */
  readonly changed?: Trial | null | undefined;
  /** What the two trials are called. */
  readonly labels?: { readonly baseline: string; readonly changed: string } | undefined;
  /** Prefix of the ids in the drawing. */
  readonly id?: string | undefined;
  /** Width of the drawing in its own units, from 300; the height follows from the scale. */
  readonly width?: number | undefined;
}

/** One trial, the width of a paper's column, 85 mm at 96 dots per inch. */
export const LANDING_FIGURE_DEFAULTS: Complete<LandingFigureOptions> = {
  changed: null,
  labels: { baseline: "baseline", changed: "changed" },
  id: "landing",
  width: 321,
};

/** Height of the centre of mass above the ground as a share of body height, in standing. */
const CENTRE_OF_MASS_PER_HEIGHT = 0.55;
/** Where it is drawn when the body height is not known, m. */
const HEIGHT_UNKNOWN = 1;
/** No foot lies farther from its body, m; a drawing to scale of more would show nothing. */
const FARTHEST = 100;

/**
 * Draws where the foot landed ahead of the centre of mass and where it left the ground behind it, seen from the side and
 * to scale, as an SVG string. Returns `null` where a trial has neither touchdown nor take-off distance.
 *
 * Formula: means ± one standard deviation between strides of touchdown and take-off distance, forward to the right, both
 * moments around one centre of mass. Travel of the centre of pressure: speed × contact time less both distances.
 * Units: m, one scale for both directions.
 * Limits: the height of the centre of mass is not measured: it is drawn at 0.55 of the body height, or at 1 m where that is
 * not stated, and carries no number. Distances may be off as a whole by what the trial's settings say; the figure repeats
 * it. Distances of 100 m and more are taken as not known. The travel of the centre of pressure takes the mean speed for that of the contact.
 * Source: closing law of the distances; 0.55 of body height is common practice.
 * @param trial - As `analyseTrial` gives it.
 * @param options - {@link LANDING_FIGURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: a width below 300.
 * @example
 * landingFigure(baseline, { changed })?.startsWith("<svg") // true
 */
export function landingFigure(trial: Trial, options: LandingFigureOptions = {}): string | null {
  const { changed, labels, id, width } = withDefaults<LandingFigureOptions>(LANDING_FIGURE_DEFAULTS, options);
  requireNumber("width", width, { from: 300 });
  const asked: readonly (readonly [Trial, string])[] =
    changed === null
      ? [[trial, ""]]
      : [
          [trial, labels.baseline],
          [changed, labels.changed],
        ];
  const landings: Landing[] = [];
  for (const [one, label] of asked) {
    const landing = landingOf(one, label);
    if (landing === null) return null;
    landings.push(landing);
  }
  const bodyHeight = trial.subject.height ?? changed?.subject.height;
  const known = bodyHeight !== undefined && bodyHeight > 0;
  return drawLanding(landings, {
    id,
    width,
    centreHeight: known ? CENTRE_OF_MASS_PER_HEIGHT * bodyHeight : HEIGHT_UNKNOWN,
    centreNote: known
      ? `Height of the centre of mass: not measured, drawn at ${CENTRE_OF_MASS_PER_HEIGHT} of body height.`
      : `Height of the centre of mass: not known, drawn at ${HEIGHT_UNKNOWN} m.`,
  });
}

function landingOf({ summary, settings }: Trial, label: string): Landing | null {
  const spreadOf = (id: string): Spread | null => {
    const found = Object.hasOwn(summary.metrics, id) ? summary.metrics[id] : undefined;
    return found !== undefined && Math.abs(found.mean) + (found.sd ?? 0) < FARTHEST ? found : null;
  };
  const touchdown = spreadOf("touchdownDistance");
  const takeOff = spreadOf("takeOffDistance");
  if (touchdown === null && takeOff === null) return null;
  const contact = spreadOf("contactTime");
  const { speed, landing } = settings;
  const travel =
    touchdown === null || takeOff === null || contact === null || speed === null
      ? null
      : speed * contact.mean - touchdown.mean - takeOff.mean;
  return { label, touchdown, takeOff, travel, margin: landing?.margin ?? null };
}
