import { readFileSync } from "node:fs";
import { expect } from "vitest";
import type { Marker, Recording } from "../../../src/recording/index.js";
import { type GaitKineticsError, isGaitKineticsError } from "../../../src/units/index.js";

export { cop, force } from "../fixtures.js";

/** Bytes of a file among the tables of text. */
export const fixtureBytes = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../fixtures/text/${name}`, import.meta.url)));

/** The marker of a name. */
export function markerOf(recording: Recording, name: string): Marker {
  const found = recording.markers?.markers.find((marker) => marker.name === name);
  if (found === undefined) throw new Error(`there is no marker ${name}`);
  return found;
}

/** Samples of a channel of another kind. */
export const other = (recording: Recording, name: string): number[] => [
  ...(recording.channels.find((channel) => channel.quantity === "other" && channel.name === name)?.samples ??
    []),
];

/** The library's error that a call throws, in one line. */
export function refusal(call: () => unknown): GaitKineticsError {
  try {
    call();
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    expect(caught.message).not.toMatch(/[\r\n]/);
    expect(caught.message.length).toBeLessThan(1200);
    return caught;
  }
  throw new Error("it was read");
}
