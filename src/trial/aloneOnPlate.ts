import type { Contact } from "../events/index.js";
import type { Seconds } from "../units/index.js";

/** When the centre of pressure of its plate is this foot's alone: the contact, or its single support where two share the plate. */
export function aloneOnPlate({ shared, singleSupport, initialContact, toeOff }: Contact): {
  readonly from: Seconds;
  readonly to: Seconds;
} {
  return (shared && singleSupport) || { from: initialContact, to: toeOff };
}
