import type { RecordedEvent } from "../../recording/index.js";
import { fail, requireOneOf } from "../../units/index.js";
import { readRows, type TableRow } from "./readRows.js";
import { quoted } from "./words.js";

/**
 * Reads `events.tsv`: `onset` in s from the first sample, `trial_type` or `value` for a label; `recording_time` and `side`
 * are this library's own.
 */
export function readEvents(text: string, startTime: number): readonly RecordedEvent[] {
  return readRows(text, "events", ["onset", "duration"]).map((row): RecordedEvent => {
    const { cells } = row;
    const clock = cells.has("recording_time")
      ? numberOf(row, "recording_time")
      : startTime + numberOf(row, "onset");
    const side = cells.get("side");
    return {
      label: cells.get("trial_type") ?? cells.get("value") ?? "",
      time: clock,
      ...(side !== undefined && {
        side: requireOneOf(`events, line ${row.line}, side`, side, ["left", "right"]),
      }),
    };
  });
}

function numberOf({ line, cells }: TableRow, name: string): number {
  const cell = cells.get(name)?.trim() ?? "";
  const value = Number(cell);
  if (cell !== "" && Number.isFinite(value)) return value;
  const where = `line ${line}, ${name}`;
  fail(
    "unreadable-file",
    `events, ${where}: ${cell === "" ? "the cell is empty" : `${quoted(cell)} is no number`}; a time in s is needed`,
    {
      argument: "events",
      where,
    },
  );
}
