import type { Metric } from "../metric.js";
import { averageLoadingRate } from "./averageLoadingRate.js";
import { earlyLoadingRate } from "./earlyLoadingRate.js";
import { impactPeak } from "./impactPeak.js";
import { instantaneousLoadingRate } from "./instantaneousLoadingRate.js";
import { meanVerticalForce } from "./meanVerticalForce.js";
import { peakVerticalForce } from "./peakVerticalForce.js";
import { timeToImpactPeak } from "./timeToImpactPeak.js";
import { verticalImpulse } from "./verticalImpulse.js";
import { verticalOscillation } from "./verticalOscillation.js";

/** Entry of {@link peakVerticalForce}. */
export const PEAK_VERTICAL_FORCE: Metric = {
  id: "peakVerticalForce",
  name: "peak vertical force",
  symbol: "F_up,max",
  unit: "N",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  primary: true,
  perKilometre: true,
  definition: "Largest vertical force in contact.",
  source: "Common practice.",
  needs: ["oneFoot"],
  compute: peakVerticalForce,
};

/** Entry of {@link impactPeak}. */
export const IMPACT_PEAK: Metric = {
  id: "impactPeak",
  name: "impact peak",
  symbol: "F_imp",
  unit: "N",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Vertical force at its first local maximum later than 5 ms after initial contact and before 35 % of contact time that is followed by a drop of at least 0.02 body weights before the force next exceeds it.",
  source: "Common practice for the first local maximum; the numbers of the rule are this library's own.",
  gaits: ["running"],
  needs: ["mass", "oneFoot"],
  nullWhen: { code: "no-impact-peak", message: "the vertical force rises without a separate impact peak" },
  compute: impactPeak,
};

/** Entry of {@link timeToImpactPeak}. */
export const TIME_TO_IMPACT_PEAK: Metric = {
  id: "timeToImpactPeak",
  name: "time to impact peak",
  symbol: "t_imp",
  unit: "s",
  family: "vertical",
  component: "vertical",
  moreLoad: "none",
  definition: "Time from initial contact to the impact peak.",
  source: "Common practice; rule as for the impact peak.",
  gaits: ["running"],
  needs: ["mass", "oneFoot"],
  nullWhen: { code: "no-impact-peak", message: "the vertical force rises without a separate impact peak" },
  compute: timeToImpactPeak,
};

/** Entry of {@link averageLoadingRate}. */
export const AVERAGE_LOADING_RATE: Metric = {
  id: "averageLoadingRate",
  name: "average loading rate",
  symbol: "VALR",
  unit: "N/s",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW/s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Mean slope of the vertical force between 20 and 80 % of the time from initial contact to the impact peak.",
  source: "doi:10.1055/s-0042-107248, method B; Lemire et al. 2022 (abstracts).",
  gaits: ["running"],
  needs: ["mass", "oneFoot"],
  nullWhen: { code: "no-impact-peak", message: "the vertical force rises without a separate impact peak" },
  compute: averageLoadingRate,
};

/** Entry of {@link earlyLoadingRate}. */
export const EARLY_LOADING_RATE: Metric = {
  id: "earlyLoadingRate",
  name: "early loading rate",
  symbol: "VALR_3–12",
  unit: "N/s",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW/s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Mean slope of the vertical force between 3 and 12 % of contact time.",
  source: "Schmida et al. 2022, Med. Sci. Sports Exerc. 54:1382 (abstract).",
  needs: ["oneFoot"],
  compute: earlyLoadingRate,
};

/** Entry of {@link instantaneousLoadingRate}. */
export const INSTANTANEOUS_LOADING_RATE: Metric = {
  id: "instantaneousLoadingRate",
  name: "instantaneous loading rate",
  symbol: "VILR",
  unit: "N/s",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW/s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Largest slope of the vertical force between successive samples within 20 to 80 % of the time from initial contact to the impact peak.",
  source: "Window: Schmida et al. 2022, Med. Sci. Sports Exerc. 54:1382 (abstract).",
  gaits: ["running"],
  needs: ["mass", "oneFoot"],
  nullWhen: { code: "no-impact-peak", message: "the vertical force rises without a separate impact peak" },
  compute: instantaneousLoadingRate,
};

/** Entry of {@link verticalImpulse}. */
export const VERTICAL_IMPULSE: Metric = {
  id: "verticalImpulse",
  name: "vertical impulse",
  symbol: "J_up",
  unit: "N s",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW s", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition: "Integral of the vertical force over contact; in steady running body weight × step time.",
  source: "Law (impulse = change of momentum).",
  needs: ["oneFoot"],
  compute: verticalImpulse,
};

/** Entry of {@link meanVerticalForce}. */
export const MEAN_VERTICAL_FORCE: Metric = {
  id: "meanVerticalForce",
  name: "mean vertical force",
  symbol: "F_up,mean",
  unit: "N",
  family: "vertical",
  component: "vertical",
  normalised: { unit: "BW", by: "body weight" },
  moreLoad: "higher",
  perKilometre: true,
  definition:
    "Vertical impulse divided by contact time; in steady running body weight × step time ÷ contact time.",
  source: "Law (impulse = mean force × time).",
  needs: ["oneFoot"],
  compute: meanVerticalForce,
};

/** Entry of {@link verticalOscillation}. */
export const VERTICAL_OSCILLATION: Metric = {
  id: "verticalOscillation",
  name: "vertical oscillation",
  symbol: "Δy",
  unit: "m",
  family: "vertical",
  component: "vertical",
  moreLoad: "none",
  definition:
    "Highest less lowest place of the centre of mass in a step, by integration of the vertical force over the stride.",
  source: "Law (Newton's second).",
  needs: ["mass", "next", "nextSameSide"],
  compute: verticalOscillation,
};
