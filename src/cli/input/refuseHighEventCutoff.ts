import type { GroundReaction } from "../../force/index.js";
import { fail } from "../../units/index.js";

/**
 * Refuses an event cutoff that the sampling rate does not allow, by the option's own name.
 *
 * @param eventCutoff - As typed, Hz.
 * @throws GaitKineticsError `out-of-range`.
 */
export function refuseHighEventCutoff(eventCutoff: number | undefined, { sampleRate }: GroundReaction): void {
  if (eventCutoff === undefined || eventCutoff < sampleRate / 2) return;
  fail(
    "out-of-range",
    `--event-cutoff is ${eventCutoff} Hz; at a sampling rate of ${sampleRate} Hz it must be below ${sampleRate / 2} Hz`,
    { argument: "eventCutoff", values: { given: eventCutoff, below: sampleRate / 2 } },
  );
}
