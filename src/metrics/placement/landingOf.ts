import type { Step } from "../../events/index.js";
import type { GroundReaction } from "../../force/index.js";
import {
  type FootLevel,
  type Landing,
  type LandingFromForce,
  type LandingRecord,
  landingFromCentreOfMass,
  landingFromForce,
  type ToeShape,
} from "../../models/index.js";
import { bodyWeight, type Complete, withDefaults } from "../../units/index.js";
import { massForStep } from "../common/massForStep.js";
import { requireContact } from "../common/requireContact.js";
import { sharedResult } from "../common/sharedResult.js";
import { timeToContact } from "../common/timeToContact.js";

/** How the touches of a contact are read. */
export interface LandingDistanceOptions {
  /** Vertical force at which the foot's place is read: newtons or body weights. */
  readonly footLevel?: FootLevel | undefined;
  /** How the rise of the force is carried on to zero. */
  readonly toe?: ToeShape | undefined;
}

/** As `TOUCH_DEFAULTS` of the model. */
export const LANDING_DISTANCE_DEFAULTS: Complete<LandingDistanceOptions> = { footLevel: 250, toe: "curve" };

/** Why a step has no distance. */
export interface LandingAbsence {
  readonly refused: string;
  readonly message: string;
}

/** Where the foot of a step lands and leaves: measured where the centre of mass is, else by force; or why neither. */
export function landingOf(
  ground: GroundReaction,
  step: Step,
  options: LandingDistanceOptions,
): Landing | LandingFromForce | LandingAbsence {
  const { footLevel, toe } = withDefaults<LandingDistanceOptions>(LANDING_DISTANCE_DEFAULTS, options);
  const contact = requireContact(ground, step);
  const { surface, gravity } = ground;
  if (surface === undefined) {
    return {
      refused: "missing-surface",
      message: "it is not stated whether the runner is on ground or belt",
    };
  }
  if (ground.settings.filter !== null && ground.unfiltered === undefined) {
    return {
      refused: "filtered",
      message: "the unfiltered force is not at hand, and a filter moves the touches",
    };
  }
  if (ground.centreOfMass !== undefined) {
    const newtons =
      typeof footLevel === "number"
        ? footLevel
        : footLevel.bodyWeights * bodyWeight(massForStep(ground, step), gravity);
    return landingFromCentreOfMass(recordOf(ground), contact, ground.centreOfMass.forward, {
      surface,
      speed: ground.speed,
      threshold: contact.threshold,
      toe,
      footLevel: newtons,
    });
  }
  const { next, nextSameSide } = step;
  if (nextSameSide === undefined)
    return { refused: "no-stride", message: "the contact begins no whole stride" };
  timeToContact(contact, nextSameSide, "nextSameSide");
  if (next !== undefined && next.initialContact <= contact.toeOff) {
    return { refused: "no-flight", message: "the other foot lands before this one leaves" };
  }
  return sharedResult(ground, step, toe === "line" ? "landing by line" : "landing by curve", footLevel, () =>
    landingFromForce(recordOf(ground), contact, nextSameSide, {
      surface,
      speed: ground.speed,
      threshold: contact.threshold,
      toe,
      footLevel,
      gravity,
      grade: ground.grade,
      balance: ground.forwardBalance,
      height: ground.subject.height,
    }),
  );
}

/** The unfiltered force and moment. */
function recordOf({ sampleRate, unfiltered, ...filtered }: GroundReaction): LandingRecord {
  const { force, moment } = unfiltered ?? filtered;
  return { sampleRate, force, ...(moment && { moment }) };
}
