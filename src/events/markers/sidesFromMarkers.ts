import { type GroundReaction, meanCentreOfPressure } from "../../force/index.js";
import type { MarkerSet, Side } from "../../recording/index.js";
import { quantile } from "../../statistics/index.js";
import { type Caution, type Complete, type Metres, requireNumber, withDefaults } from "../../units/index.js";
import type { Contact } from "../contact.js";
import type { MarkerChoice } from "./kinematicEvents.js";
import { chosenMarkers, meanOf } from "./readMarkers.js";

/** Markers of both feet: heel and toe of each tell more than either. */
export interface FeetMarkers {
  readonly left: MarkerChoice;
  readonly right: MarkerChoice;
}

/** How sides are told from markers. */
export interface SidesFromMarkersOptions {
  /** Where markers and force do not start together, or for the centre of pressure: the force; `null` for neither. */
  readonly ground?: GroundReaction | null | undefined;
  /** The foot on the ground must be lower than the other, or nearer to the centre of pressure, by this much, m. */
  readonly leastDifference?: Metres | undefined;
}

/** Well above the noise of markers, well below the height of a swinging foot. Chosen on open recordings. */
export const SIDES_FROM_MARKERS_DEFAULTS: Complete<SidesFromMarkersOptions> = {
  ground: null,
  leastDifference: 0.02,
};

/** Share of a marker's heights that lie below its standing level: rare dips do not set it. */
const STANDING = 0.05;

/** Contacts with their side, and what speaks for it. */
export interface MarkedSides {
  /** The contacts given, each with its own side; `"unknown"` where markers do not tell. */
  readonly contacts: readonly Contact[];
  /** For each contact how much higher the other foot is, m; `null` outside the markers. */
  readonly heights: readonly (number | null)[];
  /** For each contact how much farther the other foot is from the centre of pressure, m; `null` where not known. */
  readonly distances: readonly (number | null)[];
  readonly cautions: readonly Caution[];
}

/** What speaks for the right foot, m. */
interface Evidence {
  readonly height: number | null;
  readonly distance: number | null;
}

/**
 * Tells the foot of every force contact from markers of both feet, each contact by itself: one that is missed or found
 * twice exchanges no other.
 *
 * Formula: over the middle half of the contact, the foot whose markers lie lower on average, each above its own standing level (the
 * 5th percentile of its height), is the one on the ground; where heights differ by less than the least difference, the foot nearer to
 * the centre of pressure along `forward` and `right`.
 * Units: s and m.
 * Limits: a contact outside the markers, or one that neither tells, is `"unknown"`. Two feet on the ground throughout, as in
 * standing, are not told apart by height. The centre of pressure must be in the same frame as the markers.
 * Source: definition; percentile and least difference chosen on open recordings.
 * @param contacts - Times from the first sample of the force.
 * @param markers - Without gaps in the markers named.
 * @param feet - Names of heel or toe markers of each foot.
 * @param options - {@link SIDES_FROM_MARKERS_DEFAULTS} where left out.
 * @throws GaitKineticsError `gap`, `missing-channel`, `missing-value`, `unequal-lengths`: as {@link zeniCoordinateEvents};
 * `out-of-range`: least difference below 0; `unknown-option`.
 * @example
 * const foot = (name, lag) => ({ name, up: Float64Array.from({ length: 100 }, (_, i) => 0.1 + 0.1 * Math.sin((i + lag) / 8)), forward: new Float64Array(100), right: new Float64Array(100) })
 * const markers = { sampleRate: 100, startTime: 0, markers: [foot("L", 0), foot("R", 25)] }
 * sidesFromMarkers([{ side: "unknown", initialContact: 0.25, toeOff: 0.5, threshold: 20 }], markers, { left: "L", right: "R" }).contacts[0].side // "left"
 */
