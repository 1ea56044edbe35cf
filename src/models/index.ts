export {
  CENTRE_OF_MASS_EXCURSION_DEFAULTS,
  type CentreOfMassExcursionOptions,
  centreOfMassExcursion,
} from "./centreOfMassExcursion.js";
export {
  type AxisMotion,
  CENTRE_OF_MASS_MOTION_DEFAULTS,
  type CentreOfMassMotion,
  type CentreOfMassMotionOptions,
  centreOfMassMotion,
} from "./centreOfMassMotion.js";
export {
  EXTERNAL_WORK_DEFAULTS,
  type ExternalWork,
  type ExternalWorkOptions,
  externalWork,
  type WorkParts,
} from "./externalWork.js";
export type { ForceRecord } from "./forceRecord.js";
export { halfSineAgreement } from "./halfSineAgreement.js";
export { MASS_FROM_FORCE_DEFAULTS, type MassFromForceOptions, massFromForce } from "./massFromForce.js";
