import type { Caution, Hertz, Newtons, Seconds } from "../../units/index.js";
import { FLIGHT_LEAST_RANGE } from "../findFlights.js";
import type { PlateSource } from "./plateSource.js";

/** An unloaded plate's force comes within this of zero, N: offsets are smaller, people heavier. */
const LARGEST_OFFSET: Newtons = 200;
/** Samples that are averaged before the range is taken, so that single spikes are no load. */
const BLOCK = 10;
/** A step moves the force within this time, s; drift takes longer. A judgement. */
const STEP_TIME: Seconds = 2;

/**
 * Leaves out the plates that nobody stood on, whose noise and drift would only add to the sum; all stay where
 * none was stood on. Somebody stands on a plate whose force changes as fast as by a step, or that is far from
 * zero all along.
 */
export function leftAlone(
  sources: readonly PlateSource[],
  sampleRate: Hertz,
): {
  used: readonly PlateSource[];
  cautions: Caution[];
} {
  const ranges = sources.map(({ force }) => rangesOf(force.up, sampleRate));
  const used = sources.filter((_, k) => {
    const { least, most, fastest } = ranges[k] as Ranges;
    return fastest >= FLIGHT_LEAST_RANGE || least >= LARGEST_OFFSET || most <= -LARGEST_OFFSET;
  });
  if (used.length === 0 || used.length === sources.length) return { used: sources, cautions: [] };
  const cautions = sources.flatMap((source, k): Caution[] => {
    if (used.includes(source)) return [];
    const { least, most } = ranges[k] as Ranges;
    const name = source.name ?? "";
    const drifts = most - least >= FLIGHT_LEAST_RANGE ? ", and moves slowly, as drift does" : "";
    return [
      {
        code: "plate-not-used",
        message: `nobody stood on "${name}" (its vertical force stays within ${least.toFixed(0)} to ${most.toFixed(0)} N${drifts}); it was left out`,
        where: name,
        values: { least, most },
      },
    ];
  });
  return { used, cautions };
}

interface Ranges {
  readonly least: number;
  readonly most: number;
  /** Largest range within a stretch as long as a step. */
  readonly fastest: number;
}

function rangesOf(samples: Float64Array, sampleRate: Hertz): Ranges {
  const means = blockMeans(samples);
  const within = (from: number, to: number): [least: number, most: number] => {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (let k = from; k < Math.min(to, means.length); k++) {
      const mean = means[k] as number;
      if (mean < least) least = mean;
      if (mean > most) most = mean;
    }
    return [least, most];
  };
  // Stretches overlap by half, so that none cuts every step apart.
  const half = Math.max(1, Math.round((STEP_TIME * sampleRate) / BLOCK / 2));
  let fastest = 0;
  for (let from = 0; from < means.length; from += half) {
    const [least, most] = within(from, from + 2 * half);
    fastest = Math.max(fastest, most - least);
  }
  const [least, most] = within(0, means.length);
  return { least, most, fastest };
}

function blockMeans(samples: Float64Array): Float64Array {
  const means = new Float64Array(Math.ceil(samples.length / BLOCK));
  for (let k = 0; k < means.length; k++) {
    const to = Math.min((k + 1) * BLOCK, samples.length);
    let sum = 0;
    for (let i = k * BLOCK; i < to; i++) sum += samples[i] as number;
    means[k] = sum / (to - k * BLOCK);
  }
  return means;
}
