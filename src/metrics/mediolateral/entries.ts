import type { Metric } from "../metric.js";
import { lateralImpulse } from "./lateralImpulse.js";
import { medialImpulse } from "./medialImpulse.js";
import { mediolateralExcursion } from "./mediolateralExcursion.js";
import { mediolateralImpulse } from "./mediolateralImpulse.js";
import { peakLateralForce } from "./peakLateralForce.js";
import { peakMedialForce } from "./peakMedialForce.js";

/** Entry of {@link mediolateralImpulse}. */
export const MEDIOLATERAL_IMPULSE: Metric = {
  id: "mediolateralImpulse",
  name: "mediolateral impulse",
  symbol: "J_ml",
  unit: "N s",
  family: "mediolateral",
  component: "mediolateral",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "higher",
  primary: true,
  perKilometre: true,
  definition: "Integral over contact of the magnitude of the sideways force.",
  source: "Common practice.",
  needs: ["right", "oneFoot"],
  compute: mediolateralImpulse,
};

/** Entry of {@link medialImpulse}. */
export const MEDIAL_IMPULSE: Metric = {
  id: "medialImpulse",
  name: "medial impulse",
  symbol: "J_med",
  unit: "N s",
  family: "mediolateral",
  component: "mediolateral",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Integral over contact of the sideways force where it points to the body's midline.",
  source: "Common practice.",
  needs: ["right", "side", "oneFoot"],
  nullWhen: { code: "side-unknown", message: "the side of the contact is not known" },
  compute: medialImpulse,
};

/** Entry of {@link lateralImpulse}. */
export const LATERAL_IMPULSE: Metric = {
  id: "lateralImpulse",
  name: "lateral impulse",
  symbol: "J_lat",
  unit: "N s",
  family: "mediolateral",
  component: "mediolateral",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Integral over contact of the sideways force where it points away from the body's midline, as a positive magnitude.",
  source: "Common practice.",
  needs: ["right", "side", "oneFoot"],
  nullWhen: { code: "side-unknown", message: "the side of the contact is not known" },
  compute: lateralImpulse,
};

/** Entry of {@link peakMedialForce}. */
export const PEAK_MEDIAL_FORCE: Metric = {
  id: "peakMedialForce",
  name: "peak medial force",
  symbol: "F_med",
  unit: "N",
  family: "mediolateral",
  component: "mediolateral",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Largest force to the body's midline in contact.",
  source: "Common practice.",
  needs: ["right", "side", "oneFoot"],
  nullWhen: { code: "side-unknown", message: "the side of the contact is not known" },
  compute: peakMedialForce,
};

/** Entry of {@link peakLateralForce}. */
export const PEAK_LATERAL_FORCE: Metric = {
  id: "peakLateralForce",
  name: "peak lateral force",
  symbol: "F_lat",
  unit: "N",
  family: "mediolateral",
  component: "mediolateral",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Largest force away from the body's midline in contact, as a positive magnitude.",
  source: "Common practice.",
  needs: ["right", "side", "oneFoot"],
  nullWhen: { code: "side-unknown", message: "the side of the contact is not known" },
  compute: peakLateralForce,
};

/** Entry of {@link mediolateralExcursion}. */
export const MEDIOLATERAL_EXCURSION: Metric = {
  id: "mediolateralExcursion",
  name: "mediolateral excursion",
  symbol: "Δz",
  unit: "m",
  family: "mediolateral",
  component: "mediolateral",
  moreLoad: "none",
  definition:
    "Farthest right less farthest left place of the centre of mass in a stride, by integration of the sideways force.",
  source: "Law (Newton's second).",
  needs: ["right", "mass", "nextSameSide"],
  compute: mediolateralExcursion,
};
