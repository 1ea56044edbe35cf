import { requireNumber, requireOneOf } from "../units/index.js";
import type { RecordedEvent } from "./recording.js";
import { wrongType } from "./wrongType.js";

/**
 * Checks marked events.
 *
 * @param events - The events.
 * @throws GaitKineticsError `wrong-type`, `not-finite`, `out-of-range`: a field that is not what its type
 * says.
 */
export function checkEvents(events: readonly RecordedEvent[]): void {
  if (!Array.isArray(events)) wrongType("events", events, "an array");
  for (const [k, event] of events.entries()) {
    if (typeof event !== "object" || event === null) wrongType(`events[${k}]`, event, "an object");
    if (typeof event.label !== "string") wrongType(`events[${k}].label`, event.label, "a text");
    requireNumber(`events[${k}].time`, event.time, { unit: "s" });
    if (event.side !== undefined) requireOneOf(`events[${k}].side`, event.side, ["left", "right"]);
  }
}
