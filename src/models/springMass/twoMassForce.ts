import {
  type Complete,
  type Fraction,
  fail,
  type Hertz,
  type Kilograms,
  type MetresPerSecond,
  type MetresPerSecondSquared,
  type NewtonSeconds,
  type Newtons,
  requireNumber,
  type Samples,
  type Seconds,
  STANDARD_GRAVITY,
  withDefaults,
} from "../../units/index.js";

/** What the {@link twoMassForce} is made from. */
export interface TwoMassRunner {
  readonly mass: Kilograms;
  readonly contactTime: Seconds;
  readonly aerialTime: Seconds;
  /** Downward speed that foot and shank lose on landing. */
  readonly landingSpeed: MetresPerSecond;
  /** Time in which they lose it: from contact to the peak of their pulse. */
  readonly landingTime: Seconds;
}

/** What {@link twoMassForce} takes for granted. */
export interface TwoMassForceOptions {
  /** Foot and shank of one leg as a share of body mass. */
  readonly lowerLimbShare?: Fraction | undefined;
  readonly sampleRate?: Hertz | undefined;
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/** 8 % of body mass. Source: Clark, Ryan & Weyand 2017, J Exp Biol 220:247. The rate is common practice. */
export const TWO_MASS_FORCE_DEFAULTS: Complete<TwoMassForceOptions> = {
  lowerLimbShare: 0.08,
  sampleRate: 1000,
  gravity: STANDARD_GRAVITY,
};

/** A raised cosine: amplitude/2 × [1 + cos(π (t − centre)/halfWidth)] within half a width of its centre. */
export interface ForcePulse {
  readonly impulse: NewtonSeconds;
  readonly amplitude: Newtons;
  readonly centre: Seconds;
  readonly halfWidth: Seconds;
}

/** The vertical force of a contact as two pulses. */
export interface TwoMassForce {
  /** Of foot and shank, which come to rest in the landing. */
  readonly lowerLimb: ForcePulse;
  /** Of the rest of the body, over the whole contact. */
  readonly remainder: ForcePulse;
  /** Their sum, from contact on. */
  readonly force: Samples<"N">;
}

/**
 * Makes the vertical force of a running contact from two masses: foot and shank, which stop short, and the rest.
 *
 * Formula: J_total = m g (t_c + t_a); J₁ = 2 Δt₁ (m₁ Δv₁/Δt₁ + m₁ g), J₂ = J_total − J₁; each pulse A/2 [1 + cos(π (t − B)/C)]
 * with A = J/C, B₁ = C₁ = Δt₁, B₂ = C₂ = t_c/2.
 * Units: kg, s and m/s in; N, N·s and s out.
 * Limits: steady running on the level. The second pulse is symmetric here; the publication lets its peak move.
 * Source: masses and shape: Clark, Ryan & Weyand 2017, J Exp Biol 220:247 (R² 0.95 ± 0.04 over 500 waveforms at 3.0 to 11.1 m/s).
 * J₁ follows from the momentum that m₁ loses in the rising half of its pulse; that the publication writes it so is from memory.
 * @param runner - Mass, times and landing, all above 0; `landingTime` at most half the contact time.
 * @param options - Share, rate, gravity; {@link TWO_MASS_FORCE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: a number out of bounds, or a landing that takes more
 * impulse than the whole contact has.
 * @example
 * const runner = { mass: 70, contactTime: 0.25, aerialTime: 0.1, landingSpeed: 1.2, landingTime: 0.03 };
 * twoMassForce(runner).lowerLimb.impulse; // 16.735
 */
export function twoMassForce(
  runner: TwoMassRunner,
  options: TwoMassForceOptions = TWO_MASS_FORCE_DEFAULTS,
): TwoMassForce {
  const { lowerLimbShare, sampleRate, gravity } = withDefaults(TWO_MASS_FORCE_DEFAULTS, options);
  const mass = requireNumber("mass", runner.mass, { above: 0, unit: "kg" });
  const contactTime = requireNumber("contactTime", runner.contactTime, { above: 0, unit: "s" });
  const aerialTime = requireNumber("aerialTime", runner.aerialTime, { from: 0, unit: "s" });
  const landingSpeed = requireNumber("landingSpeed", runner.landingSpeed, { above: 0, unit: "m/s" });
  const landingTime = requireNumber("landingTime", runner.landingTime, {
    above: 0,
    to: contactTime / 2,
    unit: "s",
  });
  requireNumber("lowerLimbShare", lowerLimbShare, { above: 0, below: 1 });
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireNumber("gravity", gravity, { above: 0, unit: "m/s^2" });
  const total = mass * gravity * (contactTime + aerialTime);
  const landing = 2 * lowerLimbShare * mass * (landingSpeed + gravity * landingTime);
  if (landing >= total) {
    fail(
      "out-of-range",
      `the landing takes ${landing} N s of the contact's ${total} N s; a lower landingSpeed is needed`,
      {
        argument: "landingSpeed",
        values: { given: landingSpeed, landing, total },
      },
    );
  }
  const lowerLimb = pulse(landing, landingTime);
  const remainder = pulse(total - landing, contactTime / 2);
  const length = Math.floor(contactTime * sampleRate + 1e-9) + 1;
  const force = Float64Array.from(
    { length },
    (_, i) => pulseAt(lowerLimb, i / sampleRate) + pulseAt(remainder, i / sampleRate),
  );
  return { lowerLimb, remainder, force };
}

function pulse(impulse: number, halfWidth: number): ForcePulse {
  return { impulse, amplitude: impulse / halfWidth, centre: halfWidth, halfWidth };
}

function pulseAt({ amplitude, centre, halfWidth }: ForcePulse, time: number): number {
  const away = Math.abs(time - centre) / halfWidth;
  return away <= 1 ? (amplitude / 2) * (1 + Math.cos(Math.PI * away)) : 0;
}
