import type { Trial } from "./trial.js";

/** Whether the labels left and right only tell the feet apart, or may be exchanged within the trial. */
export function sidesAreRelative({ settings, cautions }: Trial): boolean {
  return settings.events.sides === "alternation" || cautions.some(({ code }) => code === "sides-relative");
}
