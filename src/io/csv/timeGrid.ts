import { fail } from "../../units/index.js";

/**
 * How far a time stamp may lie from the even grid between the first and the last, and how far two successive stamps
 * may be from one sampling period apart, in sampling periods.
 *
 * Stamps rounded to 1 ms differ by up to 0.3 periods from a grid of 300 Hz and pass; a missing sample differs by a
 * whole one and does not. Source: judgement of this library.
 */
export const TIME_TOLERANCE: number = 0.5;

/** An even grid of samples. */
export interface TimeGrid {
  readonly sampleRate: number;
  readonly startTime: number;
}

/**
 * Finds the rate that time stamps were taken at: samples less one ÷ time between first and last, taken as a whole
 * number of hertz where the stamps, as coarse as they are, cannot tell the two apart.
 *
 * @param times - Stamps, s.
 * @param stated - The rate that file or caller states; then the stamps must fit it.
 * @param whereOf - Names the place of a stamp in the file.
 */
export function timeGrid(
  times: Float64Array,
  stated: number | null,
  whereOf: (index: number) => string,
): TimeGrid {
  const startTime = times[0] as number;
  for (let i = 0; i < times.length; i++) {
    const step = (times[i] as number) - (times[i - 1] as number);
    if (Number.isNaN(times[i])) {
      refuse(`${whereOf(i)} has no time; every row needs one`, i, whereOf, "unreadable-file");
    }
    if (i > 0 && !(step > 0)) {
      const way = step === 0 ? "stands still" : "goes backwards";
      refuse(
        `${whereOf(i)}: time ${way}, from ${times[i - 1]} s to ${times[i]} s; it must rise from row to row`,
        i,
        whereOf,
      );
    }
  }
  if (stated !== null) {
    checkGrid(times, stated, `the stated rate of ${stated} Hz`, whereOf);
    return { sampleRate: stated, startTime };
  }
  if (times.length < 2) {
    fail("too-short", "the file has one row of numbers and no rate; at least two are needed, or sampleRate", {
      argument: "sampleRate",
    });
  }
  const derived = (times.length - 1) / ((times.at(-1) as number) - startTime);
  if (!Number.isFinite(derived)) {
    refuse(`times from ${startTime} s to ${times.at(-1)} s give no rate`, times.length - 1, whereOf);
  }
  const name = `the rate of ${Number(derived.toPrecision(6))} Hz that first and last time give`;
  const coarseness = checkGrid(times, derived, name, whereOf);
  return { sampleRate: wholeRate(derived, coarseness, times.length - 1), startTime };
}

/** Refuses stamps off the grid; gives the largest distance of a stamp from it, in periods. */
function checkGrid(
  times: Float64Array,
  rate: number,
  name: string,
  whereOf: (index: number) => string,
): number {
  const startTime = times[0] as number;
  let largest = 0;
  for (let i = 1; i < times.length; i++) {
    const periods = ((times[i] as number) - startTime) * rate;
    const off = Math.abs(periods - i);
    const step = ((times[i] as number) - (times[i - 1] as number)) * rate;
    if (off > TIME_TOLERANCE || Math.abs(step - 1) > TIME_TOLERANCE) {
      refuse(
        `${whereOf(i)}: time ${times[i]} s is ${step.toFixed(2)} sampling periods after the row above and ${off.toFixed(2)} off the even grid of ${name}; up to ${TIME_TOLERANCE} is allowed. Even the samples out first, or leave the time out with ignore and state sampleRate`,
        i,
        whereOf,
      );
    }
    if (off > largest) largest = off;
  }
  return largest;
}

/**
 * The whole number of hertz, where over the whole recording it differs from the derived rate by no more periods than
 * the first and the last stamp together may be rounded by.
 */
function wholeRate(derived: number, coarseness: number, periods: number): number {
  const whole = Math.round(derived);
  const difference = Math.abs(whole / derived - 1) * periods;
  return whole > 0 && difference <= 2 * coarseness + 1e-9 * periods ? whole : derived;
}

function refuse(
  message: string,
  index: number,
  whereOf: (index: number) => string,
  code: "uneven-time" | "unreadable-file" = "uneven-time",
): never {
  fail(code, message, { argument: "time", where: whereOf(index) });
}
