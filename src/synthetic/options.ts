import type { Side, Surface } from "../recording/index.js";
import {
  type Complete,
  type Fraction,
  type Hertz,
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type NewtonMetres,
  type Newtons,
  type Seconds,
  STANDARD_GRAVITY,
  type StepsPerMinute,
} from "../units/index.js";

/** One contact of the model and the flight behind it. Amplitudes are shares of body weight. */
export interface SyntheticStance {
  /** From this contact to the next one, s. */
  readonly stepTime?: Seconds | undefined;
  /** Between the zeros of the vertical force, s; shorter than the step. At 20 N it reads about 11 ms shorter. */
  readonly contactTime?: Seconds | undefined;
  /** Height of the first raised cosine of the vertical force, body weights; 0 for none. */
  readonly impactAmplitude?: Fraction | undefined;
  /** Its centre and half width, s; at most half the contact. */
  readonly impactTime?: Seconds | undefined;
  /** Peak of the braking half sine, body weights. The propulsive one follows: its impulse is the same. */
  readonly brakingAmplitude?: Fraction | undefined;
  /** Where braking turns into propulsion, share of the contact. */
  readonly crossShare?: Fraction | undefined;
  /** Peak of the lateral half sine that begins the contact, body weights. */
  readonly lateralAmplitude?: Fraction | undefined;
  /** Its end, where the medial half sine begins, s. */
  readonly lateralTime?: Seconds | undefined;
  /** Peak of the medial half sine, body weights. */
  readonly medialAmplitude?: Fraction | undefined;
  /** Travel of the centre of pressure along the foot, m: a half cosine that ends at 85 % of the contact. */
  readonly copRoll?: Metres | undefined;
  /** Centre of pressure beside the runner's line, m, outwards positive. */
  readonly copWidth?: Metres | undefined;
  /** Peak of the free moment's half sine, share of body weight × height. It turns the toes inwards. */
  readonly freeMomentAmplitude?: Fraction | undefined;
}

/** A recreational runner at about 3 m/s; every value within common practice, the free moment after Milner et al. 2006. */
export const SYNTHETIC_STANCE_DEFAULTS: Complete<SyntheticStance> = {
  stepTime: 0.336,
  contactTime: 0.255,
  impactAmplitude: 0.9,
  impactTime: 0.028,
  brakingAmplitude: 0.25,
  crossShare: 0.48,
  lateralAmplitude: 0.05,
  lateralTime: 0.03,
  medialAmplitude: 0.09,
  copRoll: 0.19,
  copWidth: 0.03,
  freeMomentAmplitude: 0.0059,
};

/** Relative standard deviation of each quantity of {@link SyntheticStance}, from one contact of a foot to its next. */
export type SyntheticVariability = { readonly [K in keyof SyntheticStance]?: Fraction | undefined };

/** No variability: every stride the same, every law exact. */
export const SYNTHETIC_VARIABILITY_DEFAULTS: Complete<SyntheticVariability> = {
  stepTime: 0,
  contactTime: 0,
  impactAmplitude: 0,
  impactTime: 0,
  brakingAmplitude: 0,
  crossShare: 0,
  lateralAmplitude: 0,
  lateralTime: 0,
  medialAmplitude: 0,
  copRoll: 0,
  copWidth: 0,
  freeMomentAmplitude: 0,
};

/** Standard deviation of white noise. */
export interface SyntheticNoise {
  /** On each force channel, N. */
  readonly force?: Newtons | undefined;
  /** On each centre of pressure at one body weight of vertical force, m; it grows as the force falls. */
  readonly cop?: Metres | undefined;
  /** On the free moment, N·m. */
  readonly freeMoment?: NewtonMetres | undefined;
}

/** No noise. */
export const SYNTHETIC_NOISE_DEFAULTS: Complete<SyntheticNoise> = { force: 0, cop: 0, freeMoment: 0 };

/** One number a channel, in the channel's unit: N, m, N·m. */
export interface SyntheticLevels {
  readonly forward?: number | undefined;
  readonly up?: number | undefined;
  readonly right?: number | undefined;
  readonly cop_forward?: number | undefined;
  readonly cop_right?: number | undefined;
  readonly free_moment?: number | undefined;
}

/** Nothing added to any channel. */
export const SYNTHETIC_LEVELS_DEFAULTS: Complete<SyntheticLevels> = {
  forward: 0,
  up: 0,
  right: 0,
  cop_forward: 0,
  cop_right: 0,
  free_moment: 0,
};

