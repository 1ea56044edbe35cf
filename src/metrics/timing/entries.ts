import type { Metric } from "../metric.js";
import { aerialTime } from "./aerialTime.js";
import { brakingTime } from "./brakingTime.js";
import { cadence } from "./cadence.js";
import { contactTime } from "./contactTime.js";
import { dutyFactor } from "./dutyFactor.js";
import { propulsiveTime } from "./propulsiveTime.js";
import { stepTime } from "./stepTime.js";
import { strideTime } from "./strideTime.js";

/** Entry of {@link contactTime}. */
export const CONTACT_TIME: Metric = {
  id: "contactTime",
  name: "contact time",
  symbol: "t_c",
  unit: "s",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Time from initial contact to toe-off, both at the threshold of the vertical force.",
  source: "Common practice.",
  needs: [],
  compute: contactTime,
};

/** Entry of {@link aerialTime}. */
export const AERIAL_TIME: Metric = {
  id: "aerialTime",
  name: "aerial time",
  symbol: "t_f",
  unit: "s",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Time from toe-off to the next initial contact, of the other foot.",
  source: "Common practice.",
  gaits: ["running"],
  needs: ["next"],
  nullWhen: { code: "no-flight", message: "the next contact begins before toe-off" },
  compute: aerialTime,
};

/** Entry of {@link stepTime}. */
export const STEP_TIME: Metric = {
  id: "stepTime",
  name: "step time",
  symbol: "t_step",
  unit: "s",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Time from initial contact to the next one, of the other foot.",
  source: "Common practice.",
  needs: ["next"],
  compute: stepTime,
};

/** Entry of {@link strideTime}. */
export const STRIDE_TIME: Metric = {
  id: "strideTime",
  name: "stride time",
  symbol: "t_stride",
  unit: "s",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Time from initial contact to the next one of the same foot.",
  source: "Common practice.",
  needs: ["nextSameSide"],
  compute: strideTime,
};

/** Entry of {@link cadence}. */
export const CADENCE: Metric = {
  id: "cadence",
  name: "cadence",
  symbol: "f_step",
  unit: "steps/min",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Steps per minute: 60 divided by step time.",
  source: "Common practice.",
  needs: ["next"],
  compute: cadence,
};

/** Entry of {@link dutyFactor}. */
export const DUTY_FACTOR: Metric = {
  id: "dutyFactor",
  name: "duty factor",
  symbol: "β",
  unit: "1",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Contact time divided by stride time.",
  source: "Common practice.",
  needs: ["nextSameSide"],
  compute: dutyFactor,
};

/** Entry of {@link brakingTime}. */
export const BRAKING_TIME: Metric = {
  id: "brakingTime",
  name: "braking time",
  symbol: "t_brake",
  unit: "s",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Time from initial contact to the last crossing of the forward force from − to +.",
  source: "Common practice.",
  needs: ["forward", "oneFoot"],
  nullWhen: { code: "no-crossing", message: "the forward force does not turn from braking to propulsion" },
  compute: brakingTime,
};

/** Entry of {@link propulsiveTime}. */
export const PROPULSIVE_TIME: Metric = {
  id: "propulsiveTime",
  name: "propulsive time",
  symbol: "t_prop",
  unit: "s",
  family: "timing",
  component: "none",
  moreLoad: "none",
  definition: "Time from the last crossing of the forward force from − to + to toe-off.",
  source: "Common practice.",
  needs: ["forward", "oneFoot"],
  nullWhen: { code: "no-crossing", message: "the forward force does not turn from braking to propulsion" },
  compute: propulsiveTime,
};
