import type { SeededRandom } from "../statistics/index.js";
import type { Complete } from "../units/index.js";
import type { SyntheticDecimals, SyntheticLevels, SyntheticNoise } from "./options.js";
import type { SampledChannels } from "./sampleSteps.js";

/** What the measuring adds to the truth. */
export interface Measuring {
  readonly noise: Complete<SyntheticNoise>;
  readonly offset: Complete<SyntheticLevels>;
  readonly drift: Complete<SyntheticLevels>;
  readonly decimals: Complete<SyntheticDecimals> | null;
  readonly weight: number;
  readonly random: SeededRandom;
}

/**
 * Makes of true channels what a plate would record: noise, offset, linear drift and rounding, in this order.
 *
 * Limits: the noise of the centre of pressure is that of a moment: its SD is the stated one times body weight ÷ true
 * vertical force.
 */
export function measure(truth: SampledChannels, measuring: Measuring): SampledChannels {
  const { noise, offset, drift, decimals, weight, random } = measuring;
  const { up } = truth;
  const channel = (name: keyof SampledChannels, sd: number, digits: number | null, byLoad: boolean) => {
    const samples = truth[name].slice();
    const rise = samples.length > 1 ? drift[name] / (samples.length - 1) : 0;
    const scale = digits === null ? null : 10 ** digits;
    for (let i = 0; i < samples.length; i++) {
      let value = samples[i] as number;
      if (Number.isNaN(value)) continue;
      if (sd > 0) value += (byLoad ? (sd * weight) / (up[i] as number) : sd) * random.normal();
      value += offset[name] + rise * i;
      samples[i] = scale === null ? value : Math.round(value * scale) / scale + 0;
    }
    return samples;
  };
  const digits = decimals ?? { force: null, cop: null, freeMoment: null };
  return {
    forward: channel("forward", noise.force, digits.force, false),
    up: channel("up", noise.force, digits.force, false),
    right: channel("right", noise.force, digits.force, false),
    cop_forward: channel("cop_forward", noise.cop, digits.cop, true),
    cop_right: channel("cop_right", noise.cop, digits.cop, true),
    free_moment: channel("free_moment", noise.freeMoment, digits.freeMoment, false),
  };
}
