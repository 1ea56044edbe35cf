import { type Curves, mean } from "../../statistics/index.js";
import { type StanceCurves, stridePairs } from "../../trial/index.js";
import { type Caution, fail, withDefaults } from "../../units/index.js";
import { apart } from "../wording.js";
import type { CurveComparison } from "./curveComparison.js";
import { CURVE_TEST_DEFAULTS, type CurveTestOptions, LEAST_SUCCESSIVE_CURVES } from "./options.js";
import { testCurves } from "./testCurves.js";

/**
 * Compares the force over stance of two trials of one runner point by point, and gives the stretches of stance in
 * which they differ beyond a threshold for the whole curve.
 *
 * Formula: two-sample t in Welch's form at each point; of both sides together each curve is the mean of a stride's
 * two contacts. Curves that follow one another count as n (1 − r)/(1 + r) independent ones, r their correlation: at
 * each point the larger of the point's own and that of the whole curve, freed of its bias in short series; as fewer
 * where the sets wander slowly, by their power at half waves j = 1 to n^0.65 over a set, carried on to the mean as
 * j^(−2d) (see `fieldTTest`). Degrees of freedom by the first decile over the points. Clusters lie beyond the
 * larger of two thresholds: random field theory (or Bonferroni), and exchange of blocks of curves as long as one
 * independent curve is worth.
 * Units: N or body weights; per cent of stance; s of the mean contact time of both.
 * Limits: of 1000 pairs of smooth random curves without any true difference, at a level of 5 %, a cluster was found
 * in 0.6, 0.4 and 1.4 % at 20, 30 and 60 independent curves; in at most 0.7 % at correlations of 0.3 and 0.6; in none
 * of a second-order autoregression of 0.3, 0.4 or of 0, 0.6; of fractional noise, which forgets as a power of time,
 * in 2.6, 4.1 and 3.2 % at d 0.2 and 2.3, 4.1 and 2.4 % at d 0.3; of whole synthetic recordings in at most 2.5 % of
 * 200. It is not held where only the first third of stance has such memory (d 0.3: 14 and 15 % of 200 at 30 and 60
 * curves), nor quite under a slow wave of a quarter of the standard deviation (10 and 5 %): one trial does not show
 * all of its own slow change. The caution `curves-long-memory` says where there is some; it comes with 7 and 2 % of
 * 30 and 60 independent curves, with 77 and 95 % at d 0.3.
 * So careful a rule needs curves: a bump of 1.5 standard deviations, a seventh of stance wide, is found in 82, 32
 * and 0.4 % of pairs at 30 curves and correlations of 0, 0.3 and 0.6, in 100, 88 and 9 % at 60. A drift of one
 * standard deviation over each trial that leaves its mean raised none of 200; one that moves the mean is a
 * difference. It tells where in normalised stance curves differ, not why: where contact times differ, so do the
 * moments that a point compares.
 * A level of its own for each curve: six curves of one page raise more false alarms together than one.
 * Source: Pataky 2010, J. Biomech. 43:1976, from memory; the treatment of correlated curves is a rule of this
 * library, held to simulation.
 * @param baseline - Curves of the usual technique.
 * @param changed - Curves of the changed one: the same component, side, unit, number of points and filter.
 * @param options - {@link CURVE_TEST_DEFAULTS} where left out.
 * @throws GaitKineticsError `not-comparable`: another component, side, unit, number of points or filter, or curves
 *   that do not vary; `unequal-lengths`: curves without their contacts; `too-short`: fewer than five curves in a
 *   set; `not-finite`, `wrong-type`: no such curves; `out-of-range`, `unknown-option`: an option outside what it allows.
 * @example
 * compareCurves(stanceCurves(ground, contacts), stanceCurves(ground, contacts)).clusters.length // 0
 */
export function compareCurves(
  baseline: StanceCurves,
  changed: StanceCurves,
  options: CurveTestOptions = {},
): CurveComparison {
  const settings = withDefaults<CurveTestOptions>(CURVE_TEST_DEFAULTS, options);
  requireAlike(baseline, changed);
  const sets = { baseline: curvesOf(baseline, "baseline"), changed: curvesOf(changed, "changed") };
  return testCurves(
    {
      component: baseline.component,
      side: baseline.side,
      unit: baseline.unit,
      of: "contacts",
      paired: false,
      correlated: true,
      ...sets,
      contactTimes: [contactTimeOf(baseline), contactTimeOf(changed)],
      cautions: thresholdCautions(baseline, changed),
    },
    settings,
  );
}

