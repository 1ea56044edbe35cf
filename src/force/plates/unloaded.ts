import { type Caution, type Complete, fail } from "../../units/index.js";
import { type Flight, flightMeans, rangeOf } from "../baseline.js";
import { FLIGHT_LEVEL, findFlights } from "../findFlights.js";
import type { PlateSettings } from "../groundReaction.js";
import type { ToGroundReactionOptions } from "../options.js";
import type { PlateSource } from "./plateSource.js";

/** Where a plate's unloaded level is read. */
export interface Unloaded {
  readonly source: PlateSettings["zero"];
  /** The stretch whose mean is the offset; `null` for the flights'. */
  readonly zero: Flight | null;
  readonly flights: readonly Flight[];
  readonly cautions: readonly Caution[];
}

/**
 * A stretch whose mean vertical force lies above the unloaded level by more than this carries somebody, N.
 */
const LEAST_WEIGHT = 20;

/** Finds the unloaded stretches of a plate and chooses among them, the file's and the stated one. */
export function unloaded(
  plate: PlateSource,
  sampleRate: number,
  stated: Flight | null,
  { offset, drift }: Pick<Complete<ToGroundReactionOptions>, "offset" | "drift">,
): Unloaded {
  const { up } = plate.force;
  const asked = stated !== null || offset !== "none" || drift !== "never";
  const flights = asked ? findFlights(up, sampleRate) : [];
  const name = plate.name ?? "the recording";
  const loaded = (zero: Flight, whose: string, done: string): Caution[] => {
    const weight = weightOver(up, zero, flights);
    if (weight <= Math.max(LEAST_WEIGHT, FLIGHT_LEVEL * rangeOf(up))) return [];
    return [
      {
        code: "zero-loaded",
        message: `${whose} samples ${zero.from} to ${zero.to - 1} of "${name}" as unloaded, but the vertical force there lies ${weight.toFixed(0)} N above its unloaded level: ${done}`,
        where: name,
        values: { from: zero.from, to: zero.to, weight },
      },
    ];
  };
  if (stated !== null) {
    const cautions = loaded(stated, "what was stated names", "it was taken off all the same");
    return { source: "stated", zero: stated, flights, cautions };
  }
  const { zero } = plate;
  if (offset === "file") {
    if (zero === null) {
      fail(
        "missing-value",
        `the offset is to be the file's own, and the file names no unloaded samples of "${name}"; use "flights", or state a quiet stretch as zero`,
        { argument: "offset", where: name, values: { given: offset, allowed: ["auto", "flights", "none"] } },
      );
    }
    return {
      source: "file",
      zero,
      flights,
      cautions: loaded(zero, "the file names", "it was taken off as asked"),
    };
  }
  if (offset === "auto" && zero !== null) {
    const cautions = loaded(zero, "the file names", "the unloaded stretches found were taken instead");
    if (cautions.length === 0) return { source: "file", zero, flights, cautions };
    return { source: "flights", zero: null, flights, cautions };
  }
  return { source: offset === "none" ? "none" : "flights", zero: null, flights, cautions: [] };
}

/**
 * How far the mean over a stretch lies above the level of the flights or, without any, above the lowest
 * stretch as long.
 */
function weightOver(up: Float64Array, zero: Flight, flights: readonly Flight[]): number {
  const [level] = flightMeans(up, [zero]) as unknown as [number];
  const length = zero.to - zero.from;
  const blocks =
    flights.length > 0
      ? flights
      : Array.from({ length: Math.floor(up.length / length) }, (_, k) => ({
          from: k * length,
          to: (k + 1) * length,
        }));
  const levels = flightMeans(up, blocks);
  const lowest = levels.reduce((least, value) => Math.min(least, value), level);
  const reference =
    flights.length > 0 ? levels.reduce((sum, value) => sum + value, 0) / levels.length : lowest;
  return level - reference;
}
