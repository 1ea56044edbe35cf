import type { C3dGroup, C3dParameter } from "./c3dFile.js";
import { type ListParameter, parameterParts } from "./parameterParts.js";
import { parameterTable } from "./parameterTable.js";

/** What a parameter has to say in the end. */
export interface WantedParameter extends ListParameter {
  readonly group: string;
  /** What a reader takes where a text is missing; a list of these alone is not added. */
  readonly fallback?: string;
}

/** Groups as a file has them, with those parameters changed or added that do not yet say what they have to. */
export function withParameters(groups: readonly C3dGroup[], wanted: readonly WantedParameter[]): C3dGroup[] {
  const table = parameterTable(groups);
  const changed: C3dGroup[] = [...groups];
  for (const want of wanted) {
    const isText = want.type === "character";
    const given: readonly (string | number)[] = isText
      ? table.texts(want.group, want.name)
      : table.numbers(want.group, want.name);
    const old = table.get(want.group, want.name);
    const same = want.values.every((value, k) => {
      const stored = given[k] ?? want.fallback;
      return stored !== undefined && sameValue(stored, value, old?.type ?? want.type);
    });
    if (same) continue;
    const place = changed.findIndex(({ name }) => name.toUpperCase() === want.group);
    const group = changed[place] ?? newGroup(changed, want.group);
    const kept = old === undefined ? {} : { description: old.description, locked: old.locked };
    const parts = parameterParts({ ...want, ...kept });
    const renewed = { ...group, parameters: replaced(group.parameters, want.name, parts) };
    if (place < 0) changed.push(renewed);
    else changed[place] = renewed;
  }
  return changed;
}

/** Parameters are 32-bit numbers or 16-bit ones without a sign. */
function sameValue(stored: string | number, value: string | number, type: C3dParameter["type"]): boolean {
  if (typeof stored === "string" || typeof value === "string") return stored === value;
  if (type === "integer" && Number.isInteger(value)) return (stored & 0xffff) === (value & 0xffff);
  return Object.is(Math.fround(stored), Math.fround(value));
}

function newGroup(groups: readonly C3dGroup[], name: string): C3dGroup {
  const ids = groups.map(({ id }) => id);
  let id = 1;
  while (ids.includes(id)) id++;
  return { id, name, description: "", locked: false, parameters: [] };
}

function replaced(
  parameters: readonly C3dParameter[],
  name: string,
  parts: readonly C3dParameter[],
): C3dParameter[] {
  const isOld = ({ name: other }: C3dParameter) =>
    other.toUpperCase() === name ||
    (other.toUpperCase().startsWith(name) && /^[2-9]$|^[1-9]\d+$/.test(other.slice(name.length)));
  const at = parameters.findIndex(isOld);
  const kept = parameters.filter((parameter) => !isOld(parameter));
  const before = at < 0 ? kept.length : parameters.slice(0, at).filter((one) => !isOld(one)).length;
  return [...kept.slice(0, before), ...parts, ...kept.slice(before)];
}
