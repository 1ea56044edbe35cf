import type { Contact } from "../events/index.js";
import type { PlateSettings } from "../force/index.js";
import type { Subject, Surface } from "../recording/index.js";
import type { Caution, Seconds } from "../units/index.js";

/** Mean and spread of a metric, with the interval of the mean. */
export interface Spread {
  /** Strides (per trial; contacts where the recording holds no stride) or contacts (per side). */
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

/** What a trial was computed with; numbers in SI units. */
export interface TrialSettings {
  readonly version: string;
  readonly sampleRate: number;
  readonly duration: number;
  /** Stated mass, which normalises; the one by force where none was stated; `null` where neither is known. */
  readonly mass: number | null;
  readonly massStated: boolean;
  /** Mean vertical force over whole strides ÷ gravity, which integrates; `null` without a whole stride. */
  readonly massByForce: number | null;
  readonly gravity: number;
  readonly speed: number | null;
  readonly surface: Surface | null;
  readonly grade: number;
  readonly filter: { readonly cutoff: number; readonly order: number } | null;
  readonly events: {
    readonly threshold: number;
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
  /** Contacts cut by the recording's ends; counted nowhere. */
  readonly partialContacts: readonly Contact[];
  readonly steps: readonly StepRow[];
  readonly summary: {
    readonly strides: number;
    /** Share of contacts with an impact peak; `null` where body weight, and so the peak, is not known. */
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
