export { type DifferenceInterval, differenceInterval } from "./differenceInterval.js";
export { effectiveNumber } from "./effectiveNumber.js";
export { CORRELATION_DEFAULTS, type CorrelationOptions, effectiveNumberOf } from "./effectiveNumberOf.js";
export {
  effectiveNumbersOf,
  SHARED_CORRELATION_DEFAULTS,
  type SharedCorrelationOptions,
} from "./effectiveNumbersOf.js";
export { hedgesG } from "./hedgesG.js";
export { lagOneCorrelation } from "./lagOneCorrelation.js";
export { mean } from "./mean.js";
export { type Interval, type MeanInterval, meanInterval } from "./meanInterval.js";
export { median } from "./median.js";
export { quantile } from "./quantile.js";
export { type RatioInterval, ratioInterval } from "./ratioInterval.js";
export type { Values } from "./requireValues.js";
export { type SeededRandom, seededRandom } from "./seededRandom.js";
export { standardDeviation } from "./standardDeviation.js";
export { studentTProbability } from "./studentTProbability.js";
export { studentTQuantile } from "./studentTQuantile.js";
export { symmetryAngle } from "./symmetry/symmetryAngle.js";
export {
  SYMMETRY_INDEX_DEFAULTS,
  SYMMETRY_REFERENCES,
  type SymmetryIndexOptions,
  type SymmetryReference,
  symmetryIndex,
} from "./symmetry/symmetryIndex.js";
export { symmetryRatio } from "./symmetry/symmetryRatio.js";
