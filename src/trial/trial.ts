import type { Contact, Gait, ThresholdRule } from "../events/index.js";
import type { MarkerSettings, PlateSettings } from "../force/index.js";
import type { LandingMargin, ToeShape } from "../models/index.js";
import type { Subject, Surface } from "../recording/index.js";
import type { Caution, Seconds } from "../units/index.js";

/** Mean and spread of a metric, with the interval of the mean. */
export interface Spread {
  /** Strides (per trial; of one foot alone those of that foot; contacts where the recording holds no stride) or contacts (per side). */
  readonly n: number;
  readonly mean: number;
  /** `null` with fewer than two values. */
  readonly sd: number | null;
  /** `null` with fewer than two values. */
  readonly interval: { readonly low: number; readonly high: number; readonly level: number } | null;
}

/** A metric's summary over a trial. */
export interface MetricSummary extends Spread {
  readonly unit: string;
  readonly normalised?: Spread & { readonly unit: string };
  readonly left?: Spread;
  readonly right?: Spread;
}

/** One contact with its values by metric id; `null` where this contact has none. */
export interface StepRow {
  readonly side: Contact["side"];
  readonly initialContact: Seconds;
  readonly toeOff: Seconds;
  readonly values: Readonly<Record<string, number | null>>;
}

/** A mean curve over stance, 101 points, with the standard deviation between contacts at each. */
export interface Curve {
  readonly mean: readonly number[];
  /** `null` for a single contact. */
  readonly sd: readonly number[] | null;
  readonly n: number;
}

/** Mean curves of one component of force, N; `unknown` where the sides are not told apart. */
export interface CurvesBySide {
  readonly left?: Curve;
  readonly right?: Curve;
  readonly unknown?: Curve;
}

/** Why a metric is not there. */
export interface NotComputed {
  readonly id: string;
  readonly code: string;
  readonly message: string;
}

/** How touchdown and take-off distance were had. */
export interface LandingSettings {
  /** From the force over the stride, or to a centre of mass that was measured. */
  readonly method: "force" | "measured";
  /** Vertical force at which the foot's place is read, N. */
  readonly footLevel: number;
  /** How the rise of the force is carried on to zero. */
  readonly toe: ToeShape;
  /** Mean forward over mean vertical force, beyond the grade, that was taken off as a tilt; 0 where it was measured. */
  readonly balance: number;
  /**
   * How far each may be off as a whole, m: half widths of what no number of strides takes away, most of it by the rule for
   * the toe, which two trials share.
   */
  readonly margin: LandingMargin;
}

/** What a trial was computed with; numbers in SI units. */
export interface TrialSettings {
  readonly version: string;
  readonly sampleRate: number;
  readonly duration: number;
  /** Stated mass, which normalises; the one by force where none was stated; `null` where neither is known. */
  readonly mass: number | null;
  readonly massStated: boolean;
  /** Mean vertical force over whole strides ÷ gravity, which integrates; `null` without a whole stride of both feet. */
  readonly massByForce: number | null;
  readonly gravity: number;
  readonly speed: number | null;
  readonly surface: Surface | null;
  /** What was on the feet, in words; `null` where it was not stated. */
  readonly footwear: string | null;
  readonly grade: number;
  readonly filter: { readonly cutoff: number; readonly order: number } | null;
  /** `null` where the trial has neither touchdown nor take-off distance. */
  readonly landing: LandingSettings | null;
  /** Drag of the air that the work is done against, N backward; `null` where none was asked for. */
  readonly airDrag: number | null;
  /** What the recording holds. */
  readonly gait: Gait | null;
  readonly gaitStated: boolean;
  readonly events: {
    readonly threshold: number;
    readonly thresholdRule: ThresholdRule;
    /** Share of body weight that was asked for; `null` where none was. */
    readonly thresholdShare: number | null;
    /** Standard deviations above the mean in flight that were asked for; `null` where none were. */
    readonly noiseFactor: number | null;
    readonly fallLevel: number;
    readonly cutoff: number | null;
    readonly shortestContact: number;
    readonly shortestFlight: number;
    readonly sides: string;
  };
  readonly force: {
    readonly offset: Readonly<Record<string, number>>;
    readonly driftRemoved: boolean;
    readonly flights: number;
    /** What was done to each plate or belt; absent where the recording names none. */
    readonly plates?: readonly PlateSettings[];
    /**
     * Names of the plates in the order that `plate` of a contact counts; absent where they are not kept
     * apart.
     */
    readonly apart?: readonly string[];
    /** Markers that the centre of mass and the feet were placed by; absent where none were. */
    readonly markers?: MarkerSettings;
  };
  readonly level: number;
  readonly interval: string;
}

/** Every number of one recording: per contact, summarised over strides and sides, with what it rests on. */
export interface Trial {
  readonly schema: "gait-kinetics/trial/1";
  readonly settings: TrialSettings;
  readonly subject: Subject;
  readonly contacts: readonly Contact[];
  /**
   * Contacts cut by the recording's ends, parts of a foot across two plates, and several contacts that were read as one;
   * counted nowhere, and no stride spans them.
   */
  readonly partialContacts: readonly Contact[];
  readonly steps: readonly StepRow[];
  readonly summary: {
    readonly strides: number;
    /**
     * Share of contacts with an impact peak; `null` where body weight, and so the peak, is not known, and in other gaits than
     * running.
     */
    readonly impactPeakShare: number | null;
    /** By metric id; a metric that was not computed is absent. */
    readonly metrics: Readonly<Record<string, MetricSummary | undefined>>;
  };
  /** Of the force under the foot. */
  readonly curves: {
    readonly percent: readonly number[];
    readonly up: CurvesBySide;
    readonly forward?: CurvesBySide;
    readonly right?: CurvesBySide;
  };
  readonly notComputed: readonly NotComputed[];
  readonly cautions: readonly Caution[];
}
