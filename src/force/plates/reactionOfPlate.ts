import type { Position, Recording } from "../../recording/index.js";
import type { Caution, Complete, Metres, Newtons } from "../../units/index.js";
import type { Flight } from "../baseline.js";
import { correctBaseline } from "../correctBaseline.js";
import type { GroundReaction, MomentComponents, PlateSettings } from "../groundReaction.js";
import { CENTRE_OF_PRESSURE_FLOOR } from "../moments.js";
import type { ToGroundReactionOptions } from "../options.js";
import { type AlongDirections, movedBy } from "../platform/rotate.js";
import type { PlateSource } from "./plateSource.js";
import { refuseUpsideDown } from "./refuseUpsideDown.js";
import { unloaded } from "./unloaded.js";

const WHOSE = `state forceOn "platform" or "runner", whose force its channels hold, and the stretch in which it is unloaded as zero`;
/** What stays nearer to zero is the drift of a plate that nobody stood on, N. */
const LEAST_LOAD: Newtons = 100;

/**
 * The ground reaction of one plate: offset and drift taken off, its moment about the frame's origin at ground
 * level.
 * @param level - Height of the ground, m, that the moment is about; used where the plate's surface has a
 * place.
 */
export function reactionOfPlate(
  plate: PlateSource,
  recording: Recording,
  settings: Complete<ToGroundReactionOptions>,
  stated: Flight | null,
  level: Metres,
): GroundReaction {
  const { sampleRate, startTime, subject, speed, surface, grade, firstFoot, footwear, events } = recording;
  const rest = unloaded(plate, sampleRate, stated, settings);
  const corrected = correctBaseline(plate, rest, settings);
  const { name, side } = plate;
  // An unloaded stretch that was loaded is said, and taken off where the caller asked for it.
  if (plate.signs !== null && rest.cautions.every(({ code }) => code !== "zero-loaded")) {
    refuseUpsideDown(corrected.force.up, `the vertical force of force platform "${name}"`, WHOSE, LEAST_LOAD);
  }
  const pressed = plate.press?.(corrected.force);
  const atSurface = corrected.moment ?? pressed?.moment ?? null;
  const moment = atSurface && aboutOrigin(atSurface, corrected.force as AlongDirections, plate.centre, level);
  const floor = pressed?.floor ?? CENTRE_OF_PRESSURE_FLOOR;
  const cautions: Caution[] = [...corrected.cautions];
  if (floor > CENTRE_OF_PRESSURE_FLOOR) {
    cautions.push({
      code: "centre-of-pressure-floor",
      message: `the file leaves the centre of pressure blank up to ${floor.toFixed(0)} N of vertical force; it is used above that only`,
      values: { floor },
    });
  }
  const own: PlateSettings[] = name === null ? [] : [plateSettings(name, plate, corrected, rest)];
  return {
    sampleRate,
    startTime,
    force: corrected.force,
    ...(moment && { moment }),
    ...(name !== null && { plate: name }),
    ...(side !== null && { side }),
    subject,
    ...(speed !== undefined && { speed }),
    ...(surface !== undefined && { surface }),
    ...(grade !== undefined && { grade }),
    gravity: settings.gravity,
    ...(firstFoot !== undefined && { firstFoot }),
    ...(footwear !== undefined && { footwear }),
    ...(events !== undefined && events.length > 0 && { recordedEvents: events }),
    settings: {
      ...(Object.keys(corrected.offset).length > 0 && { offset: corrected.offset }),
      driftRemoved: corrected.driftRemoved,
      flights: rest.flights.length,
      filter: null,
      ...(own.length > 0 && { plates: own }),
    },
    cautions: [...plate.cautions, ...rest.cautions, ...cautions.map((caution) => onPlate(name, caution))],
  };
}

function aboutOrigin(
  moment: MomentComponents,
  force: AlongDirections,
  centre: Position | null,
  level: Metres,
): MomentComponents {
  if (centre === null) return moment;
  const { forward, up, right } = centre;
  return movedBy(moment as AlongDirections, force, { forward, up: up - level, right });
}

function plateSettings(
  name: string,
  { side, signs }: PlateSource,
  { offset, momentOffset, driftRemoved }: ReturnType<typeof correctBaseline>,
  rest: ReturnType<typeof unloaded>,
): PlateSettings {
  const taken = Object.keys(offset).length > 0;
  return {
    name,
    ...(side !== null && { side }),
    ...(taken && { offset }),
    ...(Object.keys(momentOffset).length > 0 && { momentOffset }),
    zero: taken ? rest.source : "none",
    driftRemoved,
    flights: rest.flights.length,
    ...signs,
  };
}

/** A caution with the plate it is about. */
function onPlate(name: string | null, caution: Caution): Caution {
  if (name === null) return caution;
  const { where } = caution;
  return {
    ...caution,
    message: `on "${name}", ${caution.message}`,
    where: where === undefined ? name : `${name}, ${where}`,
  };
}
