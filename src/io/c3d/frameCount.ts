import type { Caution } from "../../units/index.js";
import type { C3dHeader } from "./c3dFile.js";
import type { ParameterTable } from "./parameterTable.js";

/** How the length of the data that a statement gives fits the file; `filled` leaves no more than the rest of a block. */
export type Fit = "too short" | "filled" | "left over";

/** The largest count that 16 bits hold: it says that the real one stands elsewhere. */
export const COUNT_LIMIT: number = 0xffff;

/**
 * Finds how many frames a file holds: POINT:FRAMES, or where that is at its limit of 65 535, TRIAL:ACTUAL_END_FIELD −
 * TRIAL:ACTUAL_START_FIELD + 1 and POINT:LONG_FRAMES. Where POINT:FRAMES is below that and would leave data unread, and the
 * fields of TRIAL fill the file, they count: a writer may have kept the low 16 bits alone. The header's first and last frame are
 * numbers of the recording that the file was taken from; they count only where POINT:FRAMES is missing.
 *
 * @param fitOf - How a count fits the length of the file.
 */
export function frameCount(
  header: C3dHeader,
  table: ParameterTable,
  fitOf: (frames: number) => Fit,
): { readonly frames: number; readonly cautions: readonly Caution[] } {
  const field = trialSpan(table);
  const span = header.lastFrame - header.firstFrame + 1;
  const stated = wholeOrNone(table.count("POINT", "FRAMES"));
  if (stated === undefined) {
    const message = `POINT:FRAMES is missing; the header's frames ${header.firstFrame} to ${header.lastFrame} were counted`;
    return { frames: span, cautions: [{ code: "frame-count-missing", message, where: "POINT:FRAMES" }] };
  }
  if (stated < COUNT_LIMIT || table.get("POINT", "FRAMES")?.type === "float") {
    if (
      field !== undefined &&
      field !== stated &&
      fitOf(stated) === "left over" &&
      fitOf(field) === "filled"
    ) {
      const message = `POINT:FRAMES says ${stated} frames and the fields of TRIAL ${field}, which fill the file; TRIAL counted`;
      const values = { frames: stated, trial: field };
      return {
        frames: field,
        cautions: [{ code: "frame-count-disagrees", message, where: "POINT:FRAMES", values }],
      };
    }
    if (span === stated || header.lastFrame === COUNT_LIMIT) return { frames: stated, cautions: [] };
    const message = `the header says frames ${header.firstFrame} to ${header.lastFrame}, which are ${span}, and POINT:FRAMES ${stated}; POINT:FRAMES counted`;
    const values = { first: header.firstFrame, last: header.lastFrame, frames: stated };
    return {
      frames: stated,
      cautions: [{ code: "header-disagrees", message, where: "POINT:FRAMES", values }],
    };
  }
  const long = wholeOrNone(table.number("POINT", "LONG_FRAMES"));
  const counts = [field, long].filter((count) => count !== undefined);
  if (field === undefined || long === undefined || field === long) {
    return { frames: counts[0] ?? stated, cautions: [] };
  }
  const frames = fitOf(Math.max(field, long)) !== "too short" ? Math.max(field, long) : Math.min(field, long);
  const message = `the fields of TRIAL say ${field} frames and POINT:LONG_FRAMES ${long}; ${frames}, the larger that the file is long enough for, was used`;
  const values = { trial: field, longFrames: long };
  return {
    frames,
    cautions: [{ code: "frame-count-disagrees", message, where: "POINT:LONG_FRAMES", values }],
  };
}

function trialSpan(table: ParameterTable): number | undefined {
  const [first, last] = ["ACTUAL_START_FIELD", "ACTUAL_END_FIELD"].map((name) => {
    const [low, high] = table.numbers("TRIAL", name);
    // A 32-bit number in two words, the low one first.
    return low === undefined || high === undefined ? undefined : (low & 0xffff) + 65536 * (high & 0xffff);
  });
  return first === undefined || last === undefined ? undefined : wholeOrNone(last - first + 1);
}

function wholeOrNone(value: number | undefined): number | undefined {
  return value !== undefined && Number.isSafeInteger(Math.round(value)) && value >= 0
    ? Math.round(value)
    : undefined;
}
