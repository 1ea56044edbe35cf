export type { Caution } from "./caution.js";
export { allFinite, type NumberBounds, requireFiniteSamples, requireNumber, requireOneOf } from "./check.js";
export {
  fraction,
  hertz,
  joules,
  kilograms,
  metres,
  metresPerSecond,
  metresPerSecondSquared,
  newtonMetres,
  newtonSeconds,
  newtons,
  newtonsPerSecond,
  samplesOf,
  seconds,
  stepsPerMinute,
} from "./constructors.js";
export { type ErrorCode, type ErrorDetails, fail, GaitKineticsError, isGaitKineticsError } from "./error.js";
export { convert, type Dimension, FACTORS, type KnownUnit, type UnitFactor, unitFactor } from "./factors.js";
export { bodyWeight, STANDARD_GRAVITY } from "./gravity.js";
export type {
  Fraction,
  Hertz,
  Joules,
  Kilograms,
  Metres,
  MetresPerSecond,
  MetresPerSecondSquared,
  NewtonMetres,
  NewtonSeconds,
  Newtons,
  NewtonsPerSecond,
  Quantity,
  Samples,
  Seconds,
  StepsPerMinute,
} from "./quantity.js";
export { VERSION } from "./version.js";
export { type Complete, withDefaults } from "./withDefaults.js";
