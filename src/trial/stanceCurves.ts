import type { Contact } from "../events/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Direction } from "../recording/index.js";
import {
  type Complete,
  fail,
  type Kilograms,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../units/index.js";
import { filteredCopy, TRIAL_FILTER, type TrialFilter } from "./filteredCopy.js";
import { CURVE_POINTS, stanceCurve, wholeContacts } from "./stanceCurve.js";

/** A component of the force that has a curve over stance. */
export type StanceComponent = "vertical" | "anteroposterior" | "mediolateral";

/** Which curves {@link stanceCurves} takes, and how. */
export interface StanceCurvesOptions {
  readonly component?: StanceComponent | undefined;
  readonly side?: "left" | "right" | "both" | undefined;
  /** `null`: body weights where a mass is known, else newtons. */
  readonly unit?: "N" | "BW" | null | undefined;
  /** For body weights; `null`: the one that the ground reaction states. */
  readonly mass?: Kilograms | null | undefined;
  /** `null` for no filter. A ground reaction that is filtered already is taken as it is where this is left out. */
  readonly filter?: TrialFilter | null | undefined;
  readonly points?: number | undefined;
}

/** The vertical force of all contacts behind {@link TRIAL_FILTER}, at 0 to 100 % of stance in whole per cent. */
export const STANCE_CURVES_DEFAULTS: Complete<StanceCurvesOptions> = {
  component: "vertical",
  side: "both",
  unit: null,
  mass: null,
  filter: TRIAL_FILTER,
  points: CURVE_POINTS,
};

/** One curve a contact of one component of the force over stance. */
export interface StanceCurves {
  readonly component: StanceComponent;
  readonly side: "left" | "right" | "both";
  readonly unit: "N" | "BW";
  /** Force at evenly spaced points from initial contact to toe-off, one row a contact. */
  readonly curves: readonly Float64Array[];
  /** The contact of each row, in order of time. */
  readonly contacts: readonly Contact[];
  readonly filter: { readonly cutoff: number; readonly order: number } | null;
}

const DIRECTIONS: Readonly<Record<StanceComponent, Direction>> = {
  vertical: "up",
  anteroposterior: "forward",
  mediolateral: "right",
};

/**
 * Gives one component of the force under the foot over stance, one curve a contact.
 *
 * Formula: force at initial contact + k (toe-off − initial contact)/(points − 1), on the straight line between
 * samples; ÷ (mass × gravity) for body weights. Positive is up, forward, and to the right; of both sides together the
 * mediolateral force is positive towards the outside of the foot.
 * Units: N or body weights.
 * Limits: contacts that share their plate with the other foot are left out. The mean of one side's curves in newtons
 * is that of `curves` in a trial of the same contacts and filter.
 * Source: common practice, 101 points for 0 to 100 %.
 * @param ground - The recording, unfiltered or filtered.
 * @param contacts - Contacts found on it, in order of time, such as those of a trial.
 * @param options - {@link STANCE_CURVES_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: the component was not recorded; `missing-value`: body weights without
 *   a mass, or the mediolateral force of both sides where sides are not known; `no-contact`: none of the side;
 *   `wrong-type`, `not-finite`, `out-of-range`: no ground reaction, no contacts, or for body weights no gravity;
 *   `out-of-range`, `not-finite`, `wrong-type`, `unknown-option`, `conflict`: an option outside what it allows.
 * @example
 * stanceCurves(ground, contacts, { side: "left" }).curves[0].length // 101
 */
export function stanceCurves(
  ground: GroundReaction,
  contacts: readonly Contact[],
  options: StanceCurvesOptions = {},
): StanceCurves {
  const settings = withDefaults<StanceCurvesOptions>(STANCE_CURVES_DEFAULTS, options);
  const component = requireOneOf("component", settings.component, [
    "vertical",
    "anteroposterior",
    "mediolateral",
  ]);
  const side = requireOneOf("side", settings.side, ["left", "right", "both"]);
  const points = requireNumber("points", settings.points, { from: 2, to: 10001, whole: true });
  requireGround(ground);
  requireContacts(contacts);
  const direction = DIRECTIONS[component];
  if (ground.force[direction] === undefined) {
    fail("missing-channel", `the recording has no ${component} force`, {
      argument: "component",
      values: { component },
    });
  }
  const { unit, weight } = scaleOf(ground, settings);
  const own = wholeContacts(contacts).filter((contact) => side === "both" || contact.side === side);
  if (own.length === 0) {
    const whose = side === "both" ? "any foot" : `the ${side} foot`;
    fail("no-contact", `there is no contact of ${whose} with a curve of its own`, { argument: "contacts" });
  }
  const mirrored = component === "mediolateral" && side === "both";
  if (mirrored && own.some((contact) => contact.side === "unknown")) {
    fail(
      "missing-value",
      "sides are not known: the mediolateral force of both feet has no common direction; state the first foot",
      { argument: "side" },
    );
  }
  const filtered = filteredCopy(ground, settings.filter, options.filter !== undefined);
  const curves = own.map((contact) => {
    const factor = (mirrored && contact.side === "left" ? -1 : 1) / weight;
    const curve = stanceCurve(filtered, direction, contact, points);
    return factor === 1 ? curve : curve.map((value) => factor * value);
  });
  return { component, side, unit, curves, contacts: own, filter: filtered.settings.filter };
}

function requireGround(ground: GroundReaction): void {
  const named = ground?.settings !== undefined && ground.subject !== undefined;
  if (
    named &&
    ground.settings !== null &&
    ground.subject !== null &&
    ground.force?.up instanceof Float64Array
  )
    return;
  fail(
    "wrong-type",
    "ground is no ground reaction with force.up, subject and settings; a recording becomes one by toGroundReaction",
    { argument: "ground" },
  );
}

function requireContacts(contacts: readonly Contact[]): void {
  if (!Array.isArray(contacts)) {
    fail("wrong-type", "contacts is no list of contacts; detectEvents finds them", { argument: "contacts" });
  }
  const wrong = contacts.findIndex((contact) => typeof contact !== "object" || contact === null);
  if (wrong < 0) return;
  fail("wrong-type", `contacts[${wrong}] is no contact; detectEvents finds them`, {
    argument: "contacts",
    where: `contact ${wrong}`,
  });
}

/** The unit that was asked for or can be had, and what newtons are divided by. */
function scaleOf(
  ground: GroundReaction,
  options: Complete<StanceCurvesOptions>,
): { unit: "N" | "BW"; weight: number } {
  const mass = options.mass ?? ground.subject.mass ?? null;
  if (options.unit !== null) requireOneOf("unit", options.unit, ["N", "BW"]);
  const unit = options.unit ?? (mass === null ? "N" : "BW");
  if (unit === "N") return { unit, weight: 1 };
  if (mass === null) {
    fail("missing-value", "body weights need the runner's mass: state it, or take newtons", {
      argument: "mass",
    });
  }
  requireNumber("mass", mass, { above: 0, below: 500, unit: "kg" });
  const gravity = requireNumber("ground.gravity", ground.gravity, { above: 0, to: 30, unit: "m/s²" });
  return { unit, weight: mass * gravity };
}
