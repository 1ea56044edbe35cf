import type { Metric } from "../metric.js";
import { halfSineFit } from "./halfSineFit.js";
import { positiveExternalWork } from "./positiveExternalWork.js";

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
  needs: [],
  nullWhen: { code: "no-variation", message: "the vertical force does not change in contact" },
  compute: halfSineFit,
};
