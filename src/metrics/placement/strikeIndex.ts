import type { Step } from "../../events/index.js";
import type { FootTrack, GroundReaction } from "../../force/index.js";
import {
  type Complete,
  type Fraction,
  fail,
  type Metres,
  type Newtons,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { footOf } from "../common/footOf.js";
import { levelCrossing } from "../common/levelCrossing.js";
import { requireContact } from "../common/requireContact.js";
import { requireMoment } from "../common/requireMoment.js";

/** A place on the ground. */
export interface GroundPlace {
  readonly forward: Metres;
  readonly right: Metres;
}

/** Where a foot or shoe lies: its rearmost and its foremost point. */
export interface FootLine {
  readonly heel: GroundPlace;
  readonly toe: GroundPlace;
}

/** Where the foot lies, and when its centre of pressure is read. */
export interface StrikeIndexOptions {
  /** At the instant of reading, in the frame of the force; `null` for the one that the recording holds in `feet`. */
  readonly foot?: FootLine | null | undefined;
  /** Vertical force that the rise first reaches at the instant of reading. */
  readonly footLevel?: Newtons | undefined;
}

/** The foot of the recording, at 250 N: below it the centre of pressure is known to centimetres only. This library's rule. */
export const STRIKE_INDEX_DEFAULTS: Complete<StrikeIndexOptions> = { foot: null, footLevel: 250 };

/**
 * Gives where along the foot the ground first takes it up: 0 at the heel, 1 at the toes.
 *
 * Formula: (c − heel) · (toe − heel)/|toe − heel|², c the centre of pressure where the unfiltered vertical force first reaches
 * the foot level, between samples.
 * Units: N, N·m and m in; a fraction of the foot's length out.
 * Limits: `null` where the foot's place is not known or the force stays below the foot level. As published, below 1/3 is a
 * rearfoot, to 2/3 a midfoot and above it a forefoot strike. Published is the first contact itself, at which the centre of
 * pressure is noise: at the foot level it has moved on by some millimetres. An error of 10 mm in the place of
 * markers or plate is 0.04. Values outside 0 to 1 say that one of them is off.
 * Source: Cavanagh & Lafortune 1980, J Biomech 13:397, as cited in an abstract on its modification; the level is this
 * library's rule.
 * @param ground - Force, moment and, without the option, feet in the library's frame.
 * @param step - The step to measure; its contact alone is used.
 * @param options - Foot and level; {@link STRIKE_INDEX_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no contact; `missing-channel`: no centre of pressure; `missing-value`: the place of no
 * foot is known; `unequal-lengths`, `not-finite`: a foot's track does not fit the samples or has a gap there; `out-of-range`: level not above 0, heel and
 * toe in one place, the contact does not rise within the recording.
 * @example
 * const force = { up: new Float64Array([0, 250, 1000, 0]) };
 * const moment = { forward: new Float64Array(4), right: new Float64Array([0, 20, 120, 0]) };
 * const foot = { heel: { forward: 0, right: 0 }, toe: { forward: 0.25, right: 0 } };
 * const whole = { ...contact, initialContact: 0, toeOff: 0.3 };
 * strikeIndex({ ...ground, sampleRate: 10, force, moment }, { contact: whole }, { foot }); // 0.32
 */
export function strikeIndex(
  ground: GroundReaction,
  step: Step,
  options: StrikeIndexOptions = STRIKE_INDEX_DEFAULTS,
): Fraction | null {
  const { foot: stated, footLevel } = withDefaults(STRIKE_INDEX_DEFAULTS, options);
  requireNumber("footLevel", footLevel, { above: 0, unit: "N" });
  const plate = footOf(ground, step);
  const { initialContact, toeOff, side } = requireContact(ground, step);
  const { sampleRate, force, moment } = { ...plate, ...plate.unfiltered };
  const aboutForward = requireMoment({ ...(moment && { moment }) }, "forward", "strikeIndex");
  const aboutRight = requireMoment({ ...(moment && { moment }) }, "right", "strikeIndex");
  if (stated === null && ground.feet === undefined) {
    fail(
      "missing-value",
      "strikeIndex needs the place of heel and toes: the option foot, or feet of the recording",
      {
        argument: "foot",
        values: { metric: "strikeIndex" },
      },
    );
  }
  const track = side === "unknown" ? undefined : ground.feet?.[side];
  if (stated === null && track === undefined) return null;
  const first = Math.ceil(initialContact * sampleRate);
  const place = levelCrossing(force.up, first, Math.floor(toeOff * sampleRate), footLevel, "first");
  if (place === null) return null;
  const load = between(force.up, place);
  const forward = between(aboutRight, place) / load;
  const right = -between(aboutForward, place) / load;
  const { heel, toe } = stated ?? lineAt(track as FootTrack, place, force.up.length);
  const ahead =
    requireNumber("foot.toe.forward", toe?.forward) - requireNumber("foot.heel.forward", heel?.forward);
  const beside = requireNumber("foot.toe.right", toe?.right) - requireNumber("foot.heel.right", heel?.right);
  const square = ahead * ahead + beside * beside;
  if (!(square > 0)) {
    fail("out-of-range", "heel and toe are in one place; a foot has a length", { argument: "foot" });
  }
  return ((forward - heel.forward) * ahead + (right - heel.right) * beside) / square;
}

function lineAt({ heel, toe }: FootTrack, place: number, length: number): FootLine {
  for (const [name, track] of Object.entries({ ...heel, toeForward: toe.forward, toeRight: toe.right })) {
    if (track.length === length) continue;
    fail(
      "unequal-lengths",
      `a track of the foot has ${track.length} samples (${name}); the force has ${length}`,
      {
        argument: "feet",
        values: { length: track.length, samples: length },
      },
    );
  }
  const at = ({ forward, right }: FootTrack["heel"]): GroundPlace => ({
    forward: between(forward, place),
    right: between(right, place),
  });
  return { heel: at(heel), toe: at(toe) };
}

/** The value at a place between samples. */
function between(samples: Float64Array, place: number): number {
  const before = Math.floor(place);
  const value = samples[before] as number;
  return place === before ? value : value + (place - before) * ((samples[before + 1] as number) - value);
}
