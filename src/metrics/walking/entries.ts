import type { Metric } from "../metric.js";
import { doubleSupportTime } from "./doubleSupportTime.js";
import { energyRecovery } from "./energyRecovery.js";
import { firstVerticalPeak } from "./firstVerticalPeak.js";
import { midstanceTrough } from "./midstanceTrough.js";
import { secondVerticalPeak } from "./secondVerticalPeak.js";
import { singleSupportTime } from "./singleSupportTime.js";
import { stanceShare } from "./stanceShare.js";

/** When a contact has no two peaks. */
const NO_TROUGH: NonNullable<Metric["nullWhen"]> = {
  code: "no-trough",
  message:
    "the vertical force has no two peaks with a trough between them, or one of them falls into double support on a plate that both feet share",
};

/** Entry of {@link firstVerticalPeak}. */
export const FIRST_VERTICAL_PEAK: Metric = {
  id: "firstVerticalPeak",
  name: "first vertical peak",
  symbol: "F₁",
  unit: "N",
  family: "walking",
  component: "vertical",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Largest vertical force in the first half of a walking contact, where it is a local maximum before a trough.",
  source: "Common practice.",
  gaits: ["walking"],
  needs: [],
  nullWhen: NO_TROUGH,
  compute: firstVerticalPeak,
};

/** Entry of {@link midstanceTrough}. */
export const MIDSTANCE_TROUGH: Metric = {
  id: "midstanceTrough",
  name: "midstance trough",
  symbol: "F₂",
  unit: "N",
  family: "walking",
  component: "vertical",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "none",
  definition: "Least vertical force between the two peaks of a walking contact.",
  source: "Common practice.",
  gaits: ["walking"],
  needs: [],
  nullWhen: NO_TROUGH,
  compute: midstanceTrough,
};

/** Entry of {@link secondVerticalPeak}. */
export const SECOND_VERTICAL_PEAK: Metric = {
  id: "secondVerticalPeak",
  name: "second vertical peak",
  symbol: "F₃",
  unit: "N",
  family: "walking",
  component: "vertical",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Largest vertical force in the second half of a walking contact, where it is a local maximum behind a trough.",
  source: "Common practice.",
  gaits: ["walking"],
  needs: [],
  nullWhen: NO_TROUGH,
  compute: secondVerticalPeak,
};

/** Entry of {@link doubleSupportTime}. */
export const DOUBLE_SUPPORT_TIME: Metric = {
  id: "doubleSupportTime",
  name: "double support time",
  symbol: "t_ds",
  unit: "s",
  family: "walking",
  component: "none",
  moreLoad: "none",
  definition:
    "Time from the next initial contact, of the other foot, to toe-off: one of the two double supports of a stride.",
  source: "Common practice.",
  gaits: ["walking"],
  needs: ["next"],
  nullWhen: { code: "no-double-support", message: "the next contact begins behind toe-off" },
  compute: doubleSupportTime,
};

/** Entry of {@link singleSupportTime}. */
export const SINGLE_SUPPORT_TIME: Metric = {
  id: "singleSupportTime",
  name: "single support time",
  symbol: "t_ss",
  unit: "s",
  family: "walking",
  component: "none",
  moreLoad: "none",
  definition: "Time in contact in which the other foot is off the ground.",
  source: "Common practice.",
  gaits: ["walking"],
  needs: [],
  nullWhen: { code: "no-single-support", message: "the contact before or after is not known" },
  compute: singleSupportTime,
};

/** Entry of {@link stanceShare}. */
export const STANCE_SHARE: Metric = {
  id: "stanceShare",
  name: "stance share",
  symbol: "t_c/t_stride",
  unit: "1",
  family: "walking",
  component: "none",
  moreLoad: "none",
  definition: "Contact time divided by stride time, of walking.",
  source: "Common practice.",
  gaits: ["walking"],
  needs: ["nextSameSide"],
  compute: stanceShare,
};

/** Entry of {@link energyRecovery}. */
export const ENERGY_RECOVERY: Metric = {
  id: "energyRecovery",
  name: "energy recovery",
  symbol: "R",
  unit: "1",
  family: "walking",
  component: "none",
  moreLoad: "none",
  definition:
    "Share of the forward and vertical work of the centre of mass in a stride that the two energies take from each other.",
  source: "Cavagna, Thys & Zamboni 1976, J. Physiol. 262:639 (abstract).",
  gaits: ["walking"],
  needs: ["forward", "mass", "speed", "surface", "nextSameSide"],
  compute: energyRecovery,
};
