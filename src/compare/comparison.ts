import type { Metric } from "../metrics/index.js";
import type { Interval } from "../statistics/index.js";
import type { NotComputed, Spread } from "../trial/index.js";
import type { Caution } from "../units/index.js";
import type { Alternative } from "./alternatives/alternative.js";

/** A component of the force on the runner. */
export type ComponentName = "vertical" | "anteroposterior" | "mediolateral";
/** What is said of one component, from its primary metric; `lower` is less load. */
export type ComponentReading = "lower" | "higher" | "similar" | "unsettled";
/** What is said of the load as a whole. */
export type OverallReading = "shifted" | "reduced" | "raised" | "unsettled" | "no clear change";
/** What is said of the positive external work per metre. */
export type WorkReading = "less work" | "more work" | "unsettled" | "no clear change";

/** The smallest difference that counts, in the unit of the values it stands beside, and where it is from. */
export interface SmallestDetectableChange {
  readonly value: number;
  readonly source: string;
}

/** Change over a trial by the straight line through its stride values, last less first, in the metric's unit. */
export interface Drift {
  readonly change: number;
  readonly interval: Interval | null;
  /**
   * Whether it counts: the interval at the reading level leaves zero and the change exceeds 0.8 of the pooled standard
   * deviation of strides, or the smallest detectable change where one was given.
   */
  readonly counts: boolean;
}

/** What a difference in speed alone would do to a metric, in its unit. */
export interface SpeedAlone {
  /** Of the metric from the baseline's speed to the changed trial's. */
  readonly difference: number;
  readonly source: string;
  /** Whether it was taken off the difference, its interval and readings, as was asked for. */
  readonly takenOff: boolean;
}

/** How the trials were laid out, and what the intervals of readings count. */
export interface ComparisonDesign {
  /** `baseline again`: two trials of the baseline and one of the change; meant for a baseline recorded before and after it. */
  readonly kind: "one trial each" | "baseline again" | "several trials";
  readonly baselineTrials: number;
  readonly changedTrials: number;
  /** In words: what the variation from trial to trial is taken from. */
  readonly variation: string;
}

/** Stride values of both trials set against each other. */
export interface ComparedValues {
  readonly baseline: Spread;
  readonly changed: Spread;
  /** changed − baseline. */
  readonly difference: number;
  /**
   * Of the size of the baseline's mean, %; `null` where that mean is zero or lies within {@link LEAST_MEAN_FOR_PERCENT}
   * standard deviations between strides of it.
   */
  readonly percent: number | null;
  /** Shown interval of the difference. */
  readonly interval: Interval;
  /** Interval a reading is taken from. */
  readonly readingInterval: Interval;
  readonly smallestDetectableChange: SmallestDetectableChange;
  /**
   * What a difference must stay within to read `similar`, and below to be no rise that counts: unless given, the larger of a share of
   * the baseline's mean and of what more strides do not make smaller, or of the smallest detectable change where one was given.
   */
  readonly margin: SmallestDetectableChange;
  /**
   * Non-inferiority: whether the reading interval's end on the side of more load lies within the margin; `null` where the
   * metric has no such side.
   */
  readonly noRiseBeyondMargin: boolean | null;
}

/** One metric in both trials, per step, in the metric's unit. */
export interface MetricComparison extends ComparedValues {
  readonly id: string;
  readonly unit: string;
  /** In the normalised unit, where both trials have what it is divided by; interval at the shown level. */
  readonly normalised?: { readonly unit: string; readonly difference: number; readonly interval: Interval };
  /** Hedges' g, positive where the changed trial's mean is the larger; `null` where neither trial spreads. */
  readonly effectSize: number | null;
  /** Studentised block bootstrap of the difference at the reading level, of metrics that speak for a component or for work. */
  readonly bootstrapInterval?: Interval;
  /** What moves within each trial from its first stride to its last, by a straight line; of metrics that speak. */
  readonly drift?: { readonly baseline: Drift; readonly changed: Drift };
  /** What the difference in speed alone would do, by a published slope; absent where speeds agree or no slope is known. */
  readonly speedAlone?: SpeedAlone;
  /** Value × steps per kilometre, where that has a meaning and speed and step time are known. */
  readonly perKilometre?: ComparedValues;
}

