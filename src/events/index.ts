export type { Contact, Step } from "./contact.js";
export { detectContacts } from "./detectContacts.js";
export {
  DETECT_EVENTS_DEFAULTS,
  type DetectEventsOptions,
  detectEvents,
  type Events,
  LEAST_THRESHOLD,
  THRESHOLD_NOISE_FACTOR,
} from "./detectEvents.js";
export type { SideMethod } from "./sides.js";
export { LONGEST_STEP, medianStepTime, stepsOf } from "./stepsOf.js";
export { underFoot } from "./underFoot.js";
