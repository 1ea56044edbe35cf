import type {
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
  Samples,
  Seconds,
  StepsPerMinute,
} from "./quantity.js";

/** States that a number is a force in newtons. @example newtons(1500) // 1500 */
export const newtons = (value: number): Newtons => value;
/** States that a number is a mass in kilograms. @example kilograms(70) // 70 */
export const kilograms = (value: number): Kilograms => value;
/** States that a number is a length in metres. @example metres(1.78) // 1.78 */
export const metres = (value: number): Metres => value;
/** States that a number is a time in seconds. @example seconds(0.25) // 0.25 */
export const seconds = (value: number): Seconds => value;
/** States that a number is a frequency in hertz. @example hertz(1000) // 1000 */
export const hertz = (value: number): Hertz => value;
/** States that a number is a speed in metres per second. @example metresPerSecond(3.3) // 3.3 */
export const metresPerSecond = (value: number): MetresPerSecond => value;
/** States that a number is an acceleration in metres per second squared. @example metresPerSecondSquared(9.8) // 9.8 */
export const metresPerSecondSquared = (value: number): MetresPerSecondSquared => value;
/** States that a number is an impulse in newton seconds. @example newtonSeconds(17.9) // 17.9 */
export const newtonSeconds = (value: number): NewtonSeconds => value;
/** States that a number is a rate of loading in newtons per second. @example newtonsPerSecond(50000) // 50000 */
export const newtonsPerSecond = (value: number): NewtonsPerSecond => value;
/** States that a number is a moment of force in newton metres. @example newtonMetres(7) // 7 */
export const newtonMetres = (value: number): NewtonMetres => value;
/** States that a number is an energy in joules. @example joules(113) // 113 */
export const joules = (value: number): Joules => value;
/** States that a number is a step rate in steps per minute. @example stepsPerMinute(170) // 170 */
export const stepsPerMinute = (value: number): StepsPerMinute => value;
/** States that a number is a share of one. @example fraction(0.2) // 0.2 */
export const fraction = (value: number): Fraction => value;

/**
 * States the unit of an array of samples. The array is returned as it is: nothing is copied or converted.
 * @example samplesOf("N", new Float64Array([1, 2])).length // 2
 */
export const samplesOf = <U extends string>(_unit: U, values: Float64Array): Samples<U> => values;
