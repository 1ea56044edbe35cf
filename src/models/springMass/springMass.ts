import type { Caution, Joules, Kilograms, Metres, Newtons, Quantity } from "../../units/index.js";

/** How the numbers of a {@link SpringMass} were come by. */
export interface SpringMassMethod {
  /** `sine-wave`: from contact and flight times; `force`: peak and drop from the force itself. */
  readonly estimator: "sine-wave" | "force";
  /** `measured`: as stated; `height`: 0.53 × height; `null`: neither was given. */
  readonly legLength: "measured" | "height" | null;
  /**
   * What the leg sweeps over: `speed`: speed × contact time from a fixed point; `centre-of-pressure`: that less the forward
   * travel of the centre of pressure; `null`: no speed or no leg length was given.
   */
  readonly sweep: "speed" | "centre-of-pressure" | null;
}

/** The leg of a {@link SpringMass}: a straight spring from the point of contact to the centre of mass. */
export interface SpringLeg {
  /** At initial contact. */
  readonly length: Metres;
  /** Forward way of the centre of mass over the point of contact, from initial contact to toe-off. */
  readonly sweep: Metres;
  /** Angle that the leg turns through from initial contact to toe-off; half of it on each side of the vertical. */
  readonly sweptAngle: Quantity<"rad">;
  /** Largest shortening. */
  readonly compression: Metres;
  readonly stiffness: Quantity<"N/m">;
}

/** A runner's contact as a mass on a spring. */
export interface SpringMass {
  readonly method: SpringMassMethod;
  readonly mass: Kilograms;
  readonly peakForce: Newtons;
  /** Of the centre of mass, from initial contact to its lowest point; positive. */
  readonly drop: Metres;
  readonly verticalStiffness: Quantity<"N/m">;
  /** Of the vertical spring at its lowest point: what a perfect spring would give back, so an upper bound. */
  readonly storedEnergy: Joules;
  /** `null` without speed and leg length, or where the sweep does not fit the leg (see `cautions`). */
  readonly leg: SpringLeg | null;
  readonly cautions: readonly Caution[];
}
