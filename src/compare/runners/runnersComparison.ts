import type { Interval } from "../../statistics/index.js";
import type { NotComputed } from "../../trial/index.js";
import type { Caution } from "../../units/index.js";
import type {
  ComponentName,
  ComponentReading,
  OverallReading,
  SmallestDetectableChange,
} from "../comparison.js";

/** One runner's own difference, which the group's is made of. */
export interface RunnerDifference {
  readonly runner: string;
  readonly difference: number;
  /** From this runner's own strides and trials, at the shown level; `null` where they give none. */
  readonly interval: Interval | null;
}

/** The runners of one condition. */
export interface RunnersCondition {
  readonly runners: number;
  /** Over runners, each counted as it is in the difference. */
  readonly mean: number;
  /** Between the runners' means; `null` with fewer than two. */
  readonly sd: number | null;
}

/** Values of both conditions over the runners. */
export interface RunnersValues {
  readonly baseline: RunnersCondition;
  readonly changed: RunnersCondition;
  /** changed − baseline, of the average runner. */
  readonly difference: number;
  /** Of the size of the baseline's mean, %; `null` where the runners' means are not all of one sign. */
  readonly percent: number | null;
  readonly interval: Interval;
  readonly readingInterval: Interval;
  readonly degreesOfFreedom: number;
  /**
   * Standard deviation of the true change between runners (paired) or of runners (independent); where no runner has two
   * trials of a condition, what varies from trial to trial is in it.
   */
  readonly betweenRunners: number;
  /** Standard deviation of a runner's mean from trial to trial; `null` where no runner has two trials of a condition. */
  readonly betweenTrials: number | null;
  readonly margin: SmallestDetectableChange;
  /** Whether the reading interval's end on the side of more load lies within the margin; `null` where there is no such side. */
  readonly noRiseBeyondMargin: boolean | null;
}

/** One metric over the runners. */
export interface RunnersMetric extends RunnersValues {
  readonly id: string;
  /** The normalised unit where every trial has what it is divided by, or the metric's own. */
  readonly unit: string;
  /** Hedges' g of independent runners; of pairs the mean change over the mean standard deviation of both conditions (d_av). */
  readonly effectSize: number | null;
  /** Paired: in the order given. Independent runners have no difference of their own: empty. */
  readonly runners: readonly RunnerDifference[];
  /** Value × steps per kilometre, in the unit per km, where that has a meaning and speed and step time are known. */
  readonly perKilometre?: RunnersValues;
}

/** One component of the force over the runners. */
export interface RunnersComponent {
  readonly component: ComponentName;
  /** Id of the primary metric; `null` where it was not recorded or not compared. */
  readonly metric: string | null;
  /** Per step; `null` where the metric is. */
  readonly reading: ComponentReading | null;
  /** Per kilometre; `null` where speed, step time or reading is missing. */
  readonly perKilometre: ComponentReading | null;
  readonly sentence: string;
}

/** Many runners in two conditions. */
export interface RunnersComparison {
  readonly schema: "gait-kinetics/runners/1";
  readonly settings: {
    readonly version: string;
    readonly design: "paired" | "independent";
    readonly shownLevel: number;
    readonly readingLevel: number;
    readonly similarMargin: number;
    readonly minimumRunners: number;
    readonly speedTolerance: number;
    /** How intervals are made, in words. */
    readonly interval: string;
    /** Filter of all trials. */
    readonly filter: { readonly cutoff: number; readonly order: number } | null;
  };
  readonly runners: { readonly baseline: number; readonly changed: number };
  readonly metrics: readonly RunnersMetric[];
  readonly notCompared: readonly NotComputed[];
  readonly components: readonly RunnersComponent[];
  readonly overall: {
    readonly reading: OverallReading;
    readonly sentence: string;
    readonly lower: readonly ComponentName[];
    readonly higher: readonly ComponentName[];
    readonly unsettled: readonly ComponentName[];
    readonly toSettle?: readonly string[];
  };
  readonly cautions: readonly Caution[];
}
