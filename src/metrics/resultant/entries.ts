import type { Metric } from "../metric.js";
import { freeMomentImpulse } from "./freeMomentImpulse.js";
import { peakFreeMoment } from "./peakFreeMoment.js";
import { peakResultantForce } from "./peakResultantForce.js";

/** Entry of {@link peakResultantForce}. */
export const PEAK_RESULTANT_FORCE: Metric = {
  id: "peakResultantForce",
  name: "peak resultant force",
  symbol: "F_res",
  unit: "N",
  family: "resultant",
  component: "none",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Largest size of the force in contact, all three components together.",
  source: "Common practice.",
  needs: ["forward", "right", "oneFoot"],
  compute: peakResultantForce,
};

/** Entry of {@link peakFreeMoment}. */
export const PEAK_FREE_MOMENT: Metric = {
  id: "peakFreeMoment",
  name: "peak free moment",
  symbol: "|T|_max",
  unit: "N m",
  family: "resultant",
  component: "none",
  normalised: { unit: "BW m", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Largest size in contact of the moment about the vertical through the centre of pressure, where the vertical force is 40 N or more.",
  source: "Absolute free moment as in Pohl et al. 2008, J. Biomech. 41:1160 (abstract).",
  needs: ["forward", "right", "copForward", "copRight", "freeMoment", "oneFoot"],
  nullWhen: { code: "not-loaded", message: "the vertical force stays below 40 N" },
  compute: peakFreeMoment,
};

/** Entry of {@link freeMomentImpulse}. */
export const FREE_MOMENT_IMPULSE: Metric = {
  id: "freeMomentImpulse",
  name: "free-moment impulse",
  symbol: "J_|T|",
  unit: "N m s",
  family: "resultant",
  component: "none",
  normalised: { unit: "BW m s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Integral over contact of the size of the moment about the vertical through the centre of pressure, where the vertical force is 40 N or more.",
  source: "Definition is common practice; that both directions count is this library's rule.",
  needs: ["forward", "right", "copForward", "copRight", "freeMoment", "oneFoot"],
  nullWhen: { code: "not-loaded", message: "the vertical force stays below 40 N" },
  compute: freeMomentImpulse,
};
