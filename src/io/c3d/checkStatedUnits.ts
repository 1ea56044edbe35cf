import { fail } from "../../units/index.js";
import type { C3dChannel } from "./c3dFile.js";
import type { Say } from "./platformSource.js";
import { quoted } from "./refuse.js";
import { unitOf, type WrittenUnit } from "./unitOf.js";

/** A unit of each kind, for messages. */
const EXAMPLES: Readonly<Record<WrittenUnit["dimension"], string>> = {
  force: "N",
  length: "mm",
  moment: "N mm",
  voltage: "V",
};

/**
 * Checks the units that the option states for a platform's channels, and says where the file states others.
 *
 * @param quantities - What the channels hold, by the platform's type.
 * @throws GaitKineticsError `unknown-unit`: no unit this reader knows; `unit-mismatch`: one of another kind.
 */
export function checkStatedUnits(
  channels: readonly C3dChannel[],
  quantities: readonly WrittenUnit["dimension"][],
  stated: Readonly<Record<string, string>>,
  say: Say,
): void {
  const overruled: string[] = [];
  for (const [k, { name, unit }] of channels.entries()) {
    if (!Object.hasOwn(stated, name)) continue;
    const given = stated[name] as string;
    const quantity = quantities[k] as WrittenUnit["dimension"];
    const known = unitOf(given);
    if (known === null || known.dimension !== quantity) refuseUnit(name, given, known, quantity);
    const inFile = unitOf(unit);
    if (inFile !== null && (inFile.dimension !== known.dimension || inFile.toSi !== known.toSi)) {
      overruled.push(`${quoted(unit.trim())} for ${quoted(name)}, the option ${quoted(given)}`);
    }
  }
  const [first] = overruled;
  if (first === undefined) return;
  const more = overruled.length === 1 ? "" : `; likewise for ${overruled.length - 1} more`;
  say("option-over-file", `ANALOG:UNITS states ${first}; the option was used${more}`);
}

function refuseUnit(
  name: string,
  given: string,
  known: WrittenUnit | null,
  quantity: WrittenUnit["dimension"],
): never {
  const what = known === null ? "which is no unit this reader knows" : `a unit of ${known.dimension}`;
  fail(
    known === null ? "unknown-unit" : "unit-mismatch",
    `units states ${quoted(given)} for channel ${quoted(name)}, ${what}; the channel of a force platform holds ${quantity}, such as ${EXAMPLES[quantity]}`,
    { argument: "units", where: name, values: { given, allowed: quantity } },
  );
}
