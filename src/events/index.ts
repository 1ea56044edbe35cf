export type { Contact, Step } from "./contact.js";
export { detectContacts } from "./detectContacts.js";
export {
  DETECT_EVENTS_DEFAULTS,
  type DetectEventsOptions,
  detectEvents,
  type Events,
} from "./detectEvents.js";
export {
  GAITS,
  type Gait,
  LEAST_WALKING_CONTACT,
  LONGEST_FLIGHT,
  LONGEST_RUNNING_FLIGHT,
  QUIET,
  WALKING_PEAK_TO_MEAN,
} from "./gait/gait.js";
export {
  FOOT_ANGULAR_RATE_DEFAULTS,
  type FootAngularRateOptions,
  footAngularRateEvents,
} from "./inertial/footAngularRateEvents.js";
export { type InertialEvents, type InertialSettings, LOW_INERTIAL_RATE } from "./inertial/inertialEvents.js";
export {
  PEAK_TIBIAL_ACCELERATION_DEFAULTS,
  type PeakTibialAccelerationOptions,
  peakTibialAcceleration,
  type TibialPeak,
} from "./inertial/peakTibialAcceleration.js";
export {
  TIBIAL_ACCELERATION_DEFAULTS,
  type TibialAccelerationOptions,
  type TibialContacts,
  tibialAccelerationContacts,
} from "./inertial/tibialAccelerationContacts.js";
export {
  DINGWELL_KNEE_EXTENSION_DEFAULTS,
  dingwellKneeExtensionEvents,
} from "./markers/dingwellKneeExtensionEvents.js";
export { FELLIN_DEFAULTS, type FellinOptions, fellinEvents } from "./markers/fellinEvents.js";
export {
  HANDSAKER_ACCELERATION_DEFAULTS,
  handsakerAccelerationEvents,
} from "./markers/handsakerAccelerationEvents.js";
export type {
  KinematicEvents,
  KinematicMethod,
  KinematicSettings,
  LegMarkers,
  MarkerChoice,
  MarkerFilterOptions,
  SegmentMarkers,
} from "./markers/kinematicEvents.js";
export {
  O_CONNOR_VELOCITY_DEFAULTS,
  type OConnorVelocityOptions,
  oConnorVelocityEvents,
} from "./markers/oConnorVelocityEvents.js";
export {
  type FootEvents,
  type KinematicContact,
  PAIR_KINEMATIC_EVENTS_DEFAULTS,
  type PairedEvents,
  type PairKinematicEventsOptions,
  pairKinematicEvents,
} from "./markers/pairKinematicEvents.js";
export {
  type FeetMarkers,
  type MarkedSides,
  SIDES_FROM_MARKERS_DEFAULTS,
  type SidesFromMarkersOptions,
  sidesFromMarkers,
} from "./markers/sidesFromMarkers.js";
export { ZENI_COORDINATE_DEFAULTS, zeniCoordinateEvents } from "./markers/zeniCoordinateEvents.js";
export {
  ZENI_VELOCITY_DEFAULTS,
  type ZeniVelocityOptions,
  zeniVelocityEvents,
} from "./markers/zeniVelocityEvents.js";
export type { SideMethod } from "./sides.js";
export type { Span } from "./spanBetween.js";
export { LONGEST_STEP, medianStepTime, stepsOf } from "./stepsOf.js";
export { LEAST_THRESHOLD, THRESHOLD_NOISE_FACTOR, type ThresholdRule } from "./threshold.js";
export { underFoot } from "./underFoot.js";
