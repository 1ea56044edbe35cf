import type { Caution, Newtons } from "../../units/index.js";
import { FLIGHT_LEAST_RANGE } from "../findFlights.js";
import type { PlateSource } from "./plateSource.js";

/** An unloaded plate's force stays within this of zero, N: offsets are smaller, people heavier. */
const LARGEST_OFFSET: Newtons = 200;
/** Samples that are averaged before the range is taken, so that single spikes are no load. */
const BLOCK = 10;

/**
 * Leaves out the plates that nobody stood on, whose noise would only add to the sum; all stay where none was
 * stood on.
 */
export function leftAlone(sources: readonly PlateSource[]): {
  used: readonly PlateSource[];
  cautions: Caution[];
} {
  const ranges = sources.map(({ force }) => blockRange(force.up));
  const used = sources.filter((_, k) => {
    const { least, most } = ranges[k] as Range;
    return most - least >= FLIGHT_LEAST_RANGE || Math.max(most, -least) >= LARGEST_OFFSET;
  });
  if (used.length === 0 || used.length === sources.length) return { used: sources, cautions: [] };
  const cautions = sources.flatMap((source, k): Caution[] => {
    if (used.includes(source)) return [];
    const { least, most } = ranges[k] as Range;
    const name = source.name ?? "";
    return [
      {
        code: "plate-not-used",
        message: `nobody stood on "${name}" (its vertical force stays within ${least.toFixed(0)} to ${most.toFixed(0)} N); it was left out`,
        where: name,
        values: { least, most },
      },
    ];
  });
  return { used, cautions };
}

interface Range {
  readonly least: number;
  readonly most: number;
}

function blockRange(samples: Float64Array): Range {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let from = 0; from < samples.length; from += BLOCK) {
    const to = Math.min(from + BLOCK, samples.length);
    let sum = 0;
    for (let i = from; i < to; i++) sum += samples[i] as number;
    const mean = sum / (to - from);
    if (mean < least) least = mean;
    if (mean > most) most = mean;
  }
  return { least, most };
}
