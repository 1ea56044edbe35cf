import type { Metric } from "../metric.js";
import { elasticEnergy } from "./elasticEnergy.js";
import { forceGenerationCost } from "./forceGenerationCost.js";
import { halfSineFit } from "./halfSineFit.js";
import { legStiffness } from "./legStiffness.js";
import { positiveExternalWork } from "./positiveExternalWork.js";
import { positiveWorkForward } from "./positiveWorkForward.js";
import { positiveWorkLateral } from "./positiveWorkLateral.js";
import { positiveWorkVertical } from "./positiveWorkVertical.js";
import { pushToBrakeTimeRatio } from "./pushToBrakeTimeRatio.js";
import { verticalStiffness } from "./verticalStiffness.js";

/** Entry of {@link positiveWorkVertical}. */
export const POSITIVE_WORK_VERTICAL: Metric = {
  id: "positiveWorkVertical",
  name: "positive vertical work",
  symbol: "W_v⁺",
  unit: "J",
  family: "work",
  component: "none",
  normalised: { unit: "J/kg/m", by: "mass and distance" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Sum in a step of the rises of the potential and vertical kinetic energy of the centre of mass, by integration of the force over the stride.",
  source:
    "Law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J. Physiol. 262:639 (abstract).",
  needs: ["mass", "next", "nextSameSide"],
  compute: positiveWorkVertical,
};

/** Entry of {@link positiveWorkForward}. */
export const POSITIVE_WORK_FORWARD: Metric = {
  id: "positiveWorkForward",
  name: "positive forward work",
  symbol: "W_f⁺",
  unit: "J",
  family: "work",
  component: "none",
  normalised: { unit: "J/kg/m", by: "mass and distance" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Sum in a step of the rises of the forward kinetic energy of the centre of mass, by integration of the force over the stride.",
  source:
    "Law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J. Physiol. 262:639 (abstract).",
  needs: ["forward", "mass", "speed", "surface", "next", "nextSameSide"],
  compute: positiveWorkForward,
};

/** Entry of {@link positiveWorkLateral}. */
export const POSITIVE_WORK_LATERAL: Metric = {
  id: "positiveWorkLateral",
  name: "positive lateral work",
  symbol: "W_l⁺",
  unit: "J",
  family: "work",
  component: "none",
  normalised: { unit: "J/kg/m", by: "mass and distance" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Sum in a step of the rises of the sideways kinetic energy of the centre of mass, by integration of the force over the stride.",
  source: "Law (kinetic energy).",
  needs: ["right", "mass", "next", "nextSameSide"],
  compute: positiveWorkLateral,
};

/** Entry of {@link positiveExternalWork}. */
export const POSITIVE_EXTERNAL_WORK: Metric = {
  id: "positiveExternalWork",
  name: "positive external work",
  symbol: "W_ext⁺",
  unit: "J",
  family: "work",
  component: "none",
  normalised: { unit: "J/kg/m", by: "mass and distance" },
  moreLoad: "higher",
  primary: true,
  perKilometre: true,
  definition:
    "Sum in a step of the rises of the kinetic and potential energy of the centre of mass, forward and vertical, by integration of the force over the stride.",
  source:
    "Law; sums of positive increments as in Cavagna, Thys & Zamboni 1976, J. Physiol. 262:639 (abstract).",
  needs: ["forward", "mass", "speed", "surface", "next", "nextSameSide"],
  compute: positiveExternalWork,
};

/** Entry of {@link verticalStiffness}. */
export const VERTICAL_STIFFNESS: Metric = {
  id: "verticalStiffness",
  name: "vertical stiffness",
  symbol: "k_vert",
  unit: "N/m",
  family: "work",
  component: "none",
  normalised: { unit: "N/m/kg", by: "mass" },
  moreLoad: "none",
  definition:
    "Peak vertical force divided by the drop of the centre of mass after contact, by integration of the force over the stride.",
  source: "McMahon & Cheng 1990, J. Biomech. 23 suppl. 1:65.",
  gaits: ["running"],
  needs: ["mass", "nextSameSide"],
  nullWhen: { code: "no-drop", message: "the centre of mass does not fall after contact" },
  compute: verticalStiffness,
};

/** Entry of {@link legStiffness}. */
export const LEG_STIFFNESS: Metric = {
  id: "legStiffness",
  name: "leg stiffness",
  symbol: "k_leg",
  unit: "N/m",
  family: "work",
  component: "none",
  normalised: { unit: "N/m/kg", by: "mass" },
  moreLoad: "none",
  definition:
    "Peak vertical force divided by the shortening of a leg of 0.53 × height that turns over a fixed point by speed × contact time while the centre of mass drops.",
  source:
    "McMahon & Cheng 1990, J. Biomech. 23 suppl. 1:65; 0.53 × height: Morin et al. 2005, J. Appl. Biomech. 21:167.",
  gaits: ["running"],
  needs: ["mass", "height", "speed", "surface", "nextSameSide"],
  nullWhen: {
    code: "no-leg-spring",
    message: "the centre of mass does not fall after contact, or speed × contact time does not fit the leg",
  },
  compute: legStiffness,
};

/** Entry of {@link elasticEnergy}. */
export const ELASTIC_ENERGY: Metric = {
  id: "elasticEnergy",
  name: "elastic energy, upper bound",
  symbol: "E_spring",
  unit: "J",
  family: "work",
  component: "none",
  normalised: { unit: "J/kg", by: "mass" },
  moreLoad: "none",
  definition:
    "Energy of a perfect vertical spring at its lowest point, peak vertical force × drop of the centre of mass ÷ 2: an upper bound of what a contact can give back.",
  source: "Law of the linear spring; McMahon & Cheng 1990, J. Biomech. 23 suppl. 1:65.",
  gaits: ["running"],
  needs: ["mass", "nextSameSide"],
  nullWhen: { code: "no-drop", message: "the centre of mass does not fall after contact" },
  compute: elasticEnergy,
};

/** Entry of {@link halfSineFit}. */
export const HALF_SINE_FIT: Metric = {
  id: "halfSineFit",
  name: "half-sine fit",
  symbol: "R²_sine",
  unit: "1",
  family: "work",
  component: "none",
  moreLoad: "none",
  definition: "R² of the vertical force in contact with a half sine of the same duration and impulse.",
  source:
    "Half sine with the peak π/2 × mean force: Morin et al. 2005, J. Appl. Biomech. 21:167; R² is common practice.",
  gaits: ["running"],
  needs: ["oneFoot"],
  nullWhen: { code: "no-variation", message: "the vertical force does not change in contact" },
  compute: halfSineFit,
};

/** Entry of {@link pushToBrakeTimeRatio}. */
export const PUSH_TO_BRAKE_TIME_RATIO: Metric = {
  id: "pushToBrakeTimeRatio",
  name: "push-to-brake time ratio",
  symbol: "t_push/t_brake",
  unit: "1",
  family: "work",
  component: "none",
  moreLoad: "none",
  definition:
    "Time in contact in which the external energy of the centre of mass rises, divided by that in which it falls.",
  source: "Cavagna 2006, J. Exp. Biol. 209:4051 (abstract).",
  gaits: ["running"],
  needs: ["forward", "mass", "speed", "surface", "nextSameSide"],
  nullWhen: { code: "no-brake", message: "the external energy never falls in contact" },
  compute: pushToBrakeTimeRatio,
};

/** Entry of {@link forceGenerationCost}. */
export const FORCE_GENERATION_COST: Metric = {
  id: "forceGenerationCost",
  name: "cost of generating force",
  symbol: "c/t_c",
  unit: "W/kg",
  family: "work",
  component: "none",
  moreLoad: "none",
  definition:
    "Metabolic power by a coefficient that the caller states, divided by contact time: contact time in disguise.",
  source: "Kram & Taylor 1990, Nature 346:265.",
  gaits: ["running"],
  needs: ["coefficient"],
  compute: forceGenerationCost,
};
