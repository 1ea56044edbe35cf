import type { Contact } from "../../events/index.js";
import type { Caution } from "../../units/index.js";
import { FEW_CONTACTS, LONGEST_STRIDE, spacingOf } from "./spacingOf.js";

/** A step that lasts more, or less, than these shares of the median. Left and right of a limp are 0.8 to 1.2 of it. */
const LONG_STEP = 1.5;
const SHORT_STEP = 0.6;

/**
 * Cautions on when contacts follow one another: contacts missed or found twice, no steps in succession.
 * @param leftOut - Partial contacts, across which a step lasts longer.
 */
export function spacingCautions(contacts: readonly Contact[], leftOut: readonly Contact[]): Caution[] {
  if (contacts.length < FEW_CONTACTS) return [];
  const { steps, usual } = spacingOf(contacts, leftOut);
  if (usual > LONGEST_STRIDE) {
    return [
      {
        code: "not-successive",
        message: `the contacts come ${usual.toFixed(1)} s apart (median), longer than any stride: they are no steps in succession, so step, stride and flight times and whatever rests on whole strides have no meaning`,
        values: { stepTime: usual },
      },
    ];
  }
  const cautions: Caution[] = [];
  const late = steps.filter(({ time }) => time > LONG_STEP * usual);
  const [firstLate] = late;
  if (firstLate !== undefined) {
    cautions.push({
      code: "contacts-missed",
      message: `${late.length} of ${steps.length} steps last longer than ${LONG_STEP} times the median of ${usual.toFixed(3)} s, the first before ${firstLate.at.toFixed(2)} s (${firstLate.time.toFixed(2)} s): a contact was missed there, or the runner paused; strides do not span it`,
      where: `${firstLate.at.toFixed(2)} s`,
      values: {
        steps: late.length,
        of: steps.length,
        median: usual,
        first: firstLate.at,
        longest: largest(late),
      },
    });
  }
  const early = steps.filter(({ time }) => time < SHORT_STEP * usual);
  const [firstEarly] = early;
  if (firstEarly !== undefined) {
    cautions.push({
      code: "contacts-doubled",
      message: `${early.length} of ${steps.length} steps last less than ${SHORT_STEP} times the median of ${usual.toFixed(3)} s, the first before ${firstEarly.at.toFixed(2)} s (${firstEarly.time.toFixed(2)} s): one contact may have been read as two, or something else touched the platform`,
      where: `${firstEarly.at.toFixed(2)} s`,
      values: { steps: early.length, of: steps.length, median: usual, first: firstEarly.at },
    });
  }
  return cautions;
}

function largest(steps: readonly { readonly time: number }[]): number {
  return steps.reduce((most, { time }) => Math.max(most, time), 0);
}
