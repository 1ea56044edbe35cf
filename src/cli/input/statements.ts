import type { Axes } from "../../recording/index.js";
import type { ReadingOptions } from "../options/inputOptions.js";

/** What a table does not say of itself, as it is stated for a trial reading. */
export interface Statements {
  readonly axes?: Axes | undefined;
  readonly units: Readonly<Record<string, string>>;
  readonly columns: Readonly<Record<string, string>>;
  readonly ignore: readonly string[];
  readonly header?: number | undefined;
  /** Whether the rate is missing: no trial can find it. */
  readonly rateMissing: boolean;
}

/** Nothing is stated beyond what was typed. */
export const NO_STATEMENTS: Statements = { units: {}, columns: {}, ignore: [], rateMissing: false };

/** What was typed, and what is stated for the trial; what was typed counts. */
export function withStatements(
  reading: ReadingOptions,
  { axes, units, columns, ignore, header }: Statements,
): ReadingOptions {
  return {
    ...reading,
    axes: reading.axes ?? axes,
    header: reading.header ?? header,
    units: { ...units, ...reading.units },
    columns: { ...columns, ...reading.columns },
    ignore: [...(reading.ignore ?? []), ...ignore],
  };
}
