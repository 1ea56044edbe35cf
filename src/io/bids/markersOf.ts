import type { Direction, Marker, MarkerSet } from "../../recording/index.js";
import { refuseAbsurd } from "../largestValue.js";
import { rowOf, scaledBy } from "./channelsOf.js";
import type { System, SystemColumn } from "./readSystem.js";

/** Tracked points whose three coordinates are there, and the columns they were made of. */
export function markersOf(system: System): {
  readonly set: MarkerSet | null;
  readonly used: ReadonlySet<SystemColumn>;
} {
  const points = new Map<string, Map<Direction, SystemColumn>>();
  for (const column of system.columns) {
    const { role, channel } = column;
    if (role.kind !== "marker" || channel.trackedPoint === undefined) continue;
    const parts = points.get(channel.trackedPoint) ?? new Map<Direction, SystemColumn>();
    points.set(channel.trackedPoint, parts);
    // A point that is tracked twice keeps the first of each coordinate; the others stay channels of their own.
    if (!parts.has(role.direction)) parts.set(role.direction, column);
  }
  const markers: Marker[] = [];
  const used = new Set<SystemColumn>();
  for (const [name, parts] of points) {
    const [forward, up, right] = [parts.get("forward"), parts.get("up"), parts.get("right")];
    if (forward === undefined || up === undefined || right === undefined) continue;
    for (const column of [forward, up, right]) used.add(column);
    const samplesOf = seenIn([forward, up, right], system.missing);
    const seen = (column: SystemColumn): Float64Array => {
      const samples = samplesOf(column);
      refuseAbsurd(samples, "m", "channels", rowOf(column.channel.name));
      return samples;
    };
    markers.push({ name, forward: seen(forward), up: seen(up), right: seen(right) });
  }
  const { sampleRate, startTime } = system;
  return { set: markers.length === 0 ? null : { sampleRate, startTime, markers }, used };
}

/** Coordinates in m; NaN in all three where all three hold the number that the file writes for a marker not seen. */
function seenIn(
  columns: readonly SystemColumn[],
  missing: number | null,
): (column: SystemColumn) => Float64Array {
  return ({ samples, role }) => {
    const factor = role.kind === "marker" ? role.factor : 1;
    if (missing === null) return scaledBy(samples, factor);
    return samples.map((sample, i) =>
      columns.every((column) => column.samples[i] === missing) ? Number.NaN : sample * factor,
    );
  };
}
