import type { SyntheticRunOptions } from "../../src/synthetic/index.js";

/** What a runner varies from step to step, as shares of each quantity. */
const variability = {
  stepTime: 0.01,
  contactTime: 0.02,
  impactAmplitude: 0.05,
  brakingAmplitude: 0.05,
  medialAmplitude: 0.08,
  lateralAmplitude: 0.1,
};

/** Runners, speeds and contacts from slow to fast; each seed its own random steps. */
export const RUNS: readonly SyntheticRunOptions[] = [
  { mass: 70, speed: 3, stance: {} },
  { mass: 55, speed: 2.5, stance: { stepTime: 0.36, contactTime: 0.3 } },
  { mass: 85, speed: 3.5, stance: { stepTime: 0.34, contactTime: 0.235, brakingAmplitude: 0.3 } },
  { mass: 62, speed: 4.5, stance: { stepTime: 0.33, contactTime: 0.2, brakingAmplitude: 0.35 } },
  { mass: 70, speed: 3, stance: { impactAmplitude: 0 } },
  { mass: 70, speed: 3, stance: { impactAmplitude: 1.2, impactTime: 0.022 } },
].map((run, i) => ({ ...run, variability, duration: 30, seed: 100 + i }));
