import { isGaitKineticsError, type UnitFactor, unitFactor } from "../../units/index.js";

/** What a unit is worth; `null` where it is none the library knows. */
export function unitOrNull(name: string): UnitFactor | null {
  try {
    return unitFactor(name);
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return null;
  }
}
