import { type Complete, fail, requireFiniteSamples, requireNumber, requireOneOf } from "../../units/index.js";
import type { Section } from "../design/filterDesign.js";
import { channelsOf, nameOf, type OneOrMore, refuseNotFinite } from "./channels.js";
import { bothWays, type Lane } from "./lanes.js";

/** Runs lanes forward and back by a rule of its own; `gustafsson` is one. */
export type EndMethod = (sections: readonly Section[], lanes: readonly Lane[]) => boolean;

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
  /** Samples added at either end; by default 3 (2 S + 1), S sections, 6 for a single first-order section. */
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
  const { ends, inPlace } = options;
  const channels = channelsOf(samples);
  const length = channels[0]?.length ?? 0;
  const pad = channels.length > 0 ? padOf(length, sections, options) : 0;
  const lanes = channels.map((channel, i): Lane => {
    if (inPlace) requireFiniteSamples(nameOf(i, channels.length), channel);
    const source = channel instanceof Float64Array ? channel : new Float64Array(channel);
    const target = inPlace || source !== channel ? source : new Float64Array(length);
    return {
      source,
      target,
      head: beyond(source, pad, ends, 0, 1),
      tail: beyond(source, pad, ends, length - 1, -1),
    };
  });
  const run = typeof ends === "function" ? ends : bothWays;
  for (let i = 0; i < lanes.length; i += 2) {
    if (!run(sections, lanes.slice(i, i + 2))) refuseNotFinite(channels);
  }
  const targets = lanes.map(({ target }) => target);
  return Array.isArray(samples) ? targets : (targets[0] as Float64Array);
}

function padOf(
  length: number,
  sections: readonly Section[],
  { ends, padLength }: Complete<EndOptions>,
): number {
  const atOrigin = (place: 2 | 5) => sections.filter((section) => section[place] === 0).length;
  const usual = 3 * (2 * sections.length + 1 - Math.min(atOrigin(2), atOrigin(5)));
  const none =
    typeof ends === "function" || requireOneOf("ends", ends, ["odd", "even", "constant", "none"]) === "none";
  const pad = none ? 0 : requireNumber("padLength", padLength ?? usual, { from: 0, whole: true });
  if (length <= pad) {
    fail("too-short", `there are ${length} samples; more than ${pad}, the padLength, are needed`, {
      argument: "samples",
      values: { length, padLength: pad },
    });
  }
  return pad;
}

/** The samples beyond an end, counted outwards from it: `inward` leads from the end into the signal. */
function beyond(source: Float64Array, pad: number, ends: Ends, end: number, inward: 1 | -1): Float64Array {
  const edge = source[end] as number;
  return new Float64Array(pad).map((_, i) => {
    const mirrored = source[end + inward * (i + 1)] as number;
    return ends === "odd" ? 2 * edge - mirrored : ends === "even" ? mirrored : edge;
  });
}
