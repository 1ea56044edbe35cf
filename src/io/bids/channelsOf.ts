import type { Channel } from "../../recording/index.js";
import { type Caution, fail } from "../../units/index.js";
import { refuseAbsurd } from "../largestValue.js";
import type { System, SystemColumn } from "./readSystem.js";
import { quoted } from "./words.js";

/** Largest value, m or N·m, of a channel that must be zero. The same judgement as for tables of text. */
const ZERO_TOLERANCE = 0.001;

/** The channels of a recording, with what became a marker, a platform or the time left out. */
export function channelsOf(
  { columns, sampleRate, startTime }: System,
  markers: ReadonlySet<SystemColumn>,
): { readonly channels: readonly Channel[]; readonly cautions: readonly Caution[] } {
  const points = new Set(
    columns.flatMap(({ role, channel }) => (isForce(role.kind) && channel.trackedPoint) || []),
  );
  const channels: Channel[] = [];
  const cautions: Caution[] = [];
  for (const column of columns) {
    const { channel, role, samples } = column;
    const name = channel.recordedName ?? channel.name;
    const own = channel.quantity !== undefined;
    const plate =
      channel.trackedPoint !== undefined && (own || points.size > 1) ? { plate: channel.trackedPoint } : {};
    switch (role.kind) {
      case "time":
      case "platform":
        break;
      case "zero":
        refuseNonZero(column, role.factor, role.reason);
        break;
      case "force":
      case "centre-of-pressure":
      case "free-moment": {
        const scaled = scaledBy(samples, role.factor);
        refuseAbsurd(scaled, UNITS[role.kind], "channels", rowOf(name));
        if (role.kind === "force") cautions.push(...gapOf(name, scaled, sampleRate, startTime));
        channels.push({
          name,
          quantity: role.kind,
          direction: role.direction,
          unit: UNITS[role.kind],
          samples: scaled,
          ...plate,
        });
        break;
      }
      case "marker":
        if (!markers.has(column)) channels.push(otherOf(name, column, {}));
        break;
      case "other":
        channels.push(otherOf(name, column, own ? plate : {}));
        break;
    }
  }
  return { channels, cautions };
}

const UNITS = { force: "N", "centre-of-pressure": "m", "free-moment": "N m" } as const;

function isForce(kind: SystemColumn["role"]["kind"]): boolean {
  return kind === "force" || kind === "centre-of-pressure" || kind === "free-moment";
}

function otherOf(
  name: string,
  { channel, samples }: SystemColumn,
  plate: { readonly plate?: string },
): Channel {
  return { name, quantity: "other", direction: null, unit: channel.unit, samples, ...plate };
}

/** Brings samples to SI and to the library's direction. A turned sign makes −0 of 0; adding 0 takes that back. */
export function scaledBy(samples: Float64Array, factor: number): Float64Array {
  return factor === 1 ? samples : samples.map((sample) => sample * factor + 0);
}

/** Names the place of a sample in the table. */
export function rowOf(name: string): (sample: number) => string {
  return (sample) => `row ${sample + 1}, channel ${quoted(name)}`;
}

function refuseNonZero({ channel, samples }: SystemColumn, factor: number, reason: string): void {
  const row = samples.findIndex((sample) => Math.abs(sample * factor) > ZERO_TOLERANCE);
  if (row < 0) return;
  const { name } = channel;
  fail(
    "unreadable-file",
    `row ${row + 1}, ${quoted(name)} holds ${(samples[row] as number) * factor} in SI units, and must be 0 within ${ZERO_TOLERANCE}: ${reason}; keep it apart with columns: { ${quoted(name)}: "other" } if its zero lies elsewhere, and check the axes`,
    { argument: "axes", where: `row ${row + 1}, ${name}` },
  );
}

function gapOf(name: string, samples: Float64Array, sampleRate: number, startTime: number): Caution[] {
  const first = samples.findIndex(Number.isNaN);
  if (first < 0) return [];
  let count = 0;
  for (let i = first; i < samples.length; i++) if (Number.isNaN(samples[i])) count++;
  return [
    {
      code: "gap",
      message: `${quoted(name)} lacks ${count} of ${samples.length} samples, the first at ${(startTime + first / sampleRate).toFixed(3)} s (row ${first + 1}); fill them before the force is used`,
      where: name,
      values: { count, row: first + 1 },
    },
  ];
}
