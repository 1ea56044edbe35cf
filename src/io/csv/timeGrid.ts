import { type Caution, fail } from "../../units/index.js";
import { refuseUneven } from "./refuseUneven.js";

/**
 * How far a time stamp may lie from the even grid between the first and the last, and how far two successive stamps
 * may be from one sampling period apart, in sampling periods.
 *
 * Stamps rounded to 1 ms differ by up to 0.3 periods from a grid of 300 Hz and pass; a missing sample differs by a
 * whole one and does not. Source: judgement of this library.
 */
export const TIME_TOLERANCE: number = 0.5;

/**
 * How far the rate of first and last stamp may be from the stated rate, as a fraction of it: clocks and stamps of few
 * digits differ by less, another rate by more. Source: judgement of this library.
 */
const RATE_TOLERANCE = 0.01;

/** An even grid of samples. */
export interface TimeGrid {
  readonly sampleRate: number;
  readonly startTime: number;
  readonly cautions: readonly Caution[];
}

/**
 * Finds the rate that time stamps were taken at: samples less one ÷ time between first and last, taken as a whole
 * number of hertz where the stamps, as coarse as they are, cannot tell the two apart. A stated rate counts, and the stamps
 * are checked by it as far as their digits allow.
 *
 * @param times - Stamps, s.
 * @param stated - The rate that file or caller states.
 * @param whereOf - Names the place of a stamp in the file.
 */
export function timeGrid(
  times: Float64Array,
  stated: number | null,
  whereOf: (index: number) => string,
): TimeGrid {
  const startTime = times[0] as number;
  const digit = stated !== null && standsStill(times) ? coarseDigit(times, stated) : 0;
  for (let i = 0; i < times.length; i++) {
    const step = (times[i] as number) - (times[i - 1] as number);
    if (Number.isNaN(times[i])) {
      refuse(`${whereOf(i)} has no time; every row needs one`, i, whereOf, "unreadable-file");
    }
    if (i > 0 && !(step > 0 || (step === 0 && digit > 0))) {
      const way = step === 0 ? "stands still" : "goes backwards";
      refuse(
        `${whereOf(i)}: time ${way}, from ${times[i - 1]} s to ${times[i]} s; it must rise from row to row`,
        i,
        whereOf,
      );
    }
  }
  if (stated !== null) {
    return { sampleRate: stated, startTime, cautions: checkStated(times, stated, digit, whereOf) };
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
  const coarseness = checkGrid(times, derived, whereOf);
  return { sampleRate: wholeRate(derived, coarseness, times.length - 1), startTime, cautions: [] };
}

/** Refuses stamps off the grid; gives the largest distance of a stamp from it, in periods. */
function checkGrid(times: Float64Array, rate: number, whereOf: (index: number) => string): number {
  const startTime = times[0] as number;
  let largest = 0;
  for (let i = 1; i < times.length; i++) {
    const periods = ((times[i] as number) - startTime) * rate;
    const off = Math.abs(periods - i);
    const step = ((times[i] as number) - (times[i - 1] as number)) * rate;
    if (off > TIME_TOLERANCE || Math.abs(step - 1) > TIME_TOLERANCE) {
      refuseUneven(
        times,
        i,
        `is ${step.toFixed(2)} sampling periods after the row above and ${off.toFixed(2)} off the even grid of the rate of ${Number(rate.toPrecision(6))} Hz that first and last time give; up to ${TIME_TOLERANCE} is allowed`,
        whereOf,
      );
    }
    if (off > largest) largest = off;
  }
  return largest;
}

/** Whether a stamp repeats the one before: then its last digit may be longer than a period. */
function standsStill(times: Float64Array): boolean {
  return times.some((time, i) => i > 0 && time === times[i - 1]);
}

/** The last digit of the stamps, s, where it is too coarse to tell samples apart; 0 where it is not. */
function coarseDigit(times: Float64Array, rate: number): number {
  for (let decimals = 0; decimals <= 6; decimals++) {
    const scale = 10 ** decimals;
    if (rate / scale <= TIME_TOLERANCE) return 0;
    if (times.every((time) => Math.abs(time * scale - Math.round(time * scale)) <= 1e-6)) return 1 / scale;
  }
  return 0;
}

/** Refuses stamps that cannot be of the stated rate, and says what they leave open. */
function checkStated(
  times: Float64Array,
  rate: number,
  digit: number,
  whereOf: (index: number) => string,
): Caution[] {
  const startTime = times[0] as number;
  const last = times.length - 1;
  const name = `the stated rate of ${rate} Hz`;
  const allowed = TIME_TOLERANCE + digit * rate;
  let largest = 0;
  for (let i = 1; i <= last; i++) {
    const step = ((times[i] as number) - (times[i - 1] as number)) * rate;
    if (Math.abs(step - 1) > allowed) {
      const off = `is ${step.toFixed(2)} sampling periods of ${name} after the row above; 1 is needed, within ${Number(allowed.toPrecision(3))}`;
      refuseUneven(times, i, off, whereOf);
    }
    largest = Math.max(largest, Math.abs(((times[i] as number) - startTime) * rate - i));
  }
  const span = ((times[last] as number) - startTime) * rate;
  if (Math.abs(span - last) > RATE_TOLERANCE * last + allowed) {
    refuse(
      `${whereOf(last)}: ${last} steps take ${span.toFixed(1)} sampling periods of ${name}, and ${(last * rate) / span} Hz is the rate of first and last time; correct the rate, or leave the time out with ignore`,
      last,
      whereOf,
    );
  }
  const cautions: Caution[] = [];
  if (largest > allowed) {
    cautions.push({
      code: "rate-over-time",
      message: `first and last time give ${Number(((last * rate) / span).toPrecision(6))} Hz; ${name} was used`,
      where: "time",
      values: { file: (last * rate) / span, option: rate },
    });
  }
  if (digit > 0) {
    cautions.push({
      code: "coarse-time",
      message: `times are written to ${digit} s, ${Number((digit * rate).toPrecision(3))} sampling periods: a sample missing within that cannot be seen`,
      where: "time",
      values: { digit },
    });
  }
  return cautions;
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
