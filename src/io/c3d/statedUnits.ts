import { fail } from "../../units/index.js";
import { PATTERN_SIGN, partOf } from "../csv/columnNames.js";
import type { C3dChannel } from "./c3dFile.js";
import { quoted } from "./refuse.js";

/**
 * The units that the option states, by the names of the channels it means: an exact name counts before a pattern, of
 * several patterns the first.
 *
 * @throws GaitKineticsError `out-of-range`: a name or pattern that no channel has; it would be ignored unseen.
 */
export function statedUnits(
  channels: readonly C3dChannel[],
  units: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const names = [...new Set(channels.map(({ name }) => name))];
  const strange = Object.keys(units).find((key) => !names.some((name) => isMeant(key, name)));
  if (strange !== undefined) refuseName(strange, names);
  const meant = names.flatMap((name) => {
    const key = Object.hasOwn(units, name) ? name : Object.keys(units).find((one) => isMeant(one, name));
    return key === undefined ? [] : [[name, units[key] as string] as const];
  });
  return Object.fromEntries(meant);
}

function isMeant(key: string, name: string): boolean {
  return key === name || partOf(key, name) !== null;
}

function refuseName(name: string, names: readonly string[]): never {
  const some = names.slice(0, 20).map(quoted).join(", ") + (names.length > 20 ? ", …" : "");
  const behind = names.length === 0 ? "it has no analogue channel" : `it has ${some}`;
  const example = names.find((one) => one.startsWith(name));
  const hint =
    example === undefined || name.includes(PATTERN_SIGN)
      ? ""
      : `; ${quoted(`${name}${PATTERN_SIGN}`)} stands for several`;
  fail("out-of-range", `units names ${quoted(name)}, and the file has no such channel; ${behind}${hint}`, {
    argument: "units",
    values: { given: name, allowed: names },
  });
}
