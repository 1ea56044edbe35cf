import type { Step } from "../events/index.js";
import { integralBetween } from "../filters/index.js";
import type { GroundReaction } from "../force/index.js";
import type { Caution } from "../units/index.js";

/** Stated mass and mass by force farther apart than this are said. */
export const MASS_TOLERANCE = 0.01;
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
export function balanceCautions(ground: GroundReaction, steps: readonly Step[]): Caution[] {
  const { forward, up, right } = ground.force;
  const total = { forward: 0, up: 0, right: 0 };
  let until = Number.NEGATIVE_INFINITY;
  for (const { contact, nextSameSide } of steps) {
    if (nextSameSide === undefined || contact.initialContact < until) continue;
    until = nextSameSide.initialContact;
    const impulse = (samples: Float64Array | undefined) =>
      samples === undefined ? 0 : integralBetween(samples, ground.sampleRate, contact.initialContact, until);
    total.forward += impulse(forward);
    total.up += impulse(up);
    total.right += impulse(right);
  }
  if (!(total.up > 0)) return [];
  const cautions: Caution[] = [];
  const forwardShare = total.forward / total.up - (ground.grade ?? 0);
  const rightShare = total.right / total.up;
  if (Math.abs(forwardShare) > FORWARD_BALANCE_TOLERANCE) {
    cautions.push({
      code: "forward-unbalanced",
      message: `over whole strides the mean forward force is ${(100 * forwardShare).toFixed(2)} % of the vertical${ground.grade ? " beyond what the grade explains" : ""}: a slope, a tilted plate, belt drive, wind, or a runner who speeds up or slows down`,
      where: "forward",
      values: { share: forwardShare },
    });
  }
  if (Math.abs(rightShare) > SIDEWAYS_BALANCE_TOLERANCE) {
    cautions.push({
      code: "sideways-unbalanced",
      message: `over whole strides the mean sideways force is ${(100 * rightShare).toFixed(2)} % of the vertical: a tilted plate, an axis out of line, or a curved path`,
      where: "right",
      values: { share: rightShare },
    });
  }
  return cautions;
}

/** Cautions on the recording itself: sampling rate, number of strides. */
export function recordingCautions(
  { sampleRate }: GroundReaction,
  strides: number,
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
      message: `${strides === 1 ? "1 stride was" : `${strides} strides were`} recorded; with fewer than ${FEW_STRIDES} the spread between strides is poorly known`,
      values: { strides },
    });
  }
  return cautions;
}
