import type { ForceOptions, ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { type FileFormat, FORMAT_NAMES } from "./fileFormat.js";

/** Name of an option that not every format uses. */
export type FormatOption =
  | "rate"
  | "units"
  | "lengthUnit"
  | "columns"
  | "ignore"
  | "decimal"
  | "delimiter"
  | "skip"
  | "header"
  | "unitRow"
  | "missing"
  | "coverThickness"
  | "originSign";

/** The options that not every format uses, and which do. */
const USED_BY: Readonly<Record<FormatOption, readonly FileFormat[]>> = {
  rate: ["table"],
  units: ["table", "c3d"],
  lengthUnit: ["c3d"],
  columns: ["table", "motion-bids"],
  ignore: ["table"],
  decimal: ["table"],
  delimiter: ["table"],
  skip: ["table"],
  header: ["table"],
  unitRow: ["table"],
  missing: ["table"],
  coverThickness: ["c3d"],
  originSign: ["c3d"],
};

/** Names of all options that not every format uses. */
export const FORMAT_OPTIONS: readonly FormatOption[] = Object.keys(USED_BY) as FormatOption[];

/**
 * Lists options that were given and say nothing to the reader of a format.
 *
 * @param format - Of the file.
 * @param options - As typed.
 */
export function unusedOptions(
  format: FileFormat,
  options: ReadingOptions & ForceOptions & Pick<RecordingOptions, "rate">,
): readonly FormatOption[] {
  return FORMAT_OPTIONS.filter((name) => options[name] !== undefined && !USED_BY[name].includes(format));
}

/** Says that an option is not for a format. */
export function unusedSentence(option: FormatOption, format: FileFormat): string {
  const formats = USED_BY[option].map((name) => FORMAT_NAMES[name]).join(" or ");
  const flag = option.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  return `--${flag} is for ${formats}, and this file is ${FORMAT_NAMES[format]}; leave the option out`;
}