/** Digits behind the decimal point that a converter keeps. */
export interface SyntheticDecimals {
  /** Of force, N. */
  readonly force?: number | undefined;
  /** Of the centre of pressure, m. */
  readonly cop?: number | undefined;
  /** Of the free moment, N·m. */
  readonly freeMoment?: number | undefined;
}

/** A tenth of a newton, a tenth of a millimetre, a hundredth of a newton metre. */
export const SYNTHETIC_DECIMALS_DEFAULTS: Complete<SyntheticDecimals> = { force: 1, cop: 4, freeMoment: 2 };

/** Where the runner's centre of mass is over the plate at the first contact. */
export interface SyntheticPlace {
  readonly forward?: Metres | undefined;
  readonly right?: Metres | undefined;
}

/** At the frame's origin. */
export const SYNTHETIC_PLACE_DEFAULTS: Complete<SyntheticPlace> = { forward: 0, right: 0 };

/** The runner, the trial and the measuring of {@link syntheticRun}. */
export interface SyntheticRunOptions {
  /** kg. */
  readonly mass?: Kilograms | undefined;
  /** m; the centre of mass is at 0.55 of it. */
  readonly height?: Metres | undefined;
  /** Mean speed over the ground or belt, m/s. */
  readonly speed?: MetresPerSecond | undefined;
  /** On a belt the centre of pressure moves backward at `speed` and the runner stays in place. */
  readonly surface?: Surface | undefined;
  /** Step rate, steps/min; `null`: as the step time says. */
  readonly cadence?: StepsPerMinute | null | undefined;
  /** Both feet; {@link SYNTHETIC_STANCE_DEFAULTS} where left out. */
  readonly stance?: SyntheticStance | undefined;
  /** What differs in the left foot. */
  readonly left?: SyntheticStance | undefined;
  /** What differs in the right foot. */
  readonly right?: SyntheticStance | undefined;
  /** Relative SD of each quantity from stride to stride; none where left out. */
  readonly variability?: SyntheticVariability | undefined;
  /** Correlation of a foot's contact with its next, −1 to 1, both excluded. */
  readonly correlation?: number | undefined;
  readonly noise?: SyntheticNoise | undefined;
  /** Added to every sample of a channel. The centre of pressure is not recomputed from the shifted force. */
  readonly offset?: SyntheticLevels | undefined;
  /** Added to a channel linearly, from nothing at the first sample to this at the last. */
  readonly drift?: SyntheticLevels | undefined;
  /** Rounding of the samples; `null` for none, {@link SYNTHETIC_DECIMALS_DEFAULTS} for parts left out. */
  readonly decimals?: SyntheticDecimals | null | undefined;
  readonly place?: SyntheticPlace | undefined;
  /** Foot of the first contact. */
  readonly firstFoot?: Side | undefined;
  /** Time of the first contact, s; negative: the recording begins within it. */
  readonly firstContact?: Seconds | undefined;
  /** Number of contacts; left out where `duration` is given. */
  readonly contacts?: number | undefined;
  /** Length of the recording, s, which may cut the last contact; `null`: as long as the contacts need. */
  readonly duration?: Seconds | null | undefined;
  /** Behind the last step where the number of contacts is given, s. */
  readonly tail?: Seconds | undefined;
  readonly sampleRate?: Hertz | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
  /** Whole number from 0 to 4294967295. */
  readonly seed?: number | undefined;
}

/** A steady treadmill run without noise: 20 contacts at 1 kHz. */
export const SYNTHETIC_RUN_DEFAULTS: Complete<SyntheticRunOptions> = {
  mass: 70,
  height: 1.75,
  speed: 3,
  surface: "belt",
  cadence: null,
  stance: SYNTHETIC_STANCE_DEFAULTS,
  left: {},
  right: {},
  variability: SYNTHETIC_VARIABILITY_DEFAULTS,
  correlation: 0.3,
  noise: SYNTHETIC_NOISE_DEFAULTS,
  offset: SYNTHETIC_LEVELS_DEFAULTS,
  drift: SYNTHETIC_LEVELS_DEFAULTS,
  decimals: null,
  place: SYNTHETIC_PLACE_DEFAULTS,
  firstFoot: "right",
  firstContact: 0.15,
  contacts: 20,
  duration: null,
  tail: 0.15,
  sampleRate: 1000,
  gravity: STANDARD_GRAVITY,
  seed: 1,
};
