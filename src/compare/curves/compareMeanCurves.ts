import { mean } from "../../statistics/index.js";
import type { StanceComponent, Trial } from "../../trial/index.js";
import { type Complete, fail, requireOneOf, withDefaults } from "../../units/index.js";
import { requireComparable } from "../requireComparable.js";
import type { CurveComparison } from "./curveComparison.js";
import { type CurveTestOptions, LEAST_MEAN_CURVES } from "./options.js";
import { testCurves } from "./testCurves.js";

/** Which mean curves are compared, and how. */
export interface CompareMeanCurvesOptions extends CurveTestOptions {
  readonly component?: StanceComponent | undefined;
  /** Of `both`, each runner's curve is the mean of the two sides. */
  readonly side?: "left" | "right" | "both" | undefined;
  /** Trial k of one list is of the same runner as trial k of the other. */
  readonly paired?: boolean | undefined;
  /** `null`: body weights where every trial has a mass, else newtons. */
  readonly unit?: "N" | "BW" | null | undefined;
}

/** As {@link CURVE_TEST_DEFAULTS}; the vertical force of both sides, each runner under both conditions. */
export const COMPARE_MEAN_CURVES_DEFAULTS: Complete<CompareMeanCurvesOptions> = {
  level: 0.05,
  permutations: 1000,
  seed: 1,
  component: "vertical",
  side: "both",
  paired: true,
  unit: null,
};

const CURVES = { vertical: "up", anteroposterior: "forward", mediolateral: "right" } as const;

/**
 * Compares the mean force over stance of many runners point by point, and gives the stretches of stance in which the
 * conditions differ beyond a threshold for the whole curve.
 *
 * Formula: t of the runners' differences at each point, or of two groups of runners; clusters beyond the larger of
 * the thresholds of random field theory (or Bonferroni) and of all, or many, permutations of whole curves. Of both
 * sides together the mediolateral force is positive towards the outside of the foot.
 * Units: N or body weights; per cent of stance; s of the mean contact time of both.
 * Limits: one trial a runner and condition: the runner is the unit. At least three; fewer than six pairs, or four in
 * each group, have too few permutations for the level of 0.05. Groups of different size want like spreads.
 * Source: Pataky 2010, J. Biomech. 43:1976 and Nichols & Holmes 2002, Hum. Brain Mapp. 15:1, from memory.
 * @param baseline - One trial a runner, of the usual condition or group.
 * @param changed - One trial a runner, of the other; in the same order where paired.
 * @param options - {@link COMPARE_MEAN_CURVES_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than three trials; `unequal-lengths`: pairs that are none;
 *   `not-comparable`: different filters, or curves that do not vary; `missing-channel`, `no-contact`,
 *   `missing-value`: a trial without the component, the side, or a mass for body weights; `wrong-type`: no trials;
 *   `out-of-range`, `unknown-option`: an option outside what it allows.
 * @example
 * compareMeanCurves([baseline, changed, changed], [changed, baseline, baseline]).curves.baseline // 3
 */
export function compareMeanCurves(
  baseline: readonly Trial[],
  changed: readonly Trial[],
  options: CompareMeanCurvesOptions = {},
): CurveComparison {
  const { component, side, paired, unit, ...test } = withDefaults<CompareMeanCurvesOptions>(
    COMPARE_MEAN_CURVES_DEFAULTS,
    options,
  );
  requireOneOf("component", component, ["vertical", "anteroposterior", "mediolateral"]);
  requireOneOf("side", side, ["left", "right", "both"]);
  requireTrials(baseline, changed, paired);
  const trials = [...baseline, ...changed];
  const massed = trials.every(({ settings }) => settings.mass !== null);
  if (unit !== null) requireOneOf("unit", unit, ["N", "BW"]);
  if (unit === "BW" && !massed) {
    fail("missing-value", "body weights need the mass of every runner: state it, or take newtons", {
      argument: "unit",
    });
  }
  const shown = unit ?? (massed ? "BW" : "N");
  const curveOf = (trial: Trial, where: string) => {
    const weight = shown === "BW" ? (trial.settings.mass as number) * trial.settings.gravity : 1;
    return meanCurveOf(trial, component, side, where).map((value) => value / weight);
  };
  return testCurves(
    {
      component,
      side,
      unit: shown,
      of: "runners",
      paired,
      correlated: false,
      baseline: baseline.map((trial, k) => curveOf(trial, `baseline[${k}]`)),
      changed: changed.map((trial, k) => curveOf(trial, `changed[${k}]`)),
      contactTimes: [contactTimeOf(baseline, side), contactTimeOf(changed, side)],
      cautions: [],
    },
    test,
  );
}

function requireTrials(baseline: readonly Trial[], changed: readonly Trial[], paired: boolean): void {
  for (const [argument, trials] of [
    ["baseline", baseline],
    ["changed", changed],
  ] as const) {
    if (!Array.isArray(trials)) {
      fail("wrong-type", `${argument} is no list of trials`, { argument });
    }
    if (trials.length < LEAST_MEAN_CURVES) {
      fail(
        "too-short",
        `${argument} holds ${trials.length} trials; at least ${LEAST_MEAN_CURVES} are needed`,
        {
          argument,
          values: { given: trials.length, least: LEAST_MEAN_CURVES },
        },
      );
    }
  }
  if (paired && baseline.length !== changed.length) {
    fail(
      "unequal-lengths",
      `there are ${baseline.length} trials of the baseline and ${changed.length} changed ones; pairs need as many`,
      { argument: "changed", values: { baseline: baseline.length, changed: changed.length } },
    );
  }
  for (const trial of [...baseline, ...changed]) requireComparable(baseline[0] as Trial, trial);
}

/** The mean curve of one side, or the mean of both sides' curves, N. */
function meanCurveOf(
  trial: Trial,
  component: StanceComponent,
  side: "left" | "right" | "both",
  where: string,
): readonly number[] {
  const curves = trial.curves[CURVES[component]];
  if (curves === undefined) {
    fail("missing-channel", `${where} has no ${component} force`, { argument: "component", where });
  }
  const { left, right, unknown } = curves;
  const mirrored = component === "mediolateral";
  if (side !== "both") {
    const own = curves[side];
    if (own !== undefined) return own.mean;
    fail("no-contact", `${where} has no contact of the ${side} foot`, { argument: "side", where });
  }
  if (left !== undefined && right !== undefined) {
    return left.mean.map((value, q) => ((mirrored ? -value : value) + (right.mean[q] as number)) / 2);
  }
  if (unknown !== undefined && !mirrored) return unknown.mean;
  fail(
    "no-contact",
    `${where} has no curves of both feet${mirrored ? " told apart" : ""}; compare one side, or leave the trial out`,
    { argument: "side", where },
  );
}

function contactTimeOf(trials: readonly Trial[], side: "left" | "right" | "both"): number {
  return mean(
    trials.map(({ contacts }) =>
      mean(
        contacts
          .filter((contact) => contact.shared !== true && (side === "both" || contact.side === side))
          .map(({ initialContact, toeOff }) => toeOff - initialContact),
      ),
    ),
  );
}
