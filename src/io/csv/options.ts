import type { Axes, Side, Surface } from "../../recording/index.js";
import type { Complete, Hertz, Kilograms, Metres, MetresPerSecond } from "../../units/index.js";

/** What a file does not say of itself. All of it may be left out for the library's own format. */
export interface ReadCsvOptions {
  /**
   * Where the file's axes point, seen by the runner, for columns named by axis (`Fx`, `COPz`, `Ty`). Such a file is
   * refused without it.
   */
  readonly axes?: Axes | null | undefined;
  /** Units of columns by their name, where the header does not state them: `{ Fx: "N", COPx: "mm" }`; one that it does is not overruled. */
  readonly units?: Readonly<Record<string, string>> | undefined;
  /** The reader's name for columns that have another: `{ "Vertical GRF": "up" }`. */
  readonly columns?: Readonly<Record<string, string>> | undefined;
  /** Columns to leave out, by name, such as one that counts samples; `"*"` stands for all names the reader does not know. */
  readonly ignore?: readonly string[] | undefined;
  /** Rate, Hz, where the file has neither a time column nor a comment with it. */
  readonly sampleRate?: Hertz | null | undefined;
  /** Decimal sign, where the file leaves it open; found in the cells where `null`. */
  readonly decimal?: "." | "," | null | undefined;
  /**
   * On whom the file's force acts: on the `runner`, as forces are stated in this library, or on the `ground` (what a
   * platform's own axes often give); then forces and free moment change sign, the centre of pressure does not.
   */
  readonly forceOn?: "runner" | "ground" | undefined;
  readonly mass?: Kilograms | null | undefined;
  readonly height?: Metres | null | undefined;
  /** Mean speed over the ground or belt. */
  readonly speed?: MetresPerSecond | null | undefined;
  readonly surface?: Surface | null | undefined;
  /** Slope, rise over run, uphill positive. */
  readonly grade?: number | null | undefined;
  /** The foot of the first complete contact. */
  readonly firstFoot?: Side | null | undefined;
}

/** Nothing is assumed of a file but that its force acts on the runner, as in the library's own format. */
export const READ_CSV_DEFAULTS: Complete<ReadCsvOptions> = {
  axes: null,
  units: {},
  columns: {},
  ignore: [],
  sampleRate: null,
  decimal: null,
  forceOn: "runner",
  mass: null,
  height: null,
  speed: null,
  surface: null,
  grade: null,
  firstFoot: null,
};
