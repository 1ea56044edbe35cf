import type { RecordedEvent, Side } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { C3dFile } from "./c3dFile.js";
import type { ParameterTable } from "./parameterTable.js";

/**
 * Reads the events of a file onto the recording's clock: those of the group EVENT, whose times (minutes and seconds)
 * count from frame 1 of the trial; where it has none those of the header, which count from the file's first frame.
 *
 * @param clock - Time of frame 1 of the trial, s.
 * @param start - Time of the file's first frame, s.
 */
export function eventsOf(
  file: C3dFile,
  table: ParameterTable,
  clock: number,
  start: number,
): { readonly events: readonly RecordedEvent[]; readonly cautions: readonly Caution[] } {
  const times = table.numbers("EVENT", "TIMES");
  const labels = table.texts("EVENT", "LABELS");
  const contexts = table.texts("EVENT", "CONTEXTS");
  const count = Math.min(
    table.count("EVENT", "USED") ?? Number.POSITIVE_INFINITY,
    Math.floor(times.length / 2),
  );
  const all =
    count > 0
      ? Array.from({ length: count }, (_, k): RecordedEvent => {
          const side = sideOf(contexts[k] ?? "");
          const time = clock + 60 * (times[2 * k] as number) + (times[2 * k + 1] as number);
          return { label: labels[k] ?? "", time, ...(side !== null && { side }) };
        })
      : file.header.events.map(({ label, time }): RecordedEvent => ({ label, time: start + time }));
  const events = all.filter(({ time }) => Number.isFinite(time));
  const lost = all.length - events.length;
  const cautions: Caution[] =
    lost === 0
      ? []
      : [
          {
            code: "event-without-time",
            message: `${lost} of ${all.length} events have a time that is no finite number and were left out`,
            where: "EVENT:TIMES",
            values: { count: lost },
          },
        ];
  return { events, cautions };
}

function sideOf(context: string): Side | null {
  const word = context.trim().toLowerCase();
  return word === "left" || word === "right" ? word : null;
}
