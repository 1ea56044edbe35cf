import { type GroundReaction, lowPassGroundReaction } from "../../force/index.js";
import { type NotComputed, type StanceComponent, stanceCurves, type Trial } from "../../trial/index.js";
import { fail, isGaitKineticsError, withDefaults } from "../../units/index.js";
import { requireComparable } from "../requireComparable.js";
import { compareCurves } from "./compareCurves.js";
import type { CurveComparison } from "./curveComparison.js";
import { CURVE_TEST_DEFAULTS, type CurveTestOptions } from "./options.js";

/** A recording and what was made of it: curves are taken from the force at the trial's contacts. */
export interface RecordedTrial {
  /** What the trial was analysed from. */
  readonly ground: GroundReaction;
  readonly trial: Trial;
}

/** Every curve that two trials of one runner have in common, compared. */
export interface StanceCurveComparisons {
  readonly curves: readonly CurveComparison[];
  /** By component and side, such as `vertical left`: what could not be compared, and why. */
  readonly notCompared: readonly NotComputed[];
}

const COMPONENTS = ["vertical", "anteroposterior", "mediolateral"] as const;
const DIRECTIONS = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;

/**
 * Compares every component of the force over stance of two trials of one runner, each foot by itself.
 *
 * Formula: {@link compareCurves} of each component that both have and each foot, at the level over their number: the
 * level holds for all curves together. Where sides are not known, strides of both feet, of the vertical and the
 * anteroposterior force.
 * Units: body weights where both trials have a mass, else N.
 * Limits: as {@link compareCurves}.
 * Source: as there; division of the level by Bonferroni.
 * @param baseline - The usual technique: its recording, unfiltered or behind the trial's filter, and its trial.
 * @param changed - The changed one, analysed with the same filter.
 * @param options - {@link CURVE_TEST_DEFAULTS} where left out; `level` is of all curves together.
 * @throws GaitKineticsError `not-comparable`: different filters; `conflict`: a recording behind another filter than
 *   its trial; `out-of-range`: contacts that do not lie in the recording; `wrong-type`, `not-finite`,
 *   `unknown-option`: no recording, no trial, or an option that is none.
 * @example
 * compareStanceCurves({ ground, trial }, { ground, trial }).curves.length // 6
 */
export function compareStanceCurves(
  baseline: RecordedTrial,
  changed: RecordedTrial,
  options: CurveTestOptions = {},
): StanceCurveComparisons {
  const settings = withDefaults<CurveTestOptions>(CURVE_TEST_DEFAULTS, options);
  requireComparable(baseline?.trial, changed?.trial);
  const both = [baseline, changed] as const;
  const grounds = both.map(behindFilterOfTrial);
  const massed = both.every(({ trial }) => trial.settings.mass !== null);
  const wanted = COMPONENTS.filter((component) =>
    grounds.every(({ force }) => force[DIRECTIONS[component]] !== undefined),
  ).flatMap((component) => sidesOf(both, component).map((side) => ({ component, side })));
  const curves: CurveComparison[] = [];
  const notCompared: NotComputed[] = [];
  for (const { component, side } of wanted) {
    const taken = (k: 0 | 1) =>
      stanceCurves(grounds[k] as GroundReaction, both[k].trial.contacts, {
        component,
        side,
        unit: massed ? "BW" : "N",
        mass: both[k].trial.settings.mass,
        ...(both[k].trial.settings.filter === null && { filter: null }),
      });
    try {
      const level = settings.level / wanted.length;
      curves.push(compareCurves(taken(0), taken(1), { ...settings, level }));
    } catch (caught) {
      if (
        !isGaitKineticsError(caught) ||
        !["no-contact", "too-short", "not-comparable"].includes(caught.code)
      )
        throw caught;
      notCompared.push({ id: `${component} ${side}`, code: caught.code, message: caught.message });
    }
  }
  return { curves, notCompared };
}

/** Feet that both trials have; both together where one of them has no sides. */
function sidesOf(both: readonly RecordedTrial[], component: StanceComponent): ("left" | "right" | "both")[] {
  const sided = both.every(({ trial }) => trial.contacts.every(({ side }) => side !== "unknown"));
  if (!sided) return component === "mediolateral" ? [] : ["both"];
  return (["left", "right"] as const).filter((side) =>
    both.every(({ trial }) => trial.contacts.some((contact) => contact.side === side)),
  );
}

function behindFilterOfTrial({ ground, trial }: RecordedTrial): GroundReaction {
  if (!(ground?.force?.up instanceof Float64Array)) {
    fail("wrong-type", "ground is no ground reaction: its force.up must be a Float64Array", {
      argument: "ground",
    });
  }
  const [own, wanted] = [ground.settings.filter, trial.settings.filter];
  if (own?.cutoff === wanted?.cutoff && own?.order === wanted?.order) return ground;
  if (own === null && wanted !== null) return lowPassGroundReaction(ground, wanted);
  fail("conflict", "the recording lies behind another filter than its trial was analysed with", {
    argument: "ground",
    values: { ground: own, trial: wanted },
  });
}
