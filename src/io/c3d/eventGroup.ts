import type { RecordedEvent } from "../../recording/index.js";
import type { C3dGroup } from "./c3dFile.js";
import { parameterParts } from "./parameterParts.js";

const CONTEXTS = { left: "Left", right: "Right" } as const;

/**
 * Makes the group of events: times as whole minutes and seconds from frame 1 of the trial.
 * @param clock - Time of that frame, s.
 */
export function eventGroup(events: readonly RecordedEvent[], clock: number): Omit<C3dGroup, "id"> {
  const times = events.flatMap(({ time }) => {
    const minutes = Math.trunc((time - clock) / 60);
    return [minutes, time - clock - 60 * minutes];
  });
  const texts = (name: string, values: readonly string[], description: string) =>
    parameterParts({ name, type: "character", values, description });
  return {
    name: "EVENT",
    description: "events",
    locked: false,
    parameters: [
      ...parameterParts({
        name: "USED",
        type: "integer",
        values: [events.length],
        single: true,
        description: "events",
      }),
      ...texts(
        "CONTEXTS",
        events.map(({ side }) => (side === undefined ? "General" : CONTEXTS[side])),
        "side",
      ),
      ...texts(
        "LABELS",
        events.map(({ label }) => label),
        "what happened",
      ),
      ...parameterParts({
        name: "TIMES",
        type: "float",
        values: times,
        rows: [2],
        description: "minutes and seconds",
      }),
    ],
  };
}
