import type { GroundReaction } from "../force/index.js";
import type { Caution, Kilograms } from "../units/index.js";
import type { Balance, StrideBalance } from "./strideBalance.js";

/** Stated mass and mass by force farther apart than this are said. */
export const MASS_TOLERANCE = 0.01;
/** No person who walks weighs less. A judgement. */
const LEAST_MASS: Kilograms = 5;
/** Mean forward force over whole strides, as a share of the vertical, beyond what the grade explains. */
export const FORWARD_BALANCE_TOLERANCE = 0.005;
/** Mean sideways force over whole strides, as a share of the vertical. */
export const SIDEWAYS_BALANCE_TOLERANCE = 0.003;
/** Sampling rate below which loading rates depend on where the samples fall, Hz. Common practice. */
export const LOADING_RATE_SAMPLE_RATE = 1000;
/** Strides below which the spread between strides is poorly known. */
export const FEW_STRIDES = 20;

/** Cautions on the runner's mass: not stated, or at odds with the force. */
export function massCautions(stated: number | null, byForce: number | null): Caution[] {
  if (byForce === null) return [];
  if (byForce < LEAST_MASS) {
    return [
      {
        code: "mass-implausible",
        message: `the mean vertical force over whole strides carries ${byForce.toPrecision(2)} kg, less than any person weighs: is the force in N, and is one contact followed by the next? ${stated === null ? "No number per body weight or kilogram means anything" : `The stated ${stated.toFixed(1)} kg normalise`}`,
        values: { massByForce: byForce, mass: stated },
      },
    ];
  }
  if (stated === null) {
    return [
      {
        code: "mass-by-force",
        message: `the mass was not stated; ${byForce.toFixed(1)} kg follows from the mean vertical force over whole strides and serves for normalising too`,
        values: { massByForce: byForce },
      },
    ];
  }
  const apart = byForce / stated - 1;
  if (Math.abs(apart) <= MASS_TOLERANCE) return [];
  return [
    {
      code: "mass-disagrees",
      message: `the mean vertical force over whole strides carries ${byForce.toFixed(1)} kg, ${Math.abs(100 * apart).toFixed(1)} % ${apart < 0 ? "less" : "more"} than the stated ${stated.toFixed(1)} kg: scale error, drift, slope, or another load than the body's`,
      values: { massByForce: byForce, mass: stated, percent: 100 * apart },
    },
  ];
}

/** Cautions on the balance of horizontal force over whole strides. */
export function balanceCautions(balance: StrideBalance | null, { grade }: GroundReaction): Caution[] {
  const cautions: Caution[] = [];
  const { forward, right } = balance ?? {};
  if (forward !== undefined && Math.abs(forward.share) > FORWARD_BALANCE_TOLERANCE) {
    cautions.push({
      code: "forward-unbalanced",
      message: `over whole strides the mean forward force is ${percent(forward)} of the vertical${grade ? " beyond what the grade explains" : ""}: a slope, a tilted plate, belt drive, wind, or a runner who speeds up or slows down`,
      where: "forward",
      values: valuesOf(forward),
    });
  }
  if (right !== undefined && Math.abs(right.share) > SIDEWAYS_BALANCE_TOLERANCE) {
    cautions.push({
      code: "sideways-unbalanced",
      message: `over whole strides the mean sideways force is ${percent(right)} of the vertical: a tilted plate, an axis out of line, or a curved path`,
      where: "right",
      values: valuesOf(right),
    });
  }
  return cautions;
}

function percent({ share, interval }: Balance): string {
  const of = (part: number) => (100 * part).toFixed(2);
  return interval === null
    ? `${of(share)} %`
    : `${of(share)} % (95 % interval ${of(interval.low)} to ${of(interval.high)} %)`;
}

function valuesOf({ share, interval }: Balance): NonNullable<Caution["values"]> {
  return interval === null ? { share } : { share, low: interval.low, high: interval.high };
}

/** Pairs of successive contacts, and whether any of them is part of a whole stride, to the same foot's next contact. */
interface Pairs {
  readonly pairs: number;
  readonly whole: boolean;
}

/** Cautions on the recording itself: sampling rate, number of strides. */
export function recordingCautions(
  { sampleRate }: GroundReaction,
  { pairs: strides, whole }: Pairs,
  metricIds: readonly string[],
): Caution[] {
  const cautions: Caution[] = [];
  const rates = metricIds.filter((id) => /LoadingRate$/.test(id));
  if (sampleRate < LOADING_RATE_SAMPLE_RATE && rates.length > 0) {
    cautions.push({
      code: "low-sample-rate",
      message: `the sampling rate of ${sampleRate.toFixed(0)} Hz is below ${LOADING_RATE_SAMPLE_RATE} Hz: loading rates and the impact peak depend on where the samples fall`,
      where: rates.join(", "),
      values: { sampleRate },
    });
  }
  if (strides === 0) {
    cautions.push({
      code: "no-stride",
      message:
        "the recording holds no two successive contacts: the summary counts contacts, and nothing is known of the spread between strides",
    });
  } else if (strides < FEW_STRIDES) {
    cautions.push({
      code: "few-strides",
      message: `${recorded(strides, whole)} recorded; with fewer than ${FEW_STRIDES} the spread between strides is poorly known`,
      values: { strides },
    });
  }
  return cautions;
}

function recorded(pairs: number, whole: boolean): string {
  const [one, several, none] = whole
    ? ["stride", "strides", ""]
    : ["pair of contacts", "pairs of contacts", ", and no whole stride,"];
  return pairs === 1 ? `1 ${one}${none} was` : `${pairs} ${several}${none} were`;
}
