import { type Caution, type Complete, type Fraction, fail, type Newtons } from "../../units/index.js";
import { type Flight, flightMeans, rangeOf } from "../baseline.js";
import { FLIGHT_LEVEL, findFlights } from "../findFlights.js";
import type { PlateSettings } from "../groundReaction.js";
import type { ToGroundReactionOptions } from "../options.js";
import { belowFlights } from "./belowFlights.js";
import type { PlateSource } from "./plateSource.js";

/** Where a plate's unloaded level is read. */
export interface Unloaded {
  readonly source: PlateSettings["zero"];
  /** The stretch whose mean is the offset; `null` for the flights'. */
  readonly zero: Flight | null;
  readonly flights: readonly Flight[];
  /** Flights that were found, and not used since the plate is not free in them, as a caution says. */
  readonly notFree: boolean;
  readonly cautions: readonly Caution[];
}

/**
 * A stretch whose mean vertical force lies above the unloaded level by more than this carries somebody, N.
 */
const LEAST_WEIGHT: Newtons = 20;
/**
 * More than this share of the samples below the level of the flights, and it is not that of a free plate. On an open
 * treadmill recording, whose platform rings after toe-off, 0.0001 lie below it; on the open one of a plate that is
 * lightly loaded at the end, 0.02.
 */
const LARGEST_SHARE_BELOW: Fraction = 0.01;

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
    return { source: "stated", zero: stated, flights, notFree: false, cautions };
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
      notFree: false,
      cautions: loaded(zero, "the file names", "it was taken off as asked"),
    };
  }
  const cautions: Caution[] = [];
  if (offset === "auto" && zero !== null) {
    cautions.push(...loaded(zero, "the file names", "the unloaded stretches found were taken instead"));
    if (cautions.length === 0) return { source: "file", zero, flights, notFree: false, cautions };
  }
  if (offset === "none") return { source: "none", zero: null, flights, notFree: false, cautions };
  const below = notFree(up, flights, name, offset);
  if (below !== null) cautions.push(below);
  return below === null || offset === "flights"
    ? { source: "flights", zero: null, flights, notFree: false, cautions }
    : { source: "none", zero: null, flights: [], notFree: true, cautions };
}

/** Says that the force falls below the flights' level for longer than a free plate's can; `null` where it does not. */
function notFree(
  up: Float64Array,
  flights: readonly Flight[],
  name: string,
  offset: "auto" | "flights",
): Caution | null {
  if (flights.length === 0) return null;
  const { share, lowest } = belowFlights(up, flights);
  if (share <= LARGEST_SHARE_BELOW) return null;
  const levels = flightMeans(up, flights);
  const level = levels.reduce((sum, value) => sum + value, 0) / levels.length;
  const done = offset === "flights" ? "it was taken off as asked" : "no offset or drift was taken off";
  return {
    code: "offset-not-free",
    message: `the vertical force of "${name}" lies at ${level.toFixed(0)} N in what looks like ${flights.length === 1 ? "a flight phase" : `${flights.length} flight phases`}, and clearly below that, by up to ${(-lowest).toFixed(0)} N, in ${(100 * share).toFixed(1)} % of all samples: it is not the level of a free plate, and ${done}; state a stretch in which nobody is on it as zero`,
    where: name,
    values: { level, share, lowest, flights: flights.length },
  };
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
