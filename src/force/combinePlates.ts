import type { Direction } from "../recording/index.js";
import { fail } from "../units/index.js";
import type { GroundReaction } from "./groundReaction.js";

const DIRECTIONS = ["forward", "up", "right"] as const;

/**
 * Combines plates or belts into the force on the body, and keeps each for the foot that stands on it.
 *
 * Formula: F = Σ Fᵢ, M = Σ Mᵢ, every moment about the frame's origin at the same ground level; centre of
 * pressure and free moment of the sum follow from F and M.
 * Units: N and N·m stay.
 * Limits: a component that one plate lacks is absent from the sum.
 * Source: statics.
 * @param plates - One or more, of one rate, length and start, all filtered alike.
 * @returns The sum; `plates` holds those given. What is said of the trial is taken from the first.
 * @throws GaitKineticsError `missing-value`: no plate; `unequal-lengths`: plates of different length;
 * `conflict`: rates, start times or filters that differ.
 * @example
 * combinePlates([ground, ground]).force.up[200] === 2 * ground.force.up[200] // true
 */
export function combinePlates(plates: readonly GroundReaction[]): GroundReaction {
  const [first] = plates;
  if (first === undefined)
    fail("missing-value", "no plate is given; at least one is needed", { argument: "plates" });
  for (const plate of plates) refuseUnlike(first, plate);
  const sum = (series: (plate: GroundReaction) => Float64Array | undefined): Float64Array | undefined => {
    const all = plates.map(series);
    if (all.some((samples) => samples === undefined)) return undefined;
    const total = Float64Array.from(all[0] as Float64Array);
    for (const samples of all.slice(1) as Float64Array[]) {
      for (let i = 0; i < total.length; i++) total[i] = (total[i] as number) + (samples[i] as number);
    }
    return total;
  };
  const components = (series: (plate: GroundReaction, direction: Direction) => Float64Array | undefined) => {
    const sums: Partial<Record<Direction, Float64Array>> = {};
    for (const direction of DIRECTIONS) {
      const total = sum((plate) => series(plate, direction));
      if (total !== undefined) sums[direction] = total;
    }
    return sums;
  };
  const force = components((plate, direction) => plate.force[direction]);
  const moment = components((plate, direction) => plate.moment?.[direction]);
  const { plate: _plate, side: _side, moment: _moment, ...shared } = first;
  return {
    ...shared,
    force: { ...force, up: force.up as Float64Array },
    ...(Object.keys(moment).length > 0 && { moment }),
    plates,
    settings: settingsOf(plates),
    cautions: plates.flatMap(({ cautions }) => cautions),
  };
}

function settingsOf(plates: readonly GroundReaction[]): GroundReaction["settings"] {
  const offset: Partial<Record<Direction, number>> = {};
  for (const direction of DIRECTIONS) {
    const levels = plates.map(({ settings }) => settings.offset?.[direction]);
    const taken = levels.filter((level) => level !== undefined);
    if (taken.length > 0) offset[direction] = taken.reduce((total, level) => total + level, 0);
  }
  const each = plates.flatMap(({ settings }) => settings.plates ?? []);
  return {
    ...(Object.keys(offset).length > 0 && { offset }),
    driftRemoved: plates.some(({ settings }) => settings.driftRemoved),
    flights: plates.reduce((total, { settings }) => total + settings.flights, 0),
    filter: (plates[0] as GroundReaction).settings.filter,
    ...(each.length > 0 && { plates: each }),
  };
}

function refuseUnlike(first: GroundReaction, plate: GroundReaction): void {
  const [one, other] = [first.force.up.length, plate.force.up.length];
  if (one !== other) {
    fail("unequal-lengths", `the plates have ${one} and ${other} samples; all must be of one length`, {
      argument: "plates",
      values: { given: other, allowed: one },
    });
  }
  const differ = (what: string, a: unknown, b: unknown): void => {
    if (JSON.stringify(a) === JSON.stringify(b)) return;
    fail(
      "conflict",
      `the plates differ in ${what}, ${JSON.stringify(a)} and ${JSON.stringify(b)}; it must be one`,
      {
        argument: "plates",
        values: { given: b, allowed: a },
      },
    );
  };
  differ("sampling rate", first.sampleRate, plate.sampleRate);
  differ("start time", first.startTime, plate.startTime);
  differ("filter", first.settings.filter, plate.settings.filter);
}
