import { accuracyRows } from "../../tests/events/markers/accuracyRows.js";

/** Events by markers and inertial sensors as a section of the page; `shown` prints a number, ms. */
export function markersSection(shown: (value: number) => string): string {
  const rows = accuracyRows().map(({ method, event, against, contacts, missed, extra, meanMs, sdMs }) => {
    const errors = sdMs === null ? shown(meanMs) : `${shown(meanMs)} ± ${shown(sdMs)}`;
    return `| ${method} | ${event} | ${against} | ${contacts} | ${errors} | ${missed} | ${extra} |`;
  });
  return `## Events by markers and inertial sensors

Mean ± SD of the errors, ms, found less true, so that late is positive. The open treadmill run is of Fukuchi et al. 2017; the two
walking steps come with a published file format's samples; made gaits have exact truths. Acceleration and angular rate of
sensors are worked out from markers, which are smoother than a sensor on skin. A true event without a found one within 150 ms is
missed; extra ones are counted where all true ones are known.

| method | event | against | events | error, ms | missed | extra |
|---|---|---|---|---|---|---|
${rows.join("\n")}
`;
}
