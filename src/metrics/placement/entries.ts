import type { Metric } from "../metric.js";
import { stepLength } from "./stepLength.js";
import { stepWidth } from "./stepWidth.js";
import { strideLength } from "./strideLength.js";
import { strikeIndex } from "./strikeIndex.js";
import { takeOffDistance } from "./takeOffDistance.js";
import { touchdownDistance } from "./touchdownDistance.js";

/** When neither distance can be told. */
const NO_LANDING: NonNullable<Metric["nullWhen"]> = {
  code: "landing-unknown",
  message:
    "the belt's speed is not known, there is no flight, the force does not reach the foot level, or the forward force shows that the runner speeds up, slows down or is pulled",
};

/** Entry of {@link touchdownDistance}. */
export const TOUCHDOWN_DISTANCE: Metric = {
  id: "touchdownDistance",
  name: "touchdown distance",
  symbol: "d_td",
  unit: "m",
  family: "placement",
  component: "none",
  moreLoad: "none",
  definition:
    "Centre of pressure ahead of the centre of mass at first touch, both over the ground; the centre of mass follows from force and moment over the stride, or is measured.",
  source: "Conservation of angular momentum about the centre of mass over a stride.",
  needs: ["forward", "copForward", "surface", "nextSameSide"],
  nullWhen: NO_LANDING,
  compute: touchdownDistance,
};

/** Entry of {@link takeOffDistance}. */
export const TAKE_OFF_DISTANCE: Metric = {
  id: "takeOffDistance",
  name: "take-off distance",
  symbol: "d_to",
  unit: "m",
  family: "placement",
  component: "none",
  moreLoad: "none",
  definition:
    "Centre of mass ahead of the centre of pressure at last touch, both over the ground; the centre of mass follows from force and moment over the stride, or is measured.",
  source: "Conservation of angular momentum about the centre of mass over a stride.",
  needs: ["forward", "copForward", "surface", "nextSameSide"],
  nullWhen: NO_LANDING,
  compute: takeOffDistance,
};

/** Entry of {@link stepLength}. */
export const STEP_LENGTH: Metric = {
  id: "stepLength",
  name: "step length",
  symbol: "L_step",
  unit: "m",
  family: "placement",
  component: "none",
  moreLoad: "none",
  definition: "Speed × step time.",
  source: "Common practice.",
  needs: ["speed", "surface", "next"],
  compute: stepLength,
};

/** Entry of {@link strideLength}. */
export const STRIDE_LENGTH: Metric = {
  id: "strideLength",
  name: "stride length",
  symbol: "L_stride",
  unit: "m",
  family: "placement",
  component: "none",
  moreLoad: "none",
  definition: "Speed × stride time.",
  source: "Common practice.",
  needs: ["speed", "surface", "nextSameSide"],
  compute: strideLength,
};

/** Entry of {@link stepWidth}. */
export const STEP_WIDTH: Metric = {
  id: "stepWidth",
  name: "step width",
  symbol: "w_step",
  unit: "m",
  family: "placement",
  component: "none",
  moreLoad: "none",
  definition:
    "Sideways distance of the mean centres of pressure of two successive feet over the middle half of each contact, below 0 where they cross.",
  source: "Common practice; centre of pressure and middle half are this library's rule.",
  needs: ["copRight", "side", "next"],
  nullWhen: { code: "side-unknown", message: "the side of the contact is not known" },
  compute: stepWidth,
};

/** Entry of {@link strikeIndex}. */
export const STRIKE_INDEX: Metric = {
  id: "strikeIndex",
  name: "strike index",
  symbol: "SI",
  unit: "1",
  family: "placement",
  component: "none",
  moreLoad: "none",
  definition:
    "Place of the centre of pressure along the line from heel (0) to toes (1) where the vertical force first reaches 250 N.",
  source: "Cavanagh & Lafortune 1980, J. Biomech. 13:397; the level of 250 N is this library's rule.",
  needs: ["copForward", "copRight", "side", "foot", "oneFoot"],
  nullWhen: {
    code: "foot-unknown",
    message: "the place of this foot is not known, or the vertical force stays below 250 N",
  },
  compute: strikeIndex,
};
