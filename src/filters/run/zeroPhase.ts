import { allFinite, type Complete, fail, requireNumber, requireOneOf } from "../../units/index.js";
import { isFirstOrder, type Section } from "../design/filterDesign.js";
import { channelsOf, type OneOrMore, refuseNotFinite } from "./channels.js";
import { bothWays, type Lane } from "./lanes.js";

/** Prepares a filter to run lanes of a length forward and back by a rule of its own; `gustafsson` is one. */
export type EndMethod = (sections: readonly Section[], length: number) => (lanes: readonly Lane[]) => boolean;

/**
 * How a signal goes on beyond its ends while it is filtered: turned about its end point (`odd`), mirrored (`even`),
 * held (`constant`), or not at all (`none`). The function `gustafsson` adds nothing either and chooses the states at
 * both ends instead; it is passed as a function so that only those who use it load it.
 */
export type Ends = "odd" | "even" | "constant" | "none" | EndMethod;

/** How a zero-phase filter treats the ends of its input and where it writes. */
export interface EndOptions {
  /** How the signal goes on beyond its ends; `odd` by default. */
  readonly ends?: Ends | undefined;
  /** Samples added at either end; by default 3 (2 S + 1) for S sections, less 3 if one is of first order. */
  readonly padLength?: number | null | undefined;
  /** Writes the result over the samples given and returns them; they must be `Float64Array`s. */
  readonly inPlace?: boolean | undefined;
}

/** Odd ends with the usual pad, as SciPy's `sosfiltfilt`. */
export const END_DEFAULTS: Complete<EndOptions> = { ends: "odd", padLength: null, inPlace: false };

/**
 * Runs sections forward and then backward over one or more channels, each direction from the steady state of the first
 * sample it meets. Only what lies beyond the ends is copied, never the whole signal.
 */
export function zeroPhase(
  samples: OneOrMore,
  sections: readonly Section[],
  options: Complete<EndOptions>,
): Float64Array | Float64Array[] {
  const { ends, padLength, inPlace } = options;
  const channels = channelsOf(samples, inPlace);
  const [first] = channels;
  if (!first) return [];
  const { length } = first;
  const none =
    typeof ends === "function" || requireOneOf("ends", ends, ["odd", "even", "constant", "none"]) === "none";
  const pad = none
    ? 0
    : requireNumber("padLength", padLength ?? usualPad(sections), { from: 0, whole: true });
  if (length <= pad) {
    fail("too-short", `there are ${length} samples; more than ${pad}, the padLength, are needed`, {
      argument: "samples",
      values: { length, padLength: pad },
    });
  }
  if (inPlace && !channels.every(allFinite)) refuseNotFinite(channels);
  const targets = channels.map((channel) => (inPlace ? channel : new Float64Array(length)));
  const scratch = new Float64Array(4 * pad);
  const run = (typeof ends === "function" ? ends : bothWays)(sections, length);
  for (let i = 0; i < channels.length; i += 2) {
    const lanes = channels.slice(i, i + 2).map((source, l): Lane => {
      const beyond = (side: 0 | 1) =>
        goOn(scratch.subarray((2 * l + side) * pad).subarray(0, pad), source, side, ends);
      return [source, targets[i + l] as Float64Array, beyond(0), beyond(1)];
    });
    if (!run(lanes)) refuseNotFinite(channels);
  }
  return Array.isArray(samples) ? targets : (targets[0] as Float64Array);
}

/** Six samples a section, and three more where none is of first order. */
function usualPad(sections: readonly Section[]): number {
  return 6 * sections.length + (sections.some(isFirstOrder) ? 0 : 3);
}

/** Fills a pad with what lies beyond the start (side 0) or end (side 1) of a signal, counted outwards from it. */
function goOn(pad: Float64Array, source: Float64Array, side: 0 | 1, ends: Ends): Float64Array {
  const last = source.length - 1;
  const inwards = (i: number) => source[side === 0 ? i : last - i] as number;
  for (let i = 0; i < pad.length; i++) {
    const [edge, mirrored] = [inwards(0), inwards(i + 1)];
    pad[i] = ends === "odd" ? 2 * edge - mirrored : ends === "even" ? mirrored : edge;
  }
  return pad;
}
