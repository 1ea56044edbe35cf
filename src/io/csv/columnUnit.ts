import { type Caution, fail } from "../../units/index.js";
import type { Statement } from "./columnNames.js";
import { unitOrNull } from "./unitOrNull.js";
import { quoted } from "./words.js";

/** What is known of a column's unit, from three places. */
export interface StatedUnits {
  /** In the brackets of its name; empty where there is none. */
  readonly heading: string;
  /** In the row of units. */
  readonly row: string;
  readonly option: Statement | null;
  /** Line of the row of units. */
  readonly unitLine: number;
}

/**
 * Decides a column's unit: a known one in the heading's brackets counts, then the option, then the row of units. `overruled`
 * is a pattern of the option that states another unit than the heading.
 *
 * @throws GaitKineticsError `conflict`: the heading and the option, or the heading and the row of units, differ.
 */
export function columnUnit(
  { heading, row, option, unitLine }: StatedUnits,
  name: string,
  label: string,
  where: string,
): {
  readonly unit: string;
  readonly cautions: readonly Caution[];
  readonly overruled?: Statement;
} {
  const given = option?.value.trim();
  if (heading !== "" && unitOrNull(heading) !== null) {
    if (option !== null && given !== undefined && !isSame(heading, given)) {
      if (option.exact) refuseOption(name, heading, given, where);
      return { unit: heading, cautions: [headingCaution(option, heading, name, label)], overruled: option };
    }
    if (given === undefined && row !== "" && !isSame(heading, row)) refuseRow(heading, row, unitLine, where);
    return { unit: heading, cautions: [] };
  }
  if (given !== undefined) {
    const [file, place] =
      heading !== ""
        ? [heading, `the brackets of ${label} hold ${quoted(heading)}, which is no known unit`]
        : [row, `the row of units, line ${unitLine}, states ${quoted(row)} for ${label}`];
    if (file === "" || isSame(file, given)) return { unit: given, cautions: [] };
    const message = `${place}; the unit of the option, ${quoted(given)}, was used`;
    const caution = { code: "option-over-file", message, where: name, values: { file, option: given } };
    return { unit: given, cautions: [caution] };
  }
  return { unit: heading === "" ? row : heading, cautions: [] };
}

function isSame(one: string, two: string): boolean {
  if (one === two) return true;
  const [first, second] = [unitOrNull(one), unitOrNull(two)];
  return first !== null && first.dimension === second?.dimension && first.toSi === second.toSi;
}

/** A pattern may mean the other columns alone. */
function headingCaution(option: Statement, heading: string, name: string, label: string): Caution {
  return {
    code: "heading-over-option",
    message: `${label} states ${quoted(heading)} in its heading, and units another one, ${quoted(option.value)} for ${quoted(option.name)}; the heading's was used: correct the heading if it is wrong`,
    where: name,
    values: { file: heading, option: option.value, pattern: option.name },
  };
}

/** A heading's unit is the file's own statement; an option may repeat it. */
export function refuseOption(name: string, stated: string, given: string, where: string): never {
  fail(
    "conflict",
    `${where} states ${quoted(stated)} in its heading, and the option another unit, as units: { ${quoted(name)}: ${quoted(given)} }; leave the option out, or correct the heading if it is wrong`,
    { argument: "units", where, values: { file: stated, option: given } },
  );
}

function refuseRow(heading: string, row: string, unitLine: number, where: string): never {
  fail(
    "conflict",
    `${where} states ${quoted(heading)} in its heading and ${quoted(row)} in the row of units, line ${unitLine}; leave that row out with unitRow: "skip" if the heading is right`,
    { argument: "unitRow", where, values: { heading, row } },
  );
}
