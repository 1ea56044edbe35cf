import type { Caution } from "../../units/index.js";
import type { C3dFile } from "./c3dFile.js";
import type { LabAxes } from "./labAxes.js";
import type { LengthUnit } from "./lengthUnit.js";
import type { OwnStatements } from "./ownGroup.js";
import type { ParameterTable } from "./parameterTable.js";

/** What of the file every platform needs. */
export interface PlatformSource {
  readonly file: C3dFile;
  readonly table: ParameterTable;
  readonly axes: LabAxes;
  readonly length: LengthUnit;
  readonly own: OwnStatements | null;
  readonly unitsOfOption: Readonly<Record<string, string>>;
}

/** Takes down a caution about the platform at hand. */
export type Say = (code: string, message: string, values?: Caution["values"]) => void;

/** Vertical force that loads a plate, N. A judgement. */
export const LEAST_LOAD: number = 50;
