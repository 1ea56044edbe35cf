import type { Side } from "../../recording/index.js";
import type { Caution, Hertz, Seconds } from "../../units/index.js";

/** Events of one foot from a body-worn sensor, s from its first sample, in order. */
export interface InertialEvents {
  /** What was read. */
  readonly method: string;
  readonly side: Side | "unknown";
  readonly initialContacts: readonly Seconds[];
  /** Empty where the method tells none. */
  readonly toeOffs: readonly Seconds[];
  readonly settings: InertialSettings;
  readonly cautions: readonly Caution[];
}

/** What events of a sensor were found by. */
export interface InertialSettings {
  readonly sampleRate: Hertz;
  /** Of the low-pass, Hz; `null` for none. */
  readonly cutoff: number | null;
  readonly order: number;
  /** The feature that initial contact was read at. */
  readonly contactFeature: string;
  /** Shortest time between two initial contacts of the foot, s. */
  readonly shortestStride: Seconds;
}

/** Samples per second below which contact times of single steps are no better than a sample. Common practice. */
export const LOW_INERTIAL_RATE: Hertz = 200;

/** What every result from a single sensor must say. */
export function inertialCautions(sampleRate: number, events: number): Caution[] {
  const cautions: Caution[] = [];
  if (events === 0) {
    cautions.push({
      code: "no-events",
      message:
        "the sensor shows no strides: nobody walks or runs, the axis is another one or points the other way, or the recording is shorter than a stride",
    });
  } else {
    cautions.push({
      code: "events-from-sensor",
      message:
        "events of a single sensor lie up to some 0.1 s from those of force, by runner, shoe and placement; use means over many steps, not single contacts, and do not compare them with events by force",
    });
  }
  if (sampleRate < LOW_INERTIAL_RATE) {
    cautions.push({
      code: "low-rate",
      message: `a sensor at ${sampleRate} Hz has ${(1000 / sampleRate).toFixed(0)} ms between samples: contacts are no better than that, and short peaks of acceleration are cut off`,
      values: { sampleRate },
    });
  }
  return cautions;
}
