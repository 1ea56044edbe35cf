import type { Axes, Side, Surface } from "../../recording/index.js";
import type { Complete, Hertz, Kilograms, Metres, MetresPerSecond } from "../../units/index.js";

/** What stands between the cells of a row; a blank stands for one blank or a run of them. */
export type Delimiter = "," | ";" | "\t" | "|" | " ";

/**
 * What a file does not say of itself. All of it may be left out for the library's own format.
 *
 * A column is named by its heading, with or without the unit, by its number from 1 where no heading is that number, or,
 * several at once, by a name with one `*` in it. The exact name counts before the pattern.
 */
export interface ReadCsvOptions {
  /**
   * Where the file's axes point, seen by the runner, for columns named by axis (`Fx`, `COPz`, `Ty`). Such a file is
   * refused without it.
   */
  readonly axes?: Axes | null | undefined;
  /**
   * Units of columns by their name, where the header does not state them: `{ Fx: "N", "COP*": "mm" }`. A unit in the
   * heading's brackets is not overruled; one in a row of units below it is, with a `Caution`.
   */
  readonly units?: Readonly<Record<string, string>> | undefined;
  /**
   * The reader's name for columns that have another: `{ "Vertical GRF": "up" }`. With a pattern, `*` in the word is what
   * it stands for in the name: `{ "*X": "marker:*:x" }`; columns whose own name the reader knows are not touched by it.
   */
  readonly columns?: Readonly<Record<string, string>> | undefined;
  /** Columns to leave out, by name; `"*"` alone stands for all names the reader does not know. */
  readonly ignore?: readonly string[] | undefined;
  /**
   * Rate, Hz, where the file has neither a time column nor a comment with it. It counts before a time column, which is
   * then checked loosely.
   */
  readonly sampleRate?: Hertz | null | undefined;
  /** Decimal sign, where the file leaves it open; found in the cells where `null`. */
  readonly decimal?: "." | "," | null | undefined;
  /** What divides the cells; found in the first rows where `null`. */
  readonly delimiter?: Delimiter | null | undefined;
  /** Lines at the top of the file to leave out before anything is read, 0 to 10 000. */
  readonly skip?: number | undefined;
  /**
   * Rows of names, 0 to 10: several are joined from top to bottom, a blank cell of an upper row taking the cell to its
   * left; with 0 the columns are named by number, and those that `columns` does not name are left out.
   */
  readonly header?: number | undefined;
  /**
   * A row of units below the names: `read`, left out by `skip`, not there by `none`; by `auto` it is read where every
   * cell of the row is a word or blank, and at least one a known unit.
   */
  readonly unitRow?: "auto" | "read" | "skip" | "none" | undefined;
  /** Cells that hold no value, whatever their case: gaps. A number among them, such as `"-9999"`, counts by its value. */
  readonly missing?: readonly string[] | undefined;
  /** Whether a table without vertical force and without markers is refused (`needed`) or read (`optional`). */
  readonly verticalForce?: "needed" | "optional" | undefined;
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
  /** What was on the feet, in words: one line of text, such as `road shoe, 250 g`. */
  readonly footwear?: string | null | undefined;
}

/** Nothing is assumed of a file but that its force acts on the runner, as in the library's own format. */
export const READ_CSV_DEFAULTS: Complete<ReadCsvOptions> = {
  axes: null,
  units: {},
  columns: {},
  ignore: [],
  sampleRate: null,
  decimal: null,
  delimiter: null,
  skip: 0,
  header: 1,
  unitRow: "auto",
  missing: ["", "NaN", "NA", "n/a"],
  verticalForce: "needed",
  forceOn: "runner",
  mass: null,
  height: null,
  speed: null,
  surface: null,
  grade: null,
  firstFoot: null,
  footwear: null,
};

/** What the reader works with. */
export type CsvSettings = Complete<ReadCsvOptions>;
