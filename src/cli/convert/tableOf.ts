import { type LeftOut, writeCsv } from "../../io/index.js";
import type { Recording } from "../../recording/index.js";
import { isGaitKineticsError } from "../../units/index.js";

/** The text of a table, and what it does not hold. */
export interface Table {
  readonly content: string;
  readonly notes: readonly string[];
}

/** Writes a recording as a table, and says of each part that a table cannot hold that it is missing. */
export function tableOf(recording: Recording, leaveOut: readonly LeftOut[] = []): Table {
  try {
    return {
      content: writeCsv(recording, { leaveOut }),
      notes: leaveOut.map((part) => lossOf(part, recording)),
    };
  } catch (caught) {
    const part = lostPart(caught);
    if (part === null || leaveOut.includes(part)) throw caught;
    return tableOf(recording, [...leaveOut, part]);
  }
}

function lostPart(caught: unknown): LeftOut | null {
  if (!isGaitKineticsError(caught) || caught.argument !== "leaveOut") return null;
  const part = caught.values?.part;
  return part === "markers" || part === "platforms" || part === "events" ? part : null;
}

function lossOf(part: LeftOut, { markers, events = [], platforms = [] }: Recording): string {
  switch (part) {
    case "markers":
      return `${counted(markers?.markers.length ?? 0, "marker")} not written: a table holds one rate, and they have another, or begin or end at other times`;
    case "events":
      return `${counted(events.length, "event")} not written: a table has no place for them`;
    case "platforms":
      return `${counted(platforms.length, "force platform")} not written: a table has no place for raw channels`;
  }
}

function counted(n: number, noun: string): string {
  return n === 1 ? `1 ${noun} is` : `${n} ${noun}s are`;
}
