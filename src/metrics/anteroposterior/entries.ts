import type { Metric } from "../metric.js";
import { brakingImpulse } from "./brakingImpulse.js";
import { brakingLoadingRate } from "./brakingLoadingRate.js";
import { netForwardImpulse } from "./netForwardImpulse.js";
import { peakBrakingForce } from "./peakBrakingForce.js";
import { peakPropulsiveForce } from "./peakPropulsiveForce.js";
import { propulsiveImpulse } from "./propulsiveImpulse.js";

/** Entry of {@link brakingImpulse}. */
export const BRAKING_IMPULSE: Metric = {
  id: "brakingImpulse",
  name: "braking impulse",
  symbol: "J_brake",
  unit: "N s",
  family: "anteroposterior",
  component: "anteroposterior",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "higher",
  primary: true,
  perKilometre: true,
  definition: "Integral over contact of the forward force where it points backward, as a positive magnitude.",
  source: "Common practice.",
  needs: ["forward", "oneFoot"],
  compute: brakingImpulse,
};

/** Entry of {@link propulsiveImpulse}. */
export const PROPULSIVE_IMPULSE: Metric = {
  id: "propulsiveImpulse",
  name: "propulsive impulse",
  symbol: "J_prop",
  unit: "N s",
  family: "anteroposterior",
  component: "anteroposterior",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Integral over contact of the forward force where it points forward.",
  source: "Common practice.",
  needs: ["forward", "oneFoot"],
  compute: propulsiveImpulse,
};

/** Entry of {@link netForwardImpulse}. */
export const NET_FORWARD_IMPULSE: Metric = {
  id: "netForwardImpulse",
  name: "net forward impulse",
  symbol: "J_net",
  unit: "N s",
  family: "anteroposterior",
  component: "anteroposterior",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "none",
  definition: "Propulsive impulse less braking impulse; about 0 in steady level running.",
  source: "Law (impulse = change of momentum).",
  needs: ["forward", "oneFoot"],
  compute: netForwardImpulse,
};

/** Entry of {@link peakBrakingForce}. */
export const PEAK_BRAKING_FORCE: Metric = {
  id: "peakBrakingForce",
  name: "peak braking force",
  symbol: "F_brake",
  unit: "N",
  family: "anteroposterior",
  component: "anteroposterior",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Largest backward force in contact, as a positive magnitude.",
  source: "Common practice.",
  needs: ["forward", "oneFoot"],
  compute: peakBrakingForce,
};

/** Entry of {@link peakPropulsiveForce}. */
export const PEAK_PROPULSIVE_FORCE: Metric = {
  id: "peakPropulsiveForce",
  name: "peak propulsive force",
  symbol: "F_prop",
  unit: "N",
  family: "anteroposterior",
  component: "anteroposterior",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Largest forward force in contact.",
  source: "Common practice.",
  needs: ["forward", "oneFoot"],
  compute: peakPropulsiveForce,
};

/** Entry of {@link brakingLoadingRate}. */
export const BRAKING_LOADING_RATE: Metric = {
  id: "brakingLoadingRate",
  name: "braking loading rate",
  symbol: "BILR",
  unit: "N/s",
  family: "anteroposterior",
  component: "anteroposterior",
  normalised: { unit: "BW/s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Largest slope of the backward force between successive samples within 20 to 80 % of the time from initial contact to its first maximum of at least half the peak braking force.",
  source:
    "Window of the vertical loading rate (Schmida et al. 2022, Med. Sci. Sports Exerc. 54:1382 (abstract)); which maximum counts is this library's own rule.",
  needs: ["forward", "oneFoot"],
  nullWhen: {
    code: "no-braking-rise",
    message: "the forward force never points backward, or only fades from initial contact on",
  },
  compute: brakingLoadingRate,
};
