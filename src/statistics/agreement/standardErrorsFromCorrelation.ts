import { requireNumber } from "../../units/index.js";

/** The three standard errors that a standard deviation and a reliability coefficient give. */
export interface StandardErrorsFromCorrelation {
  /** Of measurement: a trial about the subject's own level. */
  readonly measurement: number;
  /** Of estimate: the subject's own level about what a trial, drawn towards the mean, estimates. */
  readonly estimate: number;
  /** Of prediction: another trial about what a first one predicts. */
  readonly prediction: number;
}

/**
 * Gives the standard errors of measurement, estimate and prediction from a published standard deviation and reliability
 * coefficient.
 *
 * Formula: SD √(1 − R), SD √[R (1 − R)], SD √(1 − R²).
 * Units: that of the standard deviation.
 * Limits: for published tables without their data; with data take {@link standardErrorOfMeasurement}, since the three
 * depend on which coefficient R and which standard deviation are taken: on Weir's data the first is 7.3 or 7.1 where the mean
 * squares give 7.6.
 * Source: Weir 2005, J. Strength Cond. Res. 19:231, whose worked example (p. 236) they give.
 * @param sd - Standard deviation of all values, 0 or more.
 * @param correlation - Reliability coefficient R, from 0 to 1.
 * @throws GaitKineticsError `out-of-range`, `not-finite`, `wrong-type`: an argument outside its range.
 * @example
 * standardErrorsFromCorrelation(12.8, 0.9).measurement.toFixed(2) // "4.05"
 */
export function standardErrorsFromCorrelation(
  sd: number,
  correlation: number,
): StandardErrorsFromCorrelation {
  requireNumber("sd", sd, { from: 0 });
  requireNumber("correlation", correlation, { from: 0, to: 1 });
  return {
    measurement: sd * Math.sqrt(1 - correlation),
    estimate: sd * Math.sqrt(correlation * (1 - correlation)),
    prediction: sd * Math.sqrt((1 - correlation) * (1 + correlation)),
  };
}
