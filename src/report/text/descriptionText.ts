import type {
  DescribedChannel,
  DescribedMarker,
  DescribedPlatform,
  DescribedPoint,
  RecordingDescription,
} from "../description/description.js";
import { capitalised } from "../wording/capitalised.js";
import { formatNumber } from "../wording/formatNumber.js";
import { plainNumber } from "../wording/plainNumber.js";
import { cautionLines } from "./cautionLines.js";
import { columnLines, leftOutLines } from "./columnLines.js";
import { commandLines } from "./commandLines.js";
import { tableHead } from "./tableHead.js";
import { type Column, tableRow } from "./tableRow.js";
import { wrap } from "./wrap.js";

const LABEL = 15;

const CHANNELS: readonly Column[] = [
  { heading: "channel", width: 22, left: true },
  { heading: "holds", width: 26, left: true },
  { heading: "unit", width: 6, left: true },
  { heading: "least", width: 9 },
  { heading: "most", width: 9 },
];

/**
 * Writes a description as text of at most 80 columns: what the file is, what must be stated, channels (of a table that
 * is not fully stated its columns), platforms, markers, events and cautions.
 *
 * Units: as each line says.
 * Limits: a word of a command line is not cut, whatever its length; numbers to four digits; the description itself holds them in full. Control characters in a name become
 * spaces.
 * Source: layout of this library.
 * @param description - As {@link describeRecording} gives it.
 * @param title - Put on top, such as the name of the file.
 * @example
 * descriptionText(describeRecording(recording)).split("\n").every((line) => line.length <= 80) // true
 */
