import type { PlatformChannel, PlatformType } from "../../recording/index.js";
import { refuseAbsurd } from "../largestValue.js";
import type { C3dChannel } from "./c3dFile.js";
import { checkStatedUnits } from "./checkStatedUnits.js";
import type { LengthUnit } from "./lengthUnit.js";
import type { Loads } from "./loadedDistance.js";
import { momentUnit } from "./momentUnit.js";
import { LEAST_LOAD, type PlatformSource, type Say } from "./platformSource.js";
import { quoted } from "./refuse.js";
import { scaledSamples } from "./scaledSamples.js";
import { unitOf } from "./unitOf.js";

/** What the channels of each type hold, in the format's order. */
export const CHANNEL_QUANTITIES: Readonly<
  Record<PlatformType, readonly ("force" | "length" | "moment" | "voltage")[]>
> = {
  1: ["force", "force", "force", "length", "length", "moment"],
  2: ["force", "force", "force", "moment", "moment", "moment"],
  3: ["force", "force", "force", "force", "force", "force", "force", "force"],
  4: ["voltage", "voltage", "voltage", "voltage", "voltage", "voltage"],
};
const SI = { force: "N", length: "m", moment: "N m", voltage: "V" } as const;

/** Brings the channels to SI by the units they state; where they state none, forces are N, and moments are told by the load. */
export function platformChannels(
  { file, length, unitsOfOption, own }: PlatformSource,
  type: PlatformType,
  channels: readonly C3dChannel[],
  halfSide: number,
  say: Say,
): readonly PlatformChannel[] | string {
  const quantities = CHANNEL_QUANTITIES[type];
  checkStatedUnits(channels, quantities, unitsOfOption, say);
  const written = channels.map(({ name, unit }) =>
    Object.hasOwn(unitsOfOption, name) ? (unitsOfOption[name] as string) : unit,
  );
  const factors: (number | null)[] = [];
  const deduced = new Set<string>();
  for (const [k, quantity] of quantities.entries()) {
    const unit = unitOf(written[k] as string);
    if (unit?.dimension === quantity) factors.push(unit.toSi);
    else if (unit?.dimension === "voltage") {
      const channel = quoted(channels[k]?.name ?? "");
      return `has the channel ${channel} in ${written[k]?.trim()}, where type ${type} holds ${quantity} in ${SI[quantity]}; state its unit as units: { ${channel}: "${SI[quantity]}" } if the label is wrong`;
    } else {
      deduced.add(quantity);
      factors.push(quantity === "length" ? length.toMetres : quantity === "moment" ? null : 1);
    }
  }
  if (deduced.has("voltage")) {
    say(
      "unit-deduced",
      `ANALOG:UNITS of its channels is ${quotedList(written)}; type 4 holds volts, and the scaled channels were taken as such`,
    );
  }
  if (deduced.has("force")) {
    say("unit-deduced", `ANALOG:UNITS of its channels is ${quotedList(written)}; its forces were taken as N`);
  }
  if (deduced.has("length")) {
    say("unit-deduced", `its centre of pressure was taken in ${length.name}, the unit of POINT:UNITS`);
  }
  if (deduced.has("moment")) {
    const factor = deducedMoment(loadsOf(channels, factors), type, halfSide, length, say);
    for (const [k, known] of factors.entries()) if (known === null) factors[k] = factor;
  }
  const exact = own?.samples;
  return channels.map((channel, k) => {
    const name = channel.name || `channel ${file.analogue.channels.indexOf(channel) + 1}`;
    const unit = SI[quantities[k] as "force"];
    const samples = scaledSamples(channel.samples, factors[k] as number, exact);
    refuseAbsurd(samples, unit, "units", (i) => `channel ${quoted(name)}, sample ${i + 1}`);
    return { name, unit, samples };
  });
}

function quotedList(units: readonly string[]): string {
  return [...new Set(units)].map((unit) => quoted(unit)).join(", ");
}

/** Type 1 has no moments about horizontal axes: its free moment is told by the unit of length alone. */
function loadsOf(channels: readonly C3dChannel[], factors: readonly (number | null)[]): Loads {
  const series = channels.map(({ samples }) => samples);
  const [, , fz, mx, my] = series as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  const factor = factors[2] as number;
  return {
    samples: fz.length,
    vertical: (i) => (fz[i] as number) * factor,
    moments: (i) => [mx[i] as number, my[i] as number],
  };
}

function deducedMoment(
  loads: Loads,
  type: PlatformType,
  halfSide: number,
  length: LengthUnit,
  say: Say,
): number {
  const found = type === 1 ? null : momentUnit(loads, halfSide, LEAST_LOAD);
  const byLength = `N times the unit of POINT:UNITS, N ${length.name}`;
  if (found === null) {
    say("unit-deduced", `the unit of its moments is not stated; ${byLength}, was taken`, {
      toSi: length.toMetres,
    });
    return length.toMetres;
  }
  const unit = found.toSi === 1 ? "N m" : "N mm";
  say(
    "unit-deduced",
    `the unit of its moments is not stated; ${unit} was taken, by which the loads lie ${(found.distance * found.toSi).toPrecision(2)} m from the transducer in the median`,
    { toSi: found.toSi, distance: found.distance },
  );
  return found.toSi;
}
