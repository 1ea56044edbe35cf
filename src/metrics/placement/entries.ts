import type { Metric } from "../metric.js";
import { stepLength } from "./stepLength.js";
import { strideLength } from "./strideLength.js";

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
