import type {
  ForceOptions,
  MarkerOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import { type FileFormat, FORMAT_NAMES } from "./fileFormat.js";

/** Name of an option that not every format uses. */
type FormatOption =
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

/** Name of an option that is of use for what some recordings hold. */
export type ContentOption = "axes" | "plates" | "onlyPlates" | "sides" | "centreOfMass" | "feet";

/** Name of an option that not every file uses. */
export type UsedBySome = FormatOption | ContentOption;

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

/** What a recording must hold, and what is said where it does not. */
const NEEDS: Readonly<Record<ContentOption, readonly [needed: string, lacking: string]>> = {
  axes: ["columns named by axis", "this table has none"],
  plates: ["force platforms, or belts of their own", "this recording has none"],
  onlyPlates: ["force platforms, or belts of their own", "this recording has none"],
  sides: ["force platforms, or belts of their own", "this recording has none"],
  centreOfMass: ["recordings with markers", "this one has none"],
  feet: ["recordings with markers", "this one has none"],
};

const FORMAT_OPTIONS = Object.keys(USED_BY) as readonly FormatOption[];

/**
 * Names of all options that not every file of a comparison needs a use for. A centre of mass by markers is for both or none:
 * distances to it and those from the force alone are not compared.
 */
export const USED_BY_SOME: readonly UsedBySome[] = [
  ...FORMAT_OPTIONS,
  ...(Object.keys(NEEDS) as ContentOption[]).filter((name) => name !== "centreOfMass"),
];

/**
 * Lists options that were given and say nothing to the reader of a format.
 *
 * @param format - Of the file.
 * @param options - As typed.
 */
export function unusedOptions(
  format: FileFormat,
  options: ReadingOptions & ForceOptions & MarkerOptions & Pick<RecordingOptions, "rate">,
): readonly UsedBySome[] {
  return FORMAT_OPTIONS.filter((name) => options[name] !== undefined && !USED_BY[name].includes(format));
}

/** Says that an option is not for a format, or not for what a recording holds. */
export function unusedSentence(option: UsedBySome, format: FileFormat): string {
  const flag = option.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  if (isContentOption(option)) {
    const [needed, lacking] = NEEDS[option];
    return `--${flag} is for ${needed}, and ${lacking}; leave the option out`;
  }
  const formats = USED_BY[option].map((name) => FORMAT_NAMES[name]).join(" or ");
  return `--${flag} is for ${formats}, and this file is ${FORMAT_NAMES[format]}; leave the option out`;
}

function isContentOption(option: UsedBySome): option is ContentOption {
  return option in NEEDS;
}
