import type { Recording } from "../recording/index.js";
import type { SyntheticRunOptions, SyntheticStance, SyntheticVariability } from "./options.js";
import { syntheticRun } from "./syntheticRun.js";
import type { SyntheticTruth } from "./truth.js";

/** Two recordings of one invented runner, and what to call them. */
export interface DemoRecordings {
  /** An invented trail club. */
  readonly club: string;
  /** An invented runner. */
  readonly runner: string;
  /** As the runner usually runs. */
  readonly usual: Recording;
  /** At the same speed, landing further ahead of the centre of mass. */
  readonly furtherAhead: Recording;
  /** Names for files. */
  readonly files: { readonly usual: string; readonly furtherAhead: string };
  readonly truth: { readonly usual: SyntheticTruth; readonly furtherAhead: SyntheticTruth };
}

/**
 * What landing further ahead changes of the stance: a longer contact, which by the law of angular momentum puts the foot
 * 25 mm further ahead and lowers the vertical peak; more braking and, with it, propulsion; more force to the sides. The
 * impact is left as it is: whether it rises depends on the foot strike.
 */
const FURTHER_AHEAD: SyntheticStance = {
  stepTime: 0.338,
  contactTime: 0.273,
  brakingAmplitude: 0.29,
  crossShare: 0.5,
  lateralAmplitude: 0.06,
  medialAmplitude: 0.105,
};

/**
 * Stride to stride: times and vertical peak below 2.5 % and the impact near 6 %, like one runner's 30 minutes in a preprint
 * (preprints.org 202601.2214, not peer reviewed); the others a judgement.
 */
const VARIABILITY: SyntheticVariability = {
  stepTime: 0.01,
  contactTime: 0.015,
  impactAmplitude: 0.06,
  impactTime: 0.04,
  brakingAmplitude: 0.06,
  crossShare: 0.02,
  lateralAmplitude: 0.15,
  lateralTime: 0.08,
  medialAmplitude: 0.1,
  copRoll: 0.03,
  copWidth: 0.15,
  freeMomentAmplitude: 0.12,
};

const TRIAL: SyntheticRunOptions = {
  mass: 70,
  height: 1.75,
  speed: 3,
  surface: "belt",
  variability: VARIABILITY,
  noise: { force: 2, cop: 0.001, freeMoment: 0.3 },
  decimals: { force: 1, cop: 4, freeMoment: 2 },
  firstFoot: "left",
  firstContact: -0.1,
  duration: 30,
};

/**
 * Makes the two treadmill recordings of the demonstration: a runner's usual running, and the same runner at the same speed
 * landing further ahead of the centre of mass.
 *
 * Formula: of {@link syntheticRun}; in the second the contact is longer, so that the vertical peak falls by about 6 %, while
 * braking impulse, mediolateral impulse and external work rise by about 30, 25 and 10 %.
 * Units: SI, 1 kHz, 30 s, 3 m/s, 70 kg; 88 whole contacts each, and one cut at either end.
 * Limits: an illustration of a direction, not a finding. That landing further ahead goes with more braking is published;
 * that it can lower the vertical peak is common practice; of the mediolateral force no study with numbers was found. The
 * sizes are chosen.
 * Source: braking, Lieberman et al. 2015, J. Exp. Biol. 218:3406 and Wille et al. 2014, J. Orthop. Sports Phys. Ther. 44:825;
 * ranges of recreational running (2 to 2.5 body weights, 165 to 185 steps/min), common practice.
 * @example
 * demoRecordings().furtherAhead.speed // 3
 */
export function demoRecordings(): DemoRecordings {
  const usual = syntheticRun({ ...TRIAL, seed: 11 });
  const furtherAhead = syntheticRun({ ...TRIAL, stance: FURTHER_AHEAD, seed: 12 });
  return {
    club: "Hollow Ridge Trail Club",
    runner: "Tamsin Ardle",
    usual: usual.recording,
    furtherAhead: furtherAhead.recording,
    files: { usual: "hollow-ridge-usual.csv", furtherAhead: "hollow-ridge-further-ahead.csv" },
    truth: { usual: usual.truth, furtherAhead: furtherAhead.truth },
  };
}
