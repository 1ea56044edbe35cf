import type { Gait, Step } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";

/** The component of the force a metric speaks of, or `none` where it belongs to no single one. */
export type MetricComponent = "vertical" | "anteroposterior" | "mediolateral" | "none";

/** The family a metric belongs to: one folder each. */
export type MetricFamily =
  | "timing"
  | "vertical"
  | "anteroposterior"
  | "mediolateral"
  | "resultant"
  | "placement"
  | "work"
  | "walking";

/**
 * What a metric cannot do without; the vertical force is always there. `forward`, `right`: components of force.
 * `copForward`, `copRight`: the centre of pressure along them. `freeMoment`: the moment about the vertical. `side`: a
 * contact of known side. `foot`: the place of heel and toes. `mass`: any mass, by force or stated. `height`: body height.
 * `oneFoot`: contacts of feet that do not share a plate in double support. `speed`, `surface`: as stated for the trial. `next`, `nextSameSide`: neighbours. `coefficient`: a number of the runner
 * that no recording holds; an entry of the caller's own states it and leaves the need out. A contact that lacks side,
 * neighbour or coefficient has `null`, and what else is missing is an error.
 */
export type MetricNeed =
  | "forward"
  | "right"
  | "copForward"
  | "copRight"
  | "freeMoment"
  | "side"
  | "foot"
  | "mass"
  | "height"
  | "speed"
  | "surface"
  | "oneFoot"
  | "next"
  | "nextSameSide"
  | "coefficient";

/** By what a value is divided to compare people: body weight, mass, or mass and the distance of the step. */
export type Normalisation = "body weight" | "mass" | "mass and distance";

/** One metric: all that a table, a page or a comparison needs to know of it. */
export interface Metric {
  /** Field name in a step, in JSON and CSV; the metric's function has the same name. */
  readonly id: string;
  /** For headings: the field's words. */
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly family: MetricFamily;
  readonly component: MetricComponent;
  /** Unit of the normalised value and what it is divided by. */
  readonly normalised?: { readonly unit: string; readonly by: Normalisation };
  /** Which direction is more load; `none` where neither is. */
  readonly moreLoad: "higher" | "lower" | "none";
  /** The metric that speaks for its component, or for work, in a comparison. */
  readonly primary?: true;
  /** Whether a value per kilometre (value × steps per kilometre) has a meaning: every load metric has one. */
  readonly perKilometre?: true;
  /** One sentence. */
  readonly definition: string;
  readonly source: string;
  readonly needs: readonly MetricNeed[];
  /** What it describes; every gait where left out. */
  readonly gaits?: readonly Gait[];
  /** When a contact has no value although all needs are met. */
  readonly nullWhen?: { readonly code: string; readonly message: string };
  /** The metric's function with its default options. */
  readonly compute: (ground: GroundReaction, step: Step) => number | null;
}
