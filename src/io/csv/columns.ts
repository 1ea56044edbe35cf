import type { Caution } from "../../units/index.js";
import type { ColumnRole } from "./roleOf.js";

/** One column that is read. */
export interface Column {
  /** Place in the row, from 0. */
  readonly index: number;
  /** As the file names it, without the unit. */
  readonly name: string;
  /** For messages: its place, from 1, and the cell of the header. */
  readonly label: string;
  readonly role: ColumnRole;
  /** SI unit of what it becomes; as written for `other`. */
  readonly unit: string;
  /** Whether the file itself, in the heading or in a row of units, states the unit. */
  readonly ownUnit: boolean;
  /** From the cell's number to SI in the library's frame. */
  readonly factor: number;
}

/** The header, read. */
export interface Columns {
  readonly columns: readonly Column[];
  /** Cells of a row that belong to a name; cells behind these must be blank. */
  readonly width: number;
  readonly cautions: readonly Caution[];
}
