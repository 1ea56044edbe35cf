import type { C3dGroup, C3dParameter } from "./c3dFile.js";

/** Finds parameters by name; of those that a file holds twice, the first. */
export interface ParameterTable {
  readonly get: (group: string, name: string) => C3dParameter | undefined;
  /** Values of a parameter and of its continuations (NAME2, NAME3, …) in one list; none where it is absent or holds texts. */
  readonly numbers: (group: string, name: string) => readonly number[];
  /** The first of {@link numbers}. */
  readonly number: (group: string, name: string) => number | undefined;
  /** The first value of a 16-bit parameter taken without sign: counts above 32767 are stored so. */
  readonly count: (group: string, name: string) => number | undefined;
  readonly texts: (group: string, name: string) => readonly string[];
  readonly text: (group: string, name: string) => string | undefined;
}

/** Makes the table of a file's parameters; case does not matter. */
export function parameterTable(groups: readonly C3dGroup[]): ParameterTable {
  const table = new Map<string, C3dParameter>();
  for (const group of groups) {
    for (const parameter of group.parameters) {
      const key = keyOf(group.name, parameter.name);
      if (!table.has(key)) table.set(key, parameter);
    }
  }
  const get = (group: string, name: string) => table.get(keyOf(group, name));
  const collect = (group: string, name: string): C3dParameter[] => {
    const found: C3dParameter[] = [];
    for (let part = get(group, name); part !== undefined; part = get(group, `${name}${found.length + 1}`)) {
      found.push(part);
    }
    return found;
  };
  const numbers = (group: string, name: string) =>
    collect(group, name).flatMap((part) => (part.type === "character" ? [] : part.data));
  const texts = (group: string, name: string) =>
    collect(group, name).flatMap((part) => (part.type === "character" ? part.data : []));
  const first = (group: string, name: string) => {
    const found = get(group, name);
    return found === undefined || found.type === "character" ? undefined : found.data[0];
  };
  return {
    get,
    numbers,
    texts,
    number: first,
    count: (group, name) => {
      const value = first(group, name);
      return value !== undefined && get(group, name)?.type === "integer" && value < 0 ? value + 65536 : value;
    },
    text: (group, name) => texts(group, name)[0],
  };
}

function keyOf(group: string, name: string): string {
  return `${group.toUpperCase()}:${name.toUpperCase()}`;
}
