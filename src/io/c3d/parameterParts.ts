import type { C3dParameter } from "./c3dFile.js";

/** Values along a dimension of a parameter at most; what is more goes on in NAME2, NAME3, …. */
const MOST_VALUES = 255;

/** A parameter of any length. */
export interface ListParameter {
  readonly name: string;
  readonly type: C3dParameter["type"];
  readonly values: readonly string[] | readonly number[];
  readonly description: string;
  readonly locked?: boolean;
  /** Sizes in front of the last one, such as 3 × 4 for the corners of each platform. */
  readonly rows?: readonly number[];
  /** A single value without a dimension (of a text: one line). */
  readonly single?: boolean;
}

/** Makes a parameter, in as many parts as its length needs. */
export function parameterParts(list: ListParameter): C3dParameter[] {
  const { name, type, values, description, locked = false, rows = [], single = false } = list;
  const column = rows.reduce((product, one) => product * one, 1);
  const parts: C3dParameter[] = [];
  for (let from = 0; from < values.length || from === 0; from += MOST_VALUES * column) {
    const data = values.slice(from, from + MOST_VALUES * column);
    const last = single ? [] : [data.length / column];
    // The writer finds the width of texts.
    const dimensions = [...(type === "character" ? [1] : []), ...rows, ...last];
    const partName = from === 0 ? name : `${name}${parts.length + 1}`;
    parts.push({ name: partName, description, locked, dimensions, type, data } as C3dParameter);
  }
  return parts;
}
