import type { GroundReaction } from "../force/index.js";
import type { RecordedEvent, Side } from "../recording/index.js";
import type { Seconds } from "../units/index.js";
import type { Stretch } from "./crossings.js";

/**
 * A marked event this near to an initial contact or toe-off belongs to it, s. A judgement: less than any
 * double support.
 */
const EVENT_REACH: Seconds = 0.06;

/**
 * What the recording itself says of the foot of each stretch: by the side of its plate, or by an event marked
 * there.
 */
export interface RecordedSides {
  /** `null` where nothing is said. */
  readonly sides: readonly (Side | null)[];
  readonly by: "plates" | "recorded events";
}

/** The feet that the recording names; `null` where it names none at all. */
export function recordedSides(ground: GroundReaction, stretches: readonly Stretch[]): RecordedSides | null {
  const plates = stretches.map(({ plate }) => ground.plates?.[plate ?? -1]?.side ?? ground.side ?? null);
  const events = (ground.recordedEvents ?? []).flatMap((event) => {
    const side = event.side ?? sideOfLabel(event.label);
    return side === null ? [] : [{ side, time: event.time - ground.startTime, ends: endsContact(event) }];
  });
  const sides = stretches.map(({ initialContact, toeOff }, k): Side | null => {
    const onPlate = plates[k] ?? null;
    if (onPlate !== null) return onPlate;
    const near = events
      .map(({ side, time, ends }) => ({ side, apart: Math.abs(time - (ends ? toeOff : initialContact)) }))
      .filter(({ apart }) => apart <= EVENT_REACH)
      .sort((a, b) => a.apart - b.apart);
    return near[0]?.side ?? null;
  });
  if (sides.every((side) => side === null)) return null;
  return { sides, by: plates.some((side) => side !== null) ? "plates" : "recorded events" };
}

function endsContact({ label }: RecordedEvent): boolean {
  return /off\b|[tf]o$/i.test(label.trim());
}

/**
 * The side in short labels such as RHS, LTO, RIC: initial contact, heel or foot strike, toe or foot off.
 * Common practice.
 */
function sideOfLabel(label: string): Side | null {
  const letter = /^([LR])(?:HS|FS|IC|TO|FO)$/i.exec(label.trim())?.[1];
  if (letter === undefined) return null;
  return letter.toUpperCase() === "L" ? "left" : "right";
}
