import { lowPass } from "../../filters/index.js";
import type { Direction, Marker, MarkerSet, Side } from "../../recording/index.js";
import { type Caution, fail, requireNumber } from "../../units/index.js";
import type { KinematicEvents, KinematicMethod, MarkerChoice } from "./kinematicEvents.js";
import { type Swing, swingsOf } from "./swings.js";

/** Frames per second below which no event can be told. Common practice. */
const LEAST_RATE = 50;
/** Frames per second below which a frame is as long as the errors of the methods. Common practice. */
const LOW_RATE = 100;

/** Markers of one leg, checked, averaged and smoothed as they are asked for. */
export interface LegReader {
  readonly sampleRate: number;
  /** Smoothed positions, m. */
  readonly series: (part: string, choice: MarkerChoice, direction: Direction) => Float64Array;
  /** Positions as recorded, m. */
  readonly raw: (part: string, choice: MarkerChoice, direction: Direction) => Float64Array;
  /** Names by what they stood for, as far as they were asked for. */
  readonly names: Readonly<Record<string, readonly string[]>>;
  readonly cutoff: number | null;
  readonly order: number;
}

/** Opens a set of markers for one leg. */
export function readLeg(
  markers: MarkerSet,
  { cutoff, order }: { readonly cutoff: number | null; readonly order: number },
): LegReader {
  const sampleRate = requireNumber("markers.sampleRate", markers.sampleRate, {
    from: LEAST_RATE,
    unit: "Hz",
  });
  if (cutoff !== null) requireNumber("cutoff", cutoff, { above: 0, below: sampleRate / 2, unit: "Hz" });
  const names: Record<string, readonly string[]> = {};
  const raw = (part: string, choice: MarkerChoice, direction: Direction) => {
    const chosen = chosenMarkers(markers, part, choice);
    names[part] = chosen.map(({ name }) => name);
    return meanOf(chosen, direction);
  };
  return {
    sampleRate,
    raw,
    series: (part, choice, direction) => {
      const samples = raw(part, choice, direction);
      return cutoff === null ? samples : lowPass(samples, { cutoff, order, sampleRate });
    },
    names,
    cutoff,
    order,
  };
}

/** The markers that a choice names. */
export function chosenMarkers(markers: MarkerSet, part: string, choice: MarkerChoice): readonly Marker[] {
  const names = typeof choice === "string" ? [choice] : choice;
  if (!Array.isArray(names) || names.length === 0) {
    fail("missing-value", `the ${part} has no marker; state its name, or a list of names`, {
      argument: part,
    });
  }
  return names.map((name) => {
    const found = markers.markers.find((marker) => marker.name === name);
    if (found === undefined) {
      const known = markers.markers.map((marker) => marker.name);
      fail("missing-channel", `there is no marker "${name}" (${part}); the markers are ${known.join(", ")}`, {
        argument: part,
        where: name,
        values: { known },
      });
    }
    return found;
  });
}

/** Mean position of markers along one direction, m. */
export function meanOf(chosen: readonly Marker[], direction: Direction): Float64Array {
  const frames = (chosen[0] as Marker)[direction].length;
  const sum = new Float64Array(frames);
  for (const marker of chosen) {
    const samples = marker[direction];
    if (samples.length !== frames) {
      fail("unequal-lengths", `marker "${marker.name}" has ${samples.length} frames, others have ${frames}`, {
        where: marker.name,
      });
    }
    for (let i = 0; i < frames; i++) {
      const value = samples[i] as number;
      if (!Number.isFinite(value)) {
        fail(
          "gap",
          `marker "${marker.name}" was not seen in frame ${i} (${direction}); fill its gaps, or leave out what surrounds them`,
          { where: `${marker.name}, frame ${i}`, values: { frame: i } },
        );
      }
      sum[i] = (sum[i] as number) + value / chosen.length;
    }
  }
  return sum;
}

/** Swings of the leg by the heel's way, relative to the pelvis where that is given, from the positions as recorded. */
export function swingsOfLeg(leg: LegReader, heel: MarkerChoice, pelvis: MarkerChoice | null): Swing[] {
  const foot = leg.raw("heel", heel, "forward");
  return swingsOf(pelvis === null ? foot : minus(foot, leg.raw("pelvis", pelvis, "forward")), leg.sampleRate);
}

/** One series less another of the same frames. */
export function minus(a: Float64Array, b: Float64Array): Float64Array {
  if (a.length !== b.length) {
    fail("unequal-lengths", `markers have ${a.length} and ${b.length} frames; all of a set have as many`);
  }
  return a.map((value, i) => value - (b[i] as number));
}

/** Positions among the frames, as events in seconds with what they were found by. */
export function eventsFrom(
  method: KinematicMethod,
  leg: LegReader,
  side: Side | undefined,
  swings: readonly Swing[],
  found: { readonly contacts: readonly (number | null)[]; readonly toeOffs: readonly (number | null)[] },
): KinematicEvents {
  const { sampleRate, cutoff, order, names } = leg;
  const times = (positions: readonly (number | null)[]) =>
    positions.flatMap((position) => (position === null ? [] : [position / sampleRate]));
  const initialContacts = times(found.contacts);
  const toeOffs = times(found.toeOffs);
  return {
    method,
    side: side ?? "unknown",
    initialContacts,
    toeOffs,
    settings: { sampleRate, cutoff, order, markers: names, swings: swings.length },
    cautions: cautionsOf(method, sampleRate, swings.length, initialContacts.length + toeOffs.length),
  };
}

function cautionsOf(method: KinematicMethod, sampleRate: number, swings: number, events: number): Caution[] {
  const cautions: Caution[] = [];
  if (swings === 0) {
    cautions.push({
      code: "no-swing",
      message:
        "the leg does not swing in these markers, so there are no events: nobody walks or runs, forward is another axis, or the recording is shorter than a stride",
    });
  }
  if (events > 0) {
    cautions.push({
      code: "events-from-markers",
      message: `initial contact and toe-off come from markers (${method}); they lie up to some 80 ms from those of a force threshold, by method, speed and foot strike: do not mix the two, nor two methods, in one comparison`,
    });
  }
  if (sampleRate < LOW_RATE) {
    cautions.push({
      code: "low-rate",
      message: `markers at ${sampleRate} Hz lie ${(1000 / sampleRate).toFixed(0)} ms apart; contact times of single steps are no better than that`,
      values: { sampleRate },
    });
  }
  return cautions;
}