export function descriptionText(description: RecordingDescription, title: string | null = null): string {
  const lines = [
    ...(title === null ? [] : [...wrap(title), ""]),
    ...factLines(description),
    "",
    ...(description.toState.length === 0
      ? []
      : [
          "To be stated",
          ...description.toState.flatMap((sentence) => wrap(capitalised(sentence), "- ")),
          "",
        ]),
    ...commandLines(description.commandLine),
    ...(description.columns.length > 0 && description.toState.length > 0
      ? columnLines(description.columns, description.samples)
      : [...channelLines(description), ...leftOutLines(description.columns)]),
    ...description.platforms.flatMap((platform) => platformLines(platform, description)),
    ...markerLines(description),
    ...eventLines(description),
    ...cautionLines(description.cautions, (id) => id),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

function factLines(description: RecordingDescription): string[] {
  const { format, storage, duration, samples, sampleRate, startTime, subject } = description;
  const { speed, surface, grade, firstFoot, footwear } = description;
  const runner = [
    ...(subject.mass === undefined ? [] : [`mass ${plainNumber(subject.mass)} kg`]),
    ...(subject.height === undefined ? [] : [`height ${plainNumber(subject.height)} m`]),
  ];
  const trial = [
    ...(speed === null ? [] : [`speed ${plainNumber(speed)} m/s`]),
    ...(surface === null ? [] : [`on ${surface === "belt" ? "a belt" : "the ground"}`]),
    ...(grade === null ? [] : [`grade ${plainNumber(100 * grade)} %`]),
    ...(firstFoot === null ? [] : [`first foot ${firstFoot}`]),
    ...(footwear === null ? [] : [`footwear: ${footwear}`]),
  ];
  const start = startTime === 0 ? "" : `, from ${plainNumber(startTime)} s of the file's clock`;
  const rows: readonly (readonly [string, string])[] = [
    ["Format", storage === null ? format : `${format}, ${storage}`],
    [
      "Duration",
      duration === null || sampleRate === null
        ? `${samples} samples, at a rate that is not known`
        : samples === 0
          ? `${plainNumber(duration)} s, of markers alone`
          : `${plainNumber(duration)} s: ${samples} samples at ${plainNumber(sampleRate)} Hz${start}`,
    ],
    ["Axes", axesOf(description)],
    ["Runner", listed(runner)],
    ["Trial", listed(trial)],
  ];
  return rows.flatMap(([label, text]) => wrap(text, label.padEnd(LABEL)));
}

function axesOf({ framed, channels, markers }: RecordingDescription): string {
  if (framed) return "forward, up, right, as the library's";
  return channels.length === 0 && markers === null ? "not known" : "the file's own x, y, z";
}

function listed(parts: readonly string[]): string {
  return parts.length === 0 ? "nothing stated" : parts.join(", ");
}

function channelLines({ channels, platforms, samples }: RecordingDescription): string[] {
  if (channels.length === 0) return ["Channels       none", ""];
  return [
    ...tableHead(CHANNELS),
    ...channels.flatMap((channel) => channelRow(channel, platforms.length > 1, samples)),
    "",
  ];
}

function channelRow(channel: DescribedChannel, several: boolean, samples: number): string[] {
  const { name, holds, unit, least, most, blank, plate } = channel;
  const range = least === null || most === null ? ["", ""] : [formatNumber(least), formatNumber(most)];
  const of = plate === null ? (holds ?? "") : several ? `platform ${plate}` : "platform";
  return [
    ...tableRow(CHANNELS, [name, holds ?? of, unit, ...range]),
    ...(blank === 0 ? [] : wrap(`blank in ${blank} of ${samples} samples`, "    ")),
  ];
}

function platformLines(
  platform: DescribedPlatform,
  { samples, sampleRate, lengthUnit }: RecordingDescription,
): string[] {
  const pointText = (point: DescribedPoint): string =>
    Object.entries(point)
      .map(([axis, value]) => `${axis} ${plainNumber(value)}`)
      .join(", ");
  const { name, type, channels, place, origin, zero, calibrated, side } = platform;
  const rows: readonly (readonly [string, string])[] = [
    [
      "type",
      `${type}${calibrated ? ", with a calibration matrix" : ""}${side === null ? "" : `, under the ${side} foot`}`,
    ],
    ["channels", channels.join(", ")],
    ...(place === null
      ? ([["corners", "not stated"]] as const)
      : ([
          ["size", `${plainNumber(place.length)} by ${plainNumber(place.width)} ${lengthUnit}`],
          ["middle", `${pointText(place.middle)} ${lengthUnit}`],
          ...place.corners.map(
            (corner, i) => [`corner ${i + 1}`, `${pointText(corner)} ${lengthUnit}`] as const,
          ),
        ] as const)),
    ["origin", `${origin.map(plainNumber).join(", ")} ${lengthUnit} in the plate's axes`],
    [
      "zero",
      zero === null || sampleRate === null
        ? "no samples named as unloaded"
        : zeroText(zero, samples, sampleRate),
    ],
  ];
  return [
    ...wrap(`Platform ${name}`),
    ...rows.flatMap(([label, text]) => wrap(text, `  ${label.padEnd(LABEL - 2)}`)),
    "",
  ];
}

function zeroText(
  zero: { readonly from: number; readonly to: number },
  samples: number,
  rate: number,
): string {
  const beyond = zero.to > samples ? ", which reaches beyond the recording" : "";
  return `samples ${zero.from} to ${zero.to - 1} (${plainNumber(zero.from / rate)} to ${plainNumber(zero.to / rate)} s) are named as unloaded${beyond}`;
}

function markerLines({ markers }: RecordingDescription): string[] {
  if (markers === null || markers.markers.length === 0) return [];
  const { frames, sampleRate } = markers;
  const whole = markers.markers.filter(({ missing }) => missing === 0);
  const broken = markers.markers.filter(({ missing }) => missing > 0);
  return [
    `Markers: ${markers.markers.length}, ${frames} frames${sampleRate === null ? "" : ` at ${plainNumber(sampleRate)} Hz`}`,
    ...(whole.length === 0 ? [] : wrap(whole.map(({ name }) => name).join(", "), "  seen throughout: ")),
    ...broken.flatMap((marker) => wrap(gapText(marker, frames, sampleRate), "  ", "    ")),
    "",
  ];
}

function gapText(
  { name, missing, gaps, longest }: DescribedMarker,
  frames: number,
  rate: number | null,
): string {
  if (missing === frames) return `${name}: never seen`;
  const many = gaps === 1 ? "1 gap" : `${gaps} gaps`;
  const length = rate === null ? `${longest} frames` : `${plainNumber(longest / rate)} s`;
  return `${name}: not seen in ${missing} of ${frames} frames, ${many}, the longest ${length}`;
}

function eventLines({ events }: RecordingDescription): string[] {
  if (events.length === 0) return [];
  return [
    "Events",
    ...events.flatMap(({ label, time, side }) =>
      wrap(`${time.toFixed(3)} s  ${label}${side === undefined ? "" : `, ${side}`}`, "  "),
    ),
    "",
  ];
}
