import type { SourcedChange } from "./options.js";

/** What running faster does to a metric, of a published experiment. */
export interface PublishedSpeedEffect extends SourcedChange {
  /** Id of the metric. */
  readonly metric: string;
  /** Change per m/s, in `unit`; a fall has the sign −. */
  readonly value: number;
  /** Speeds that it was measured over, m/s; `null` where what was read does not say. */
  readonly from: number | null;
  readonly to: number | null;
  /** What of the source was read. */
  readonly read: "abstract" | "figure legend" | "from memory";
}

/**
 * Published effects of running speed on metrics of the force, for what a difference in speed alone would do. Of several
 * of one metric, the first whose speeds hold both trials is used; the others show how far sources are apart.
 *
 * Formula: (value at the higher speed − value at the lower) ÷ (difference of the speeds), a straight line between.
 * Units: those in each entry, per m/s.
 * Limits: means of groups; how much runners differ in this is not in what was read. None was found of the mediolateral
 * force or of external work per step, and loading rates are left out, since their definitions differ more than speeds do.
 * Source: in each entry.
 */
export const PUBLISHED_SPEED_EFFECTS: readonly PublishedSpeedEffect[] = [
  {
    metric: "peakVerticalForce",
    value: 0.1657,
    unit: "BW",
    from: null,
    to: null,
    read: "figure legend",
    source:
      "π/2, as of a half sine, times the slope of the mean force in stance, 0.1055 body weights per m/s: Weyand & Davis 2005, J. Exp. Biol. 208:2625 (legend of a figure; athletes)",
  },
  {
    metric: "peakVerticalForce",
    value: 0.15,
    unit: "BW",
    from: 3,
    to: 5,
    read: "from memory",
    source: "2.5 to 2.8 body weights from 3 to 5 m/s: Munro et al. 1987, J. Biomech. 20:147 (from memory)",
  },
  {
    metric: "peakVerticalForce",
    value: 0.2889,
    unit: "BW",
    from: 1.5,
    to: 6,
    read: "abstract",
    source:
      "1.2 to 2.5 body weights from 1.5 to 6 m/s, walking and running together: Keller et al. 1996, Clin. Biomech. 11:253 (abstract)",
  },
  {
    metric: "meanVerticalForce",
    value: 0.1055,
    unit: "BW",
    from: null,
    to: null,
    read: "figure legend",
    source:
      "0.105 (men) and 0.106 (women) body weights per m/s: Weyand & Davis 2005, J. Exp. Biol. 208:2625 (legend of a figure; athletes)",
  },
  {
    metric: "impactPeak",
    value: 0.35,
    unit: "BW",
    from: 3,
    to: 5,
    read: "from memory",
    source: "1.6 to 2.3 body weights from 3 to 5 m/s: Munro et al. 1987, J. Biomech. 20:147 (from memory)",
  },
  {
    metric: "brakingImpulse",
    value: 0.0051,
    unit: "BW s",
    from: 3,
    to: 5,
    read: "from memory",
    source:
      "0.15 to 0.25 m/s (impulse ÷ mass) from 3 to 5 m/s: Munro et al. 1987, J. Biomech. 20:147 (from memory)",
  },
  {
    metric: "contactTime",
    value: -0.03214,
    unit: "s",
    from: 2.2,
    to: 5,
    read: "abstract",
    source: "0.280 to 0.190 s from 2.2 to 5.0 m/s: Kipp et al. 2018, J. Exp. Biol. 221:jeb184218 (abstract)",
  },
];
