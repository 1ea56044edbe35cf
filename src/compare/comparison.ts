import type { Spread } from "../trial/index.js";
import type { Caution } from "../units/index.js";

/** What is said of one component, from its primary metric. */
export type ComponentReading = "lower" | "higher" | "similar" | "unsettled";
/** What is said of the load as a whole. */
export type OverallReading = "shifted" | "reduced" | "raised" | "unsettled" | "no clear change";
/** What is said of the positive external work per metre. */
export type WorkReading = "less work" | "more work" | "unsettled" | "no clear change";

/** An interval and the share of repeats it is meant to cover. */
export interface Interval {
  readonly low: number;
  readonly high: number;
  readonly level: number;
}

/** One metric in both trials. */
export interface MetricComparison {
  readonly id: string;
  readonly unit: string;
  readonly baseline: Spread;
  readonly changed: Spread;
  /** changed − baseline, in the metric's unit. */
  readonly difference: number;
  /** Of the baseline's mean, %; `null` where that mean is zero. */
  readonly percent: number | null;
  /** Shown interval of the difference. */
  readonly interval: Interval;
  /** Interval the reading is taken from. */
  readonly readingInterval: Interval;
  /** In the normalised unit, where both masses are known. */
  readonly normalised?: { readonly unit: string; readonly difference: number; readonly interval: Interval };
  /** Hedges' g. */
  readonly effectSize: number | null;
  readonly smallestDetectableChange: { readonly value: number; readonly source: string };
  /** Value × steps per kilometre, where speed and step time are known. */
  readonly perKilometre?: {
    readonly baseline: Spread;
    readonly changed: Spread;
    readonly difference: number;
    readonly percent: number | null;
    readonly interval: Interval;
    readonly readingInterval: Interval;
  };
}

/** One component of the force and its reading. */
export interface ComponentComparison {
  readonly component: "vertical" | "anteroposterior" | "mediolateral";
  /** Id of the primary metric; `null` where the component was not recorded in both. */
  readonly metric: string | null;
  /** Per step; `null` where not recorded. */
  readonly reading: ComponentReading | null;
  /** Per kilometre; `null` where speed or component is missing. */
  readonly perKilometre: ComponentReading | null;
  /** One sentence for a person. */
  readonly sentence: string;
}

/** What a comparison was computed with. */
export interface ComparisonSettings {
  readonly version: string;
  readonly shownLevel: number;
  readonly readingLevel: number;
  readonly interval: string;
  readonly minimumStrides: number;
  readonly minimumStridesCorrelated: number;
  readonly similarMargin: number;
  readonly speedTolerance: number;
  readonly threshold: number;
  readonly filter: { readonly cutoff: number; readonly order: number } | null;
}

/** Both trials' strides, speeds and masses, as the comparison saw them. */
export interface ComparedTrial {
  readonly strides: number;
  /** Strides that independent ones would be worth, smallest of the primary metrics. */
  readonly effectiveStrides: number;
  readonly speed: number | null;
  readonly mass: number;
  readonly massByForce: number;
}

/** The answer: what the change did to every component, to the load as a whole, and to the work. */
export interface Comparison {
  readonly schema: "gait-kinetics/comparison/1";
  readonly settings: ComparisonSettings;
  readonly baseline: ComparedTrial;
  readonly changed: ComparedTrial;
  readonly metrics: readonly MetricComparison[];
  readonly components: readonly ComponentComparison[];
  readonly overall: {
    readonly reading: OverallReading;
    readonly sentence: string;
    readonly lower: readonly string[];
    readonly higher: readonly string[];
    readonly unsettled: readonly string[];
    readonly toSettle?: readonly string[];
  };
  readonly work: { readonly reading: WorkReading; readonly sentence: string };
  readonly cautions: readonly Caution[];
}
