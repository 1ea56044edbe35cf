import {
  type Complete,
  type Hertz,
  type Kilograms,
  type Metres,
  requireNumber,
  type Samples,
  type Seconds,
  withDefaults,
} from "../units/index.js";
import { startAxis } from "./axisState.js";
import { placeAfter } from "./placeAfter.js";
import { requireSpan } from "./requireSpan.js";
import { sampleAt } from "./sampleAt.js";
import { velocityAfter } from "./velocityAfter.js";

/** The part of the span that {@link centreOfMassExcursion} looks at. */
export interface CentreOfMassExcursionOptions {
  /** Where to stop looking, such as the next contact; `null` for the end of the span. */
  readonly until?: Seconds | null | undefined;
}

/** The whole span. */
export const CENTRE_OF_MASS_EXCURSION_DEFAULTS: Complete<CentreOfMassExcursionOptions> = { until: null };

/**
 * Gives how far the centre of mass moves along one axis, from the force along it.
 *
 * Formula: max(x) − min(x), x as in {@link centreOfMassMotion} with a mean velocity of 0 over `from` to `to`.
 * Units: N, s and kg in; m out.
 * Limits: `from` to `to` must be whole strides of steady gait. Read at samples and at the ends.
 * Source: law (Newton's second).
 * @param samples - Force along the axis, N.
 * @param sampleRate - Above 0.
 * @param from - Start of the stride, from the first sample.
 * @param to - End of the stride, above `from`, within the samples.
 * @param mass - Above 0; the one by force leaves no drift.
 * @param options - Where to stop looking; {@link CENTRE_OF_MASS_EXCURSION_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: the span does not rise within the samples, `until` lies outside it, mass not
 * above 0.
 * @example
 * centreOfMassExcursion(new Float64Array([0, 70, 0, -70, 0]), 5, 0, 0.8, 70); // 0.02667
 */
export function centreOfMassExcursion(
  samples: Samples<"N">,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
  mass: Kilograms,
  options: CentreOfMassExcursionOptions = CENTRE_OF_MASS_EXCURSION_DEFAULTS,
): Metres {
  const until = withDefaults(CENTRE_OF_MASS_EXCURSION_DEFAULTS, options).until ?? to;
  requireSpan(samples, sampleRate, from, to);
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  requireNumber("until", until, { above: from, to, unit: "s" });
  const axis = startAxis(samples, sampleRate, from, to, mass, 0);
  const { meanForce, perMass } = axis;
  let { acceleration, velocity, position } = axis;
  let lowest = 0;
  let highest = 0;
  const interval = 1 / sampleRate;
  const end = until * sampleRate;
  const atEnd = (sampleAt(samples, end) - meanForce) * perMass;
  let before = from * sampleRate;
  for (let i = Math.floor(before) + 1; before < end; i++) {
    const place = Math.min(i, end);
    const duration = (place - before) * interval;
    const after = i < end ? ((samples[i] as number) - meanForce) * perMass : atEnd;
    position = placeAfter(position, velocity, acceleration, after, duration);
    velocity = velocityAfter(velocity, acceleration, after, duration);
    acceleration = after;
    if (position < lowest) lowest = position;
    if (position > highest) highest = position;
    before = place;
  }
  return highest - lowest;
}
