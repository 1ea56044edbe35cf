import {
  fail,
  type Kilograms,
  type Metres,
  type MetresPerSecondSquared,
  requireNumber,
  requireOneOf,
  STANDARD_GRAVITY,
} from "../units/index.js";

/** What {@link hofNormalised} can make dimensionless. */
export type HofQuantity =
  | "length"
  | "time"
  | "speed"
  | "frequency"
  | "force"
  | "moment"
  | "power"
  | "impulse";

/** The body a quantity is measured by. */
export interface HofBody {
  /** Greater trochanter to ground. */
  readonly legLength: Metres;
  /** Needed for force, moment, power and impulse. */
  readonly mass?: Kilograms | undefined;
  /** Standard where left out. */
  readonly gravity?: MetresPerSecondSquared | undefined;
}

/** Powers of mass, leg length and gravity in the unit of each quantity. */
const EXPONENTS: Readonly<Record<HofQuantity, readonly [mass: number, length: number, gravity: number]>> = {
  length: [0, 1, 0],
  time: [0, 0.5, -0.5],
  speed: [0, 0.5, 0.5],
  frequency: [0, -0.5, 0.5],
  force: [1, 0, 1],
  moment: [1, 1, 1],
  power: [1, 0.5, 1.5],
  impulse: [1, 0.5, 0.5],
};

/**
 * Makes a quantity of gait dimensionless, so that bodies of different size compare.
 *
 * Formula: length/L, time/√(L/g), speed/√(g L), frequency × √(L/g), force/(m g), moment/(m g L), power/(m g^1.5 L^0.5),
 * impulse/(m g^0.5 L^0.5); L the leg length.
 * Units: SI in; a number without unit out. The speed squared is the Froude number.
 * Limits: it takes out size, no difference of build; compare trials of one speed in this form, not in m/s.
 * Source: Hof 1996, Gait Posture 4:222 (list from memory, each form checked by its dimensions).
 * @param quantity - What `value` is.
 * @param value - In SI units: m, s, m/s, Hz, N, N·m, W, N·s.
 * @param body - Leg length above 0, mass above 0 where the quantity needs it.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: no such quantity, or a number out of bounds;
 * `missing-value`: the quantity needs a mass.
 * @example
 * hofNormalised("speed", 1.35, { legLength: 0.92 }) // 0.449448
 * hofNormalised("force", 686.4655, { legLength: 0.92, mass: 70 }) // 1
 */
export function hofNormalised(quantity: HofQuantity, value: number, body: HofBody): number {
  const names = Object.keys(EXPONENTS) as HofQuantity[];
  const [ofMass, ofLength, ofGravity] = EXPONENTS[requireOneOf("quantity", quantity, names)];
  requireNumber(quantity, value);
  const legLength = requireNumber("legLength", body.legLength, { above: 0, unit: "m" });
  const gravity = requireNumber("gravity", body.gravity ?? STANDARD_GRAVITY, { above: 0, unit: "m/s^2" });
  const unit = legLength ** ofLength * gravity ** ofGravity;
  if (ofMass === 0) return value / unit;
  if (body.mass === undefined)
    fail("missing-value", `a dimensionless ${quantity} needs the mass`, { argument: "mass" });
  return value / unit / requireNumber("mass", body.mass, { above: 0, unit: "kg" });
}
