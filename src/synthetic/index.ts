export { centreOfMassAt } from "./centreOfMassAt.js";
export { contactAtThreshold } from "./contactAtThreshold.js";
export { type DemoRecordings, demoRecordings } from "./demoRecordings.js";
export { forceAt } from "./forceAt.js";
export {
  SYNTHETIC_DECIMALS_DEFAULTS,
  SYNTHETIC_LEVELS_DEFAULTS,
  SYNTHETIC_NOISE_DEFAULTS,
  SYNTHETIC_PLACE_DEFAULTS,
  SYNTHETIC_RUN_DEFAULTS,
  SYNTHETIC_STANCE_DEFAULTS,
  SYNTHETIC_VARIABILITY_DEFAULTS,
  type SyntheticDecimals,
  type SyntheticLevels,
  type SyntheticNoise,
  type SyntheticPlace,
  type SyntheticRunOptions,
  type SyntheticStance,
  type SyntheticVariability,
} from "./options.js";
export type { Stance } from "./stance.js";
export type { Motion, Vector } from "./stanceMotion.js";
export { type SyntheticRun, syntheticRun } from "./syntheticRun.js";
export type { SyntheticTruth, TrueContact, TrueValues } from "./truth.js";
