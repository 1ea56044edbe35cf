import type { Axes, Side, Surface } from "../../recording/index.js";
import type { Complete, Kilograms, Metres, MetresPerSecond } from "../../units/index.js";

/** What a C3D file does not say of itself. All of it may be left out for a file that this library wrote. */
export interface ReadC3dOptions {
  /**
   * Where the laboratory's axes point, seen by the runner, such as `{ x: "right", y: "forward", z: "up" }`: all three,
   * right-handed. A file of another writer is refused without them.
   */
  readonly axes?: Axes | null | undefined;
  /** Unit of positions, where POINT:UNITS is blank or wrong. */
  readonly lengthUnit?: "mm" | "cm" | "m" | null | undefined;
  /**
   * Units of analogue channels by name, where ANALOG:UNITS is blank or wrong: `{ FZ1: "N", "M*": "N mm" }`. A name may have
   * one `*` in it, for anything; the exact name counts before it. A unit that the file states otherwise is overruled with a
   * `Caution`; a name that no channel has, and for a platform's channel a unit of the wrong kind, is refused.
   */
  readonly units?: Readonly<Record<string, string>> | undefined;
  readonly mass?: Kilograms | null | undefined;
  readonly height?: Metres | null | undefined;
  /** Mean speed over the ground or belt. */
  readonly speed?: MetresPerSecond | null | undefined;
  readonly surface?: Surface | null | undefined;
  /** Slope, rise over run, uphill positive. */
  readonly grade?: number | null | undefined;
  /** The foot of the first complete contact. */
  readonly firstFoot?: Side | null | undefined;
  /** What was on the feet, in words: one line of text, such as `road shoe, 250 g`. */
  readonly footwear?: string | null | undefined;
}

/** Nothing is assumed of a file. */
export const READ_C3D_DEFAULTS: Complete<ReadC3dOptions> = {
  axes: null,
  lengthUnit: null,
  units: {},
  mass: null,
  height: null,
  speed: null,
  surface: null,
  grade: null,
  firstFoot: null,
  footwear: null,
};
