import {
  type Complete,
  fail,
  type Kilograms,
  type Metres,
  type MetresPerSecond,
  type Newtons,
  type Quantity,
  requireNumber,
  withDefaults,
} from "../units/index.js";

/** The body in the wind and the air about it. Area, or mass and height. */
export interface AirDragOptions {
  /** Area of the body seen from the front; `null` for the one by mass and height. */
  readonly frontalArea?: Quantity<"m^2"> | null | undefined;
  readonly mass?: Kilograms | null | undefined;
  readonly height?: Metres | null | undefined;
  readonly dragCoefficient?: number | undefined;
  readonly airDensity?: Quantity<"kg/m^3"> | undefined;
  /** Wind against the runner; negative from behind. */
  readonly headwind?: MetresPerSecond | undefined;
}

/** Still air at 20 °C and 101.325 kPa (1.204 kg/m³ by the gas law); coefficient 0.9. Source: from memory. */
export const AIR_DRAG_DEFAULTS: Complete<AirDragOptions> = {
  frontalArea: null,
  mass: null,
  height: null,
  dragCoefficient: 0.9,
  airDensity: 1.204,
  headwind: 0,
};

/**
 * Gives the mean drag of the air on a runner over ground: the force that `drag` of {@link externalWork} takes.
 *
 * Formula: D = ρ C A u|u|/2, u = speed + headwind; A as stated or 0.266 × body surface, 0.007184 (mass in kg)^0.425 (height in
 * cm)^0.725 m².
 * Units: m/s, kg, m, m² and kg/m³ in; N out, positive backward.
 * Limits: an estimate within perhaps 20 %: coefficient and area were measured on few runners. About 3 N at 3.5 m/s. A belt
 * in still air has none. The integration of the force over whole strides needs no drag, since the mean is taken off; the
 * work, and the place of a foot found from force, do.
 * Source: law of drag; 0.9, 0.266 (after Pugh 1970) and the surface (Du Bois & Du Bois 1916) from memory.
 * @param speed - Over the ground, from 0.
 * @param options - Body, air, wind; {@link AIR_DRAG_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-value`: neither area nor mass and height; `out-of-range`, `wrong-type`, `not-finite`: a
 * number out of bounds.
 * @example
 * airDrag(3.5, { mass: 70, height: 1.75 }) // 3.2628
 */
export function airDrag(speed: MetresPerSecond, options: AirDragOptions = AIR_DRAG_DEFAULTS): Newtons {
  const settings = withDefaults(AIR_DRAG_DEFAULTS, options);
  const { dragCoefficient, airDensity, headwind } = settings;
  requireNumber("speed", speed, { from: 0, unit: "m/s" });
  requireNumber("dragCoefficient", dragCoefficient, { above: 0 });
  requireNumber("airDensity", airDensity, { above: 0, unit: "kg/m^3" });
  requireNumber("headwind", headwind, { unit: "m/s" });
  const past = speed + headwind;
  return (airDensity * dragCoefficient * areaOf(settings) * past * Math.abs(past)) / 2;
}

function areaOf({ frontalArea, mass, height }: Complete<AirDragOptions>): number {
  if (frontalArea !== null) return requireNumber("frontalArea", frontalArea, { above: 0, unit: "m^2" });
  if (mass === null || height === null) {
    fail("missing-value", "air drag needs frontalArea, or mass and height", { argument: "frontalArea" });
  }
  requireNumber("mass", mass, { above: 0, unit: "kg" });
  requireNumber("height", height, { above: 0, below: 3, unit: "m" });
  return 0.266 * 0.007184 * mass ** 0.425 * (100 * height) ** 0.725;
}
