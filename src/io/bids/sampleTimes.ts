import { type Caution, fail, requireNumber } from "../../units/index.js";
import { fieldOf, type JsonObject } from "./readObject.js";

/**
 * How far a time stamp may lie from the even grid, in sampling periods; a missing sample differs by a whole one. The same
 * judgement as for tables of text.
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
  if (isEven(stamps, nominal)) return { sampleRate: nominal, startTime, cautions };
  const measured = (stamps.length - 1) / ((stamps.at(-1) as number) - startTime);
  if (measured > 0 && Number.isFinite(measured) && isEven(stamps, measured)) {
    return { sampleRate: measured, startTime, cautions: [rateCaution(nominal, measured)] };
  }
  const odd = firstOdd(stamps, nominal);
  fail(
    "uneven-time",
    `row ${odd + 1}: time ${stamps[odd]} s does not lie on the even grid of ${nominal} Hz that "SamplingFrequency" states, nor on any other; even the samples out first`,
    { argument: "motion", where: `row ${odd + 1}` },
  );
}

function rateCaution(nominal: number, measured: number): Caution {
  return {
    code: "sampling-frequency-differs",
    message: `"SamplingFrequency" is ${nominal} Hz, and the samples were taken at ${Number(measured.toPrecision(7))} Hz`,
    where: "SamplingFrequency",
    values: { nominal, measured },
  };
}

function isEven(stamps: Float64Array, rate: number): boolean {
  return firstOdd(stamps, rate) < 0;
}

/** The first stamp off the grid that begins at the first; −1 where all lie on it. */
function firstOdd(stamps: Float64Array, rate: number): number {
  const start = stamps[0] as number;
  return stamps.findIndex((time, i) => !(Math.abs((time - start) * rate - i) <= TOLERANCE));
}