function requireAlike(baseline: StanceCurves, changed: StanceCurves): void {
  for (const [argument, set] of [
    ["baseline", baseline],
    ["changed", changed],
  ] as const) {
    if (!Array.isArray(set?.curves) || !Array.isArray(set.contacts)) {
      fail("wrong-type", `${argument} holds no curves; what stanceCurves returns is needed`, { argument });
    }
    requireParts(set, argument);
  }
  for (const name of ["component", "side", "unit"] as const) {
    if (baseline[name] === changed[name]) continue;
    fail(
      "not-comparable",
      `the ${name} of the baseline's curves is ${baseline[name]} and of the changed ones ${changed[name]}; it must be the same`,
      { argument: "changed", values: { baseline: baseline[name], changed: changed[name] } },
    );
  }
  const points = [baseline.curves[0]?.length ?? 0, changed.curves[0]?.length ?? 0] as const;
  if (points[0] !== points[1]) {
    fail("not-comparable", `the curves have ${points[0]} and ${points[1]} points; take as many of both`, {
      argument: "changed",
      values: { baseline: points[0], changed: points[1] },
    });
  }
  const [one, other] = [baseline.filter, changed.filter];
  if (one?.cutoff === other?.cutoff && one?.order === other?.order) return;
  const words = (filter: StanceCurves["filter"]) =>
    filter === null ? "no filter" : `a ${filter.cutoff} Hz filter of order ${filter.order}`;
  fail(
    "not-comparable",
    `the baseline's curves lie behind ${words(one)} and the changed ones behind ${words(other)}: take both with one`,
    { argument: "changed", values: { baseline: one, changed: other } },
  );
}

/** Refuses what only looks like curves, such as one read from a file. */
function requireParts({ curves, contacts, filter }: StanceCurves, argument: string): void {
  const refuse = (what: string): never =>
    fail("wrong-type", `${argument}.${what}; what stanceCurves returns is needed`, { argument });
  if (curves.length !== contacts.length) {
    fail(
      "unequal-lengths",
      `${argument} holds ${curves.length} curves and ${contacts.length} contacts; each curve needs its contact`,
      { argument, values: { curves: curves.length, contacts: contacts.length } },
    );
  }
  curves.forEach((curve, k) => {
    if (!Array.isArray(curve) && !(curve instanceof Float64Array))
      refuse(`curves[${k}] is no list of numbers`);
  });
  contacts.forEach((contact, k) => {
    if (!Number.isFinite(contact?.initialContact) || !Number.isFinite(contact.toeOff))
      refuse(`contacts[${k}] has no times of initial contact and toe-off`);
  });
  if (filter === null) return;
  if (!Number.isFinite(filter?.cutoff) || !Number.isFinite(filter.order))
    refuse("filter is neither null nor a cutoff and an order");
}

/** Curves of one foot as they are; of both feet the mean of each stride's two contacts. */
function curvesOf({ side, curves, contacts }: StanceCurves, argument: string): Curves {
  const oneFoot = contacts.every(
    (contact) => contact.side !== "unknown" && contact.side === contacts[0]?.side,
  );
  const used = oneFoot ? curves : strideCurves(curves, contacts);
  if (used.length >= LEAST_SUCCESSIVE_CURVES) return used;
  fail(
    "too-short",
    `${argument} has ${used.length} ${oneFoot ? "contacts" : "strides"} with a curve; at least ${LEAST_SUCCESSIVE_CURVES} are needed`,
    { argument, values: { given: used.length, least: LEAST_SUCCESSIVE_CURVES, side } },
  );
}

function strideCurves(curves: StanceCurves["curves"], contacts: StanceCurves["contacts"]): Curves {
  const pairs = stridePairs(contacts.map((contact) => ({ ...contact, values: {} })));
  return pairs.map(([first = 0, second = 0]) => {
    const other = curves[second] as Float64Array;
    return (curves[first] as Float64Array).map((value, q) => (value + (other[q] as number)) / 2);
  });
}

function contactTimeOf({ contacts }: StanceCurves): number {
  return mean(contacts.map(({ initialContact, toeOff }) => toeOff - initialContact));
}

/** Stances cut at different levels of force begin and end at different moments. */
function thresholdCautions(baseline: StanceCurves, changed: StanceCurves): Caution[] {
  const [one, other] = [baseline.contacts[0]?.threshold ?? 0, changed.contacts[0]?.threshold ?? 0];
  if (one === other) return [];
  const shown = apart(one, other);
  return [
    {
      code: "thresholds-differ",
      message: `contacts were read at ${shown[0]} N in the baseline and ${shown[1]} N in the changed trial: their stances begin and end at different moments; analyse both with the larger`,
      values: { baseline: one, changed: other },
    },
  ];
}
