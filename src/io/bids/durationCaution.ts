import type { Caution } from "../../units/index.js";
import { fieldOf, type JsonObject } from "./readObject.js";

/** Sampling periods by which duration and rows may differ: some count from the first sample to the last. */
const PERIODS = 1.5;

/**
 * Says where a table has fewer or more rows than `RecordingDuration` of the sidecar gives: a file that was cut between two
 * rows shows nowhere else. A duration is taken to be rounded to its last digit, unless this library wrote it.
 *
 * @param exact - Whether this library wrote the sidecar.
 */
export function durationCaution(
  sidecar: JsonObject,
  rows: number,
  sampleRate: number,
  exact: boolean,
): readonly Caution[] {
  const stated = fieldOf(sidecar, "RecordingDuration");
  if (typeof stated !== "number" || !Number.isFinite(stated) || stated <= 0) return [];
  const duration = rows / sampleRate;
  const allowed = PERIODS / sampleRate + (exact ? 0 : lastDigit(stated) / 2);
  // A share beside it for clocks that run apart.
  if (Math.abs(duration - stated) <= allowed + 0.001 * stated) return [];
  const shown = Number(duration.toPrecision(4));
  const what =
    duration < stated
      ? "the file may be cut off, or samples are missing"
      : "the duration or the rate is wrong, or rows are there twice";
  return [
    {
      code: "recording-duration-differs",
      message: `"RecordingDuration" is ${stated} s, and ${rows} rows at ${Number(sampleRate.toPrecision(7))} Hz are ${shown} s: ${what}`,
      where: "RecordingDuration",
      values: { stated, duration, rows },
    },
  ];
}

/** What one more in the last digit of a number is worth. */
function lastDigit(value: number): number {
  const [, decimals = "", exponent = "0"] = /^\d+(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value)) ?? [];
  return 10 ** (Number(exponent) - decimals.length);
}