/** One component of the force and its reading. */
export interface ComponentComparison {
  readonly component: ComponentName;
  /** Id of the primary metric; `null` where the component was not recorded in both or no primary of it was compared. */
  readonly metric: string | null;
  /** Direction of that metric in which the load grows: the reading speaks of the load. `null` where the metric is. */
  readonly moreLoad: Metric["moreLoad"] | null;
  /** Per step; `null` where the metric is. */
  readonly reading: ComponentReading | null;
  /** Per kilometre; `null` where speed, step time or reading is missing. */
  readonly perKilometre: ComponentReading | null;
  /** Why there are no numbers; `null` where there are. `not recorded`: in one trial or both. */
  readonly missing: "not recorded" | "not compared" | null;
  /** One sentence for a person. */
  readonly sentence: string;
}

/** What a comparison was computed with. */
export interface ComparisonSettings {
  readonly version: string;
  readonly design: ComparisonDesign;
  /** Which interval readings are taken from. */
  readonly method: "student" | "bootstrap";
  readonly bootstrap: { readonly resamples: number; readonly seed: number };
  readonly shownLevel: number;
  readonly readingLevel: number;
  /** How intervals are made, in words. */
  readonly interval: string;
  /** What readings do with the correlation of successive strides; the intervals shown do neither. */
  readonly readingCorrelation: { readonly correctBias: boolean; readonly shared: boolean };
  /** Share of a trial's contacts that must have a metric. */
  readonly leastShareOfContacts: number;
  readonly minimumStrides: number;
  readonly minimumStridesCorrelated: number;
  /** Correlation of successive strides above which `minimumStridesCorrelated` holds. */
  readonly correlatedAbove: number;
  /** Share of the pooled standard deviation of strides that stands in for a smallest detectable change. */
  readonly smallestDetectableShare: number;
  /** Standard deviations of strides that the reading interval must be clear of zero by, and the level of thirds. */
  readonly slowDriftShare: number;
  readonly thirdsLevel: number;
  readonly similarMargin: number;
  readonly speedTolerance: number;
  readonly speedEffect: "kept" | "removed";
  /** By how much the ratios of mass by force to stated mass may differ. */
  readonly massRatioTolerance: number;
  /** Standard deviations between strides that the baseline's mean must be from zero for `percent`. */
  readonly leastMeanForPercent: number;
  /** Contact threshold of both trials, N; `null` where they differ, which a caution says. */
  readonly threshold: number | null;
  /** Filter of both trials. */
  readonly filter: { readonly cutoff: number; readonly order: number } | null;
}

/** A trial's strides, speed, masses and threshold, as the comparison saw them. */
export interface ComparedTrial {
  readonly strides: number;
  /** Strides that independent ones would be worth, smallest of the primary metrics. */
  readonly effectiveStrides: number;
  readonly speed: number | null;
  readonly mass: number | null;
  readonly massByForce: number | null;
  /** Level of the vertical force that contacts were read at, N. */
  readonly threshold: number;
}

/** What is said of the load as a whole; the lists hold names of components by their reading per step. */
export interface OverallComparison {
  readonly reading: OverallReading;
  readonly sentence: string;
  readonly lower: readonly ComponentName[];
  readonly higher: readonly ComponentName[];
  readonly unsettled: readonly ComponentName[];
  /** The same by their reading per kilometre; a component of which nothing is known there is in none. */
  readonly perKilometre: {
    readonly lower: readonly ComponentName[];
    readonly higher: readonly ComponentName[];
    readonly unsettled: readonly ComponentName[];
  };
  /** What would settle what is not; absent where everything is. */
  readonly toSettle?: readonly string[];
}

/** What is said of mechanical work. */
export interface WorkComparison {
  readonly reading: WorkReading;
  readonly sentence: string;
  /** Positive external work (the metric that speaks for work) per metre and kilogram, J/kg/m; absent where it is not known in both trials. */
  readonly perMetre?: ComparedValues & { readonly unit: string };
}

/** The answer: what the change did to every component, to the load as a whole, and to the work. */
export interface Comparison {
  readonly schema: "gait-kinetics/comparison/1";
  readonly settings: ComparisonSettings;
  readonly baseline: ComparedTrial;
  readonly changed: ComparedTrial;
  readonly metrics: readonly MetricComparison[];
  /** Metrics that were asked for and could not be compared, with the reason. */
  readonly notCompared: readonly NotComputed[];
  readonly components: readonly ComponentComparison[];
  readonly overall: OverallComparison;
  readonly work: WorkComparison;
  /** What published experiments support trying instead, where the load shifted or was raised; else empty. */
  readonly alternatives: readonly Alternative[];
  /** The comparison's own, then those of the trials. */
  readonly cautions: readonly Caution[];
}
