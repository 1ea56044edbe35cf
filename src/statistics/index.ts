export {
  BLAND_ALTMAN_DEFAULTS,
  type BlandAltman,
  type BlandAltmanOptions,
  blandAltman,
} from "./agreement/blandAltman.js";
export { CORRELATION_FORMS, type CorrelationForm } from "./agreement/correlationForm.js";
export {
  INTRACLASS_CORRELATION_DEFAULTS,
  type IntraclassCorrelation,
  type IntraclassCorrelationOptions,
  intraclassCorrelation,
} from "./agreement/intraclassCorrelation.js";
export { type MeanSquares, meanSquares } from "./agreement/meanSquares.js";
export {
  SMALLEST_DETECTABLE_CHANGE_DEFAULTS,
  type SmallestDetectableChangeOptions,
  smallestDetectableChange,
} from "./agreement/smallestDetectableChange.js";
export {
  STANDARD_ERROR_OF_MEASUREMENT_DEFAULTS,
  type StandardErrorOfMeasurement,
  type StandardErrorOfMeasurementOptions,
  standardErrorOfMeasurement,
} from "./agreement/standardErrorOfMeasurement.js";
export {
  type StandardErrorsFromCorrelation,
  standardErrorsFromCorrelation,
} from "./agreement/standardErrorsFromCorrelation.js";
export type { AgreementTable } from "./agreement/table.js";
export { type AbcInterval, abcInterval } from "./bootstrap/abcInterval.js";
export {
  BLOCK_BOOTSTRAP_DEFAULTS,
  type BlockBootstrap,
  type BlockBootstrapOptions,
  blockBootstrap,
} from "./bootstrap/blockBootstrap.js";
export {
  BOOTSTRAP_INTERVAL_DEFAULTS,
  type BootstrapInterval,
  type BootstrapIntervalOptions,
  type BootstrapKind,
  bootstrapInterval,
} from "./bootstrap/bootstrapInterval.js";
export {
  BOOTSTRAP_DEFAULTS,
  type BootstrapOptions,
  bootstrapReplicates,
} from "./bootstrap/bootstrapReplicates.js";
export { type Jackknife, jackknife } from "./bootstrap/jackknife.js";
export { resampleIndices } from "./bootstrap/resampleIndices.js";
export type { Statistic } from "./bootstrap/statistic.js";
export {
  BOOTSTRAP_DIFFERENCE_DEFAULTS,
  type BootstrapDifference,
  type BootstrapDifferenceOptions,
  bootstrapDifference,
} from "./bootstrapDifference.js";
export { type DifferenceInterval, differenceInterval } from "./differenceInterval.js";
export { chiSquareProbability } from "./distributions/chiSquareProbability.js";
export { chiSquareQuantile } from "./distributions/chiSquareQuantile.js";
export { fProbability } from "./distributions/fProbability.js";
export { fQuantile } from "./distributions/fQuantile.js";
export { normalProbability } from "./distributions/normalProbability.js";
export { normalQuantile } from "./distributions/normalQuantile.js";
export type { Tail } from "./distributions/requireTail.js";
export { effectiveNumber } from "./effectiveNumber.js";
export { CORRELATION_DEFAULTS, type CorrelationOptions, effectiveNumberOf } from "./effectiveNumberOf.js";
export {
  effectiveNumbersOf,
  SHARED_CORRELATION_DEFAULTS,
  type SharedCorrelationOptions,
} from "./effectiveNumbersOf.js";
export { cohensD } from "./effects/cohensD.js";
export { type EffectSizesFromT, effectSizesFromT } from "./effects/effectSizesFromT.js";
export { glassDelta } from "./effects/glassDelta.js";
export { hedgesCorrection } from "./effects/hedgesCorrection.js";
export { type PairedEffectSizes, pairedEffectSizes } from "./effects/pairedEffectSizes.js";
export { pooledStandardDeviation } from "./effects/pooledStandardDeviation.js";
export type { Field, FieldRule, GaussianField, StudentField, VarianceRatioField } from "./fields/field.js";
export {
  FIELD_CLUSTER_DEFAULTS,
  type FieldClusterOptions,
  fieldClusterProbability,
} from "./fields/fieldClusterProbability.js";
export { type FieldCluster, fieldClusters } from "./fields/fieldClusters.js";
export {
  FIELD_EXCEEDANCE_DEFAULTS,
  type FieldExceedanceOptions,
  fieldExceedance,
} from "./fields/fieldExceedance.js";
export {
  FIELD_PERMUTATION_DEFAULTS,
  type FieldPermutation,
  type FieldPermutationOptions,
  fieldPermutation,
} from "./fields/fieldPermutation.js";
export { fieldSmoothness } from "./fields/fieldSmoothness.js";
export {
  FIELD_THRESHOLD_DEFAULTS,
  type FieldThreshold,
  type FieldThresholdOptions,
  fieldThreshold,
} from "./fields/fieldThreshold.js";
export {
  FIELD_T_TEST_DEFAULTS,
  type FieldTTest,
  type FieldTTestOptions,
  fieldTTest,
} from "./fields/fieldTTest.js";
export type { Curves } from "./fields/requireCurves.js";
export { hedgesG } from "./hedgesG.js";
export {
  type AnalysisOfVariance,
  analysisOfVariance,
  type VariancePart,
} from "./hypothesis/analysisOfVariance.js";
export {
  DIFFERENCE_TEST_DEFAULTS,
  type DifferenceTestOptions,
  type EquivalenceTest,
  equivalenceTest,
  type OneSidedTest,
  type Pairing,
} from "./hypothesis/equivalenceTest.js";
export { holmAdjusted } from "./hypothesis/holmAdjusted.js";
export { type LinearRegression, linearRegression } from "./hypothesis/linearRegression.js";
export {
  NON_INFERIORITY_TEST_DEFAULTS,
  type NonInferiorityTest,
  type NonInferiorityTestOptions,
  nonInferiorityTest,
} from "./hypothesis/nonInferiorityTest.js";
export { oneSampleTTest } from "./hypothesis/oneSampleTTest.js";
export { pairedTTest } from "./hypothesis/pairedTTest.js";
export type { Sample, SampleSummary } from "./hypothesis/sample.js";
export { T_TEST_DEFAULTS, type TestSide, type TTest, type TTestOptions } from "./hypothesis/tTest.js";
export {
  TWO_SAMPLE_T_TEST_DEFAULTS,
  type TwoSampleTTestOptions,
  twoSampleTTest,
  type Variances,
} from "./hypothesis/twoSampleTTest.js";
export { lagOneCorrelation } from "./lagOneCorrelation.js";
export { mean } from "./mean.js";
export { type Interval, type MeanInterval, meanInterval } from "./meanInterval.js";
export { median } from "./median.js";
export { type GroupedDifference, groupedDifference } from "./mixed/groupedDifference.js";
export {
  NESTED_MODEL_DEFAULTS,
  type NestedEffect,
  type NestedLayout,
  type NestedModel,
  type NestedModelOptions,
  nestedModel,
} from "./mixed/nestedModel.js";
export {
  RANDOM_EFFECTS_MEAN_DEFAULTS,
  type RandomEffectsMean,
  type RandomEffectsMeanOptions,
  randomEffectsMean,
} from "./mixed/randomEffectsMean.js";
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