export function sidesFromMarkers(
  contacts: readonly Contact[],
  markers: MarkerSet,
  feet: FeetMarkers,
  options: SidesFromMarkersOptions = {},
): MarkedSides {
  const settings = withDefaults<SidesFromMarkersOptions>(SIDES_FROM_MARKERS_DEFAULTS, options);
  const least = requireNumber("leastDifference", settings.leastDifference, { from: 0, unit: "m" });
  const sampleRate = requireNumber("markers.sampleRate", markers.sampleRate, { above: 0, unit: "Hz" });
  const { ground } = settings;
  const delay = ground === null ? 0 : ground.startTime - markers.startTime;
  const left = footOf(markers, "left", feet.left);
  const right = footOf(markers, "right", feet.right);

  const evidence = contacts.map(({ initialContact, toeOff }): Evidence => {
    const quarter = (toeOff - initialContact) / 4;
    const from = initialContact + quarter;
    const to = toeOff - quarter;
    const first = Math.ceil((from + delay) * sampleRate);
    const last = Math.floor((to + delay) * sampleRate);
    if (first < 0 || last >= left.above.length || first > last) return { height: null, distance: null };
    const height = meanBetween(left.above, first, last) - meanBetween(right.above, first, last);
    const forward = ground === null ? null : meanCentreOfPressure(ground, "forward", from, to);
    const aside = ground === null ? null : meanCentreOfPressure(ground, "right", from, to);
    if (forward === null || aside === null) return { height, distance: null };
    const away = ({ way }: Foot) =>
      Math.hypot(
        meanBetween(way.forward, first, last) - forward,
        meanBetween(way.right, first, last) - aside,
      );
    return { height, distance: away(left) - away(right) };
  });
  const sides = evidence.map(({ height, distance }): Side | "unknown" => {
    if (height !== null && Math.abs(height) >= least) return height > 0 ? "right" : "left";
    if (distance !== null && Math.abs(distance) >= least) return distance > 0 ? "right" : "left";
    return "unknown";
  });
  return {
    contacts: contacts.map((contact, k) => ({ ...contact, side: sides[k] as Side | "unknown" })),
    heights: evidence.map(({ height }, k) => towards(sides[k], height)),
    distances: evidence.map(({ distance }, k) => towards(sides[k], distance)),
    cautions: cautionsOf(sides, evidence, least),
  };
}

/** Evidence for the right foot as evidence for the side that was given. */
function towards(side: Side | "unknown" | undefined, value: number | null): number | null {
  return value === null || side !== "left" ? value : -value;
}

/** A foot's mean height above the standing level of its markers, and its mean way along the ground. */
interface Foot {
  readonly above: Float64Array;
  readonly way: { readonly forward: Float64Array; readonly right: Float64Array };
}

function footOf(markers: MarkerSet, part: Side, choice: MarkerChoice): Foot {
  const chosen = chosenMarkers(markers, part, choice);
  const heights = chosen.map((marker) => {
    const up = meanOf([marker], "up");
    const standing = quantile(up, STANDING);
    return up.map((height) => height - standing);
  });
  return {
    above: (heights[0] as Float64Array).map(
      (_, i) => heights.reduce((sum, height) => sum + (height[i] as number), 0) / heights.length,
    ),
    way: { forward: meanOf(chosen, "forward"), right: meanOf(chosen, "right") },
  };
}

function meanBetween(samples: Float64Array, first: number, last: number): number {
  let sum = 0;
  for (let i = first; i <= last; i++) sum += samples[i] as number;
  return sum / (last - first + 1);
}

function cautionsOf(
  sides: readonly (Side | "unknown")[],
  evidence: readonly Evidence[],
  least: number,
): Caution[] {
  const cautions: Caution[] = [];
  const unknown = sides.filter((side) => side === "unknown").length;
  if (unknown > 0) {
    cautions.push({
      code: "sides-unknown",
      message: `markers do not tell the foot of ${unknown} of ${sides.length} contacts: they lie outside the markers, or both feet are equally low and near within ${(1000 * least).toFixed(0)} mm`,
      values: { unknown, contacts: sides.length },
    });
  }
  const clear = evidence.filter(
    ({ height, distance }) =>
      height !== null && distance !== null && Math.abs(height) >= least && Math.abs(distance) >= least,
  );
  const opposed = clear.filter(
    ({ height, distance }) => (height as number) * (distance as number) < 0,
  ).length;
  if (opposed > 0) {
    cautions.push({
      code: "sides-uncertain",
      message: `in ${opposed} of ${clear.length} contacts the lower foot is farther from the centre of pressure than the other: left and right may be exchanged, the markers and the force may not share one frame or one clock, or a contact is not this runner's`,
      values: { opposed, contacts: clear.length },
    });
  }
  return cautions;
}
