import Papa from "papaparse";
import { fail } from "../../units/index.js";
import { REQUIRED_COLUMNS } from "./readChannels.js";
import { MISSING, OWN_FIELD } from "./words.js";
import { PLATFORM_FRAME, RUNNER_FRAME, type WrittenColumn } from "./writtenColumns.js";

/** Texts of the files of one tracking system. */
export interface MotionBidsTexts {
  readonly motion: string;
  readonly channels: string;
  readonly sidecar: string;
  readonly channelsSidecar: string;
}

/** What a sidecar says of the whole file. */
export interface SystemFacts {
  readonly taskName: string;
  readonly systemName: string;
  readonly sampleRate: number;
  /** What the standard has no field for. */
  readonly own: Readonly<Record<string, unknown>>;
}

/** Rows that are put together before they join the text. */
const BLOCK = 4096;

/** Writes the four files of a tracking system. */
export function writtenSystem(columns: readonly WrittenColumn[], facts: SystemFacts): MotionBidsTexts {
  const renamed = columns.some(({ name, recordedName }) => name !== recordedName);
  return {
    motion: motionOf(columns),
    channels: channelsOf(columns, renamed),
    sidecar: jsonOf(sidecarOf(columns, facts)),
    channelsSidecar: jsonOf(channelsSidecarOf(columns, renamed)),
  };
}

/** JSON as people read it, with a line end. */
export function jsonOf(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

/** A table with a heading. */
export function tableOf(heading: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return `${Papa.unparse([[...heading], ...rows.map((row) => [...row])], { delimiter: "\t", newline: "\n" })}\n`;
}

function motionOf(columns: readonly WrittenColumn[]): string {
  const rows = columns[0]?.samples.length ?? 0;
  if (rows === 0) {
    fail("too-short", "there is no sample to write; at least one is needed", { argument: "recording" });
  }
  const parts: string[] = [];
  for (let from = 0; from < rows; from += BLOCK) {
    const to = Math.min(rows, from + BLOCK);
    let block = "";
    for (let i = from; i < to; i++) {
      for (let k = 0; k < columns.length; k++) {
        block += k === 0 ? "" : "\t";
        block += cellOf((columns[k] as WrittenColumn).samples[i] as number);
      }
      block += "\n";
    }
    parts.push(block);
  }
  return parts.join("");
}

function cellOf(value: number): string {
  if (Number.isNaN(value)) return MISSING;
  return Object.is(value, -0) ? "-0" : String(value);
}

function channelsOf(columns: readonly WrittenColumn[], renamed: boolean): string {
  const heading = [...REQUIRED_COLUMNS, "reference_frame", "quantity", ...(renamed ? ["recorded_name"] : [])];
  const rows = columns.map(({ name, component, type, trackedPoint, unit, frame, quantity, recordedName }) => [
    name,
    component,
    type,
    trackedPoint,
    unit,
    frame,
    quantity,
    ...(renamed ? [recordedName === name ? MISSING : recordedName] : []),
  ]);
  return tableOf(heading, rows);
}

function sidecarOf(
  columns: readonly WrittenColumn[],
  { taskName, systemName, sampleRate, own }: SystemFacts,
): object {
  const positions = columns.filter(({ type }) => type === "POS").length;
  const points = new Set(
    columns.flatMap(({ trackedPoint }) => (trackedPoint === MISSING ? [] : trackedPoint)),
  );
  return {
    TaskName: taskName,
    TrackingSystemName: systemName,
    SamplingFrequency: sampleRate,
    RecordingDuration: (columns[0] as WrittenColumn).samples.length / sampleRate,
    MotionChannelCount: columns.length,
    MISCChannelCount: columns.length - positions,
    POSChannelCount: positions,
    TrackedPointsCount: points.size,
    MissingValues: MISSING,
    [OWN_FIELD]: own,
  };
}

function channelsSidecarOf(columns: readonly WrittenColumn[], renamed: boolean): object {
  const uses = (frame: string) => columns.some((column) => column.frame === frame);
  return {
    reference_frame: {
      Description: "Frame whose axes the components x, y and z are.",
      Levels: {
        ...(uses(RUNNER_FRAME) && {
          [RUNNER_FRAME]: {
            SpatialAxes: "FUR",
            RotationRule: "right-hand",
            Description: "x forward along the running surface, y up normal to it, z to the runner's right.",
          },
        }),
        ...(uses(PLATFORM_FRAME) && {
          [PLATFORM_FRAME]: {
            Description: `Axes of the force platform itself, whose corners are in "${OWN_FIELD}" of the motion sidecar.`,
          },
        }),
      },
    },
    quantity: {
      Description: "What the channel holds, which the standard's types do not tell of force.",
      Levels: {
        force: "Force of the ground on the runner along the component's axis.",
        "centre-of-pressure": "Where the ground's force acts on the surface, along the component's axis.",
        "free-moment":
          "Moment of the ground on the runner about the vertical through the centre of pressure.",
        marker: "Position of a marker along the component's axis.",
        platform: "Channel of a force platform as recorded, along the platform's own axes.",
        other: "Anything else.",
      },
    },
    ...(renamed && {
      recorded_name: { Description: "Name in the recording, where another channel has the same one." },
    }),
  };
}
