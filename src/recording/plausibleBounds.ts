import type { NumberBounds } from "../units/index.js";

/**
 * Bounds outside of which a number about runner or trial is taken for a mistake, most often of unit.
 * Source: judgement of this library, wide of every runner: the fastest stretch of a world-record 100 m is run at
 * 12.4 m/s, treadmills tilt to 0.4, hill races reach 0.6 (from memory).
 */
export const PLAUSIBLE_BOUNDS: {
  readonly mass: NumberBounds;
  readonly height: NumberBounds;
  readonly speed: NumberBounds;
  readonly grade: NumberBounds;
} = {
  mass: {
    above: 0,
    below: 500,
    unit: "kg",
    hint: "a larger number may be a weight in newtons; mass is weight ÷ 9.80665 m/s²",
  },
  height: { above: 0, below: 3, unit: "m", hint: "a larger number may be in centimetres" },
  speed: {
    from: 0,
    below: 13,
    unit: "m/s",
    hint: "a larger number may be in km/h, which is speed in m/s × 3.6; a belt's speed is positive",
  },
  grade: {
    from: -1,
    to: 1,
    hint: "rise over run, uphill positive: a slope of 5 % is 0.05",
  },
};
