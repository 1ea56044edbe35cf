import { type Complete, fail, requireNumber, requireOneOf } from "../../units/index.js";
import type { Section } from "../design/filterDesign.js";
import { allFinite, channelsOf, type OneOrMore, refuseNotFinite } from "./channels.js";
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
  const length = channels[0]?.length ?? 0;
  const none =
    typeof ends === "function" || requireOneOf("ends", ends, ["odd", "even", "constant", "none"]) === "none";
  const pad = none
    ? 0
    : requireNumber("padLength", padLength ?? usualPad(sections), { from: 0, whole: true });
  if (channels.length > 0 && length <= pad) {
    fail("too-short", `there are ${length} samples; more than ${pad}, the padLength, are needed`, {
      argument: "samples",
      values: { length, padLength: pad },
    });
  }
  if (inPlace && !channels.every(allFinite)) refuseNotFinite(channels);
  const targets = channels.map((channel) =>
    inPlace
      ? (channel as Float64Array)
      : channel instanceof Float64Array
        ? new Float64Array(length)
        : new Float64Array(channel),
  );
  const scratch = new Float64Array(4 * pad);
  const pads = [0, 1, 2, 3].map((k) => scratch.subarray(k * pad, (k + 1) * pad));
  const run = (typeof ends === "function" ? ends : bothWays)(sections, length);
  for (let i = 0; i < channels.length; i += 2) {
    const lanes = targets.slice(i, i + 2).map((target, l): Lane => {
      const channel = channels[i + l];
      const source = channel instanceof Float64Array ? channel : target;
      const [head, tail] = pads.slice(2 * l) as [Float64Array, Float64Array];
      goOn(head, source, 0, 1, ends);
      goOn(tail, source, length - 1, -1, ends);
      return [source, target, head, tail];
    });
    if (!run(lanes)) refuseNotFinite(channels);
  }
  return Array.isArray(samples) ? targets : (targets[0] as Float64Array);
}

/** Six samples a section and three more, less three for each section of first order. */
function usualPad(sections: readonly Section[]): number {
  return 3 * (2 * sections.length + 1 - sections.filter(([, , , , , a2]) => a2 === 0).length);
}

/** Fills a pad with what lies beyond an end, counted outwards from it; `inward` leads from the end into the signal. */
function goOn(pad: Float64Array, source: Float64Array, end: number, inward: 1 | -1, ends: Ends): void {
  const edge = source[end] as number;
  for (let i = 0; i < pad.length; i++) {
    const mirrored = source[end + inward * (i + 1)] as number;
    pad[i] = ends === "odd" ? 2 * edge - mirrored : ends === "even" ? mirrored : edge;
  }
}
