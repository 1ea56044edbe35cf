import type { Channel, Direction, MarkerSet, Platform, Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import { MISSING, type Quantity, quoted } from "./words.js";

/** A column of `motion.tsv` and its row of `channels.tsv`. */
export interface WrittenColumn {
  /** Told from all others. */
  readonly name: string;
  /** As the recording has it. */
  readonly recordedName: string;
  readonly component: string;
  readonly type: "MISC" | "POS";
  readonly trackedPoint: string;
  readonly unit: string;
  readonly frame: string;
  readonly quantity: Quantity;
  readonly samples: Float64Array;
}

/** The level of `reference_frame` for the library's frame. */
export const RUNNER_FRAME = "runner";
/** The level of a platform's own axes. */
export const PLATFORM_FRAME = "platform";

/** Axes of the library's frame, which is the ISB's: x forward, y up, z right. */
const COMPONENTS: Readonly<Record<Direction, string>> = { forward: "x", up: "y", right: "z" };

/** The columns of a recording's channels and platforms, and of markers at their rate. */
export function writtenColumns(recording: Recording, markers: MarkerSet | null): WrittenColumn[] {
  const columns = [
    ...recording.channels.map(columnOfChannel),
    ...(recording.platforms ?? []).flatMap(columnsOfPlatform),
    ...(markers === null ? [] : columnsOfMarkers(markers)),
  ];
  const taken = new Set<string>();
  return columns.map((column) => {
    const name = freeName(column.name, taken);
    taken.add(name);
    return { ...column, name };
  });
}

/** The columns of markers alone, at a rate of their own. */
export function columnsOfMarkers({ markers }: MarkerSet): WrittenColumn[] {
  const names = new Set<string>();
  return markers.flatMap((marker) => {
    requireWritable(marker.name, "the marker");
    if (names.has(marker.name)) {
      fail("conflict", `two markers are named ${quoted(marker.name)}; each is a tracked point of its own`, {
        argument: "markers",
        where: marker.name,
      });
    }
    names.add(marker.name);
    return (["forward", "up", "right"] as const).map((direction): WrittenColumn => {
      const name = `${marker.name}_${COMPONENTS[direction]}`;
      return {
        name,
        // The reader names a marker by its tracked point.
        recordedName: name,
        component: COMPONENTS[direction],
        type: "POS",
        trackedPoint: marker.name,
        unit: "m",
        frame: RUNNER_FRAME,
        quantity: "marker",
        samples: marker[direction],
      };
    });
  });
}

function columnOfChannel({ name, quantity, direction, unit, samples, plate }: Channel): WrittenColumn {
  requireWritable(name, "the channel");
  if (plate !== undefined) requireWritable(plate, `the plate of channel ${quoted(name)}`);
  if (unit !== "") requireWritable(unit, `the unit of channel ${quoted(name)}`);
  return {
    name,
    recordedName: name,
    component: direction === null ? MISSING : COMPONENTS[direction],
    type: "MISC",
    trackedPoint: plate ?? MISSING,
    unit: unit === "" ? MISSING : quantity === "free-moment" ? "N*m" : unit,
    frame: direction === null ? MISSING : RUNNER_FRAME,
    quantity,
    samples,
  };
}

function columnsOfPlatform(platform: Platform): WrittenColumn[] {
  requireWritable(platform.name, "the force platform");
  return platform.channels.map(({ name, unit, samples }): WrittenColumn => {
    requireWritable(name, `the channel of force platform ${quoted(platform.name)}`);
    return {
      name,
      recordedName: name,
      component: /[xyz]$/i.test(name) ? name.slice(-1).toLowerCase() : MISSING,
      type: "MISC",
      trackedPoint: platform.name,
      unit: unit === "N m" ? "N*m" : unit,
      frame: PLATFORM_FRAME,
      quantity: "platform",
      samples,
    };
  });
}

/** Refuses a text that a table cannot hold so that it comes back. */
export function requireWritable(text: string, what: string): void {
  if (text !== "" && text === text.trim() && text !== MISSING && !/[\r\n]/.test(text)) return;
  fail(
    "out-of-range",
    `${what} is ${quoted(text)}, which cannot be written so that it comes back; it has no blanks at its ends and no line ends, is not empty and not "${MISSING}"`,
    { argument: "recording", where: text, values: { given: text } },
  );
}

function freeName(wanted: string, taken: ReadonlySet<string>): string {
  let name = wanted;
  for (let count = 2; taken.has(name); count++) name = `${wanted}_${count}`;
  return name;
}
