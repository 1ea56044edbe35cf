import { type Caution, fail, requireNumber } from "../../units/index.js";
import { fieldOf, type JsonObject } from "./readObject.js";

/**
 * How far a time stamp may lie from the even grid, and two successive ones from one period apart, in sampling periods; a missing
 * sample differs by a whole one. The same judgement as for tables of text.
 */
const TOLERANCE = 0.5;
/** Share by which the effective rate may differ from the stated one before it is said. A judgement. */
const RATE_TOLERANCE = 0.001;

/** When the samples were taken. */
export interface SampleTimes {
  readonly sampleRate: number;
  readonly startTime: number;
  readonly cautions: readonly Caution[];
}

/** The rate that a sidecar states. */
export function samplingFrequency(sidecar: JsonObject, argument: string): number {
  const rate = fieldOf(sidecar, "SamplingFrequency");
  if (rate === undefined) {
    fail("missing-value", `${argument} has no "SamplingFrequency", which the standard requires, in Hz`, {
      argument,
      where: "SamplingFrequency",
    });
  }
  return requireNumber("SamplingFrequency", rate, { above: 0, unit: "Hz" });
}

/** Rate and start, by the sidecar and, where there are any, the time stamps, s. */
export function sampleTimes(
  sidecar: JsonObject,
  argument: string,
  stamps: Float64Array | null,
  ownStart: number,
): SampleTimes {
  const nominal = samplingFrequency(sidecar, argument);
  const effective = fieldOf(sidecar, "SamplingFrequencyEffective");
  const cautions =
    typeof effective === "number" && Math.abs(effective / nominal - 1) > RATE_TOLERANCE
      ? [rateCaution(nominal, effective)]
      : [];
  if (stamps === null) return { sampleRate: nominal, startTime: ownStart, cautions };
  const startTime = stamps[0] as number;
  const blank = stamps.findIndex(Number.isNaN);
  if (blank >= 0) refuse(blank, "it has no time; every row needs one");
  const odd = firstOdd(stamps, nominal);
  if (odd < 0) return { sampleRate: nominal, startTime, cautions };
  const measured = (stamps.length - 1) / ((stamps.at(-1) as number) - startTime);
  if (measured > 0 && Number.isFinite(measured) && firstOdd(stamps, measured) < 0) {
    return { sampleRate: measured, startTime, cautions: [rateCaution(nominal, measured)] };
  }
  const time = stamps[odd] as number;
  const step = (time - (stamps[odd - 1] ?? Number.NaN)) * nominal;
  const off = (time - startTime) * nominal - odd;
  refuse(
    odd,
    `time ${time} s is ${step.toFixed(2)} sampling periods after the row above, and ${off.toFixed(2)} off the even grid of ${nominal} Hz that "SamplingFrequency" states; up to ${TOLERANCE} is allowed of 1 and of 0, and the rate of first and last time fits no better: even the samples out first`,
  );
}

function refuse(index: number, what: string): never {
  const where = `row ${index + 1}`;
  fail("uneven-time", `${where}: ${what}`, { argument: "motion", where });
}

function rateCaution(nominal: number, measured: number): Caution {
  return {
    code: "sampling-frequency-differs",
    message: `"SamplingFrequency" is ${nominal} Hz, and the samples were taken at ${Number(measured.toPrecision(7))} Hz`,
    where: "SamplingFrequency",
    values: { nominal, measured },
  };
}

/** The first stamp that is off the grid which begins at the first, or not one period after the one before; −1 where none is. */
function firstOdd(stamps: Float64Array, rate: number): number {
  const start = stamps[0] as number;
  return stamps.findIndex((time, i) => {
    const step = i === 0 ? 1 : (time - (stamps[i - 1] as number)) * rate;
    return !(Math.abs((time - start) * rate - i) <= TOLERANCE && Math.abs(step - 1) <= TOLERANCE);
  });
}
