import { median } from "../statistics/index.js";
import type { Seconds } from "../units/index.js";
import type { Stretch } from "./crossings.js";
import { type Gait, LONGEST_WALKING_CONTACT } from "./gait/gait.js";

/** A contact longer than this many medians may be two that were read as one. Common practice. */
const LONG_CONTACT = 1.6;
/** Contacts from which on the median tells what is usual. */
const FEW_CONTACTS = 5;
/** No running foot stays this long on the ground, s. Common practice. Slow walkers' feet do, and jumpers stand between jumps. */
const LONGEST_CONTACT: Seconds = 1;

/** The stretches that hold several contacts, and what told them. */
export interface SeveralInOne {
  readonly stretches: ReadonlySet<Stretch>;
  /** Whole ones that last as long and show no sign of it: they stay. */
  readonly long: readonly Stretch[];
  /** What lasts longer is no usual contact. */
  readonly limit: Seconds;
  /** Median length of the other whole ones; `null` without any. */
  readonly usual: Seconds | null;
}

/**
 * Finds the stretches that hold more than one contact: the flight between was too short to end the first, the force in it too
 * high, both feet were on one plate and could not be parted, or somebody stood still. What is longer than usual, as the first
 * contacts of a start are, holds several where the force falls away within it, or where no foot stays so long. Jumping and
 * standing have contacts of the body, of any length.
 *
 * @param isPart - Whether a stretch is a part of a foot across two plates, whose length tells nothing.
 * @param apart - Whether plates are kept apart, so that a long contact may be one foot's of a very slow walker.
 */
export function severalInOne(
  stretches: readonly Stretch[],
  gait: Gait | null,
  isPart: (stretch: Stretch) => boolean,
  apart: boolean,
): SeveralInOne {
  if (gait === null || gait === "jumping" || gait === "standing") {
    return { stretches: new Set(), long: [], limit: Number.POSITIVE_INFINITY, usual: null };
  }
  const walking = gait === "walking";
  const seen = ({ drop, untold }: Stretch) => drop === "whole" || (walking && untold === true);
  const single = stretches.filter((stretch) => !stretch.cut && !seen(stretch) && !isPart(stretch));
  const usual = single.length === 0 ? null : median(single.map(lengthOf));
  const told = usual !== null && single.length >= FEW_CONTACTS;
  const longest = walking ? LONGEST_WALKING_CONTACT : LONGEST_CONTACT;
  const common = told ? LONG_CONTACT * usual : longest;
  const most = told && walking && apart ? Math.max(common, longest) : longest;
  const limit = Math.min(common, most);
  const holds = (stretch: Stretch) =>
    seen(stretch) || lengthOf(stretch) > (stretch.drop === "partial" ? limit : most);
  const several = new Set(stretches.filter(holds));
  return {
    stretches: several,
    long: stretches.filter(
      (stretch) => !stretch.cut && !several.has(stretch) && !isPart(stretch) && lengthOf(stretch) > limit,
    ),
    limit,
    usual,
  };
}

function lengthOf({ initialContact, toeOff }: Stretch): Seconds {
  return toeOff - initialContact;
}
