import type { Channel, Direction, Marker } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import { quoted } from "./words.js";

/** A column of the library's own format. */
export interface WrittenColumn {
  readonly heading: string;
  readonly samples: Float64Array;
}

/** The columns of the format in their order, by quantity and direction: name and unit. */
const OWN_COLUMNS: Readonly<Record<string, readonly [name: string, unit: string]>> = {
  "force forward": ["forward", "N"],
  "force up": ["up", "N"],
  "force right": ["right", "N"],
  "centre-of-pressure forward": ["cop_forward", "m"],
  "centre-of-pressure right": ["cop_right", "m"],
  "free-moment up": ["free_moment", "N m"],
};

/** Lays out channels and markers: without plate, then plate by plate, then other channels, then markers. */
export function writtenColumns(channels: readonly Channel[], markers: readonly Marker[]): WrittenColumn[] {
  const order = Object.keys(OWN_COLUMNS);
  const plates = [
    undefined,
    ...new Set(channels.map(({ plate }) => plate).filter((plate) => plate !== undefined)),
  ];
  const place = ({ quantity, direction, plate }: Channel) =>
    quantity === "other"
      ? order.length * plates.length
      : plates.indexOf(plate) * order.length + order.indexOf(`${quantity} ${direction}`);
  const inOrder = [...channels].sort((one, two) => place(one) - place(two));
  return [
    ...inOrder.map((channel) => ({ heading: headingOf(channel), samples: channel.samples })),
    ...markers.flatMap(markerColumns),
  ];
}

function headingOf({ quantity, direction, name, unit, plate }: Channel): string {
  const behind = plate === undefined ? "" : `@${plate}`;
  const own = OWN_COLUMNS[`${quantity} ${direction}`];
  if (plate !== undefined && (!isWhole(plate) || (own === undefined && plate.includes(":")))) {
    const colon = own === undefined ? ", and of a channel of another kind no colon" : "";
    refuse(
      `plate ${quoted(plate)} of channel ${quoted(name)}`,
      `a plate's name has no blanks at its ends, no line ends${colon}`,
      name,
    );
  }
  if (own !== undefined) return `${own[0]}${behind} [${own[1]}]`;
  if (
    !isWhole(name) ||
    (unit !== "" && !isWhole(unit)) ||
    /[[\]()]/.test(unit) ||
    (unit === "" && /[\])]$/.test(name))
  ) {
    refuse(
      `channel ${quoted(name)} in ${quoted(unit)}`,
      "a name has no blanks at its ends and no line ends, a unit no brackets",
      name,
    );
  }
  return unit === "" ? `other${behind}:${name}` : `other${behind}:${name} [${unit}]`;
}

/** The ways of a marker; a direction that was not recorded, while others were, has no column. */
function markerColumns(marker: Marker): WrittenColumn[] {
  const { name } = marker;
  if (!isWhole(name))
    refuse(`marker ${quoted(name)}`, "a marker's name has no blanks at its ends and no line ends", name);
  const directions: readonly Direction[] = ["forward", "up", "right"];
  const seen = directions.filter((direction) => marker[direction].some((sample) => !Number.isNaN(sample)));
  return (seen.length > 0 ? seen : directions).map((direction) => ({
    heading: `marker:${name}:${direction} [m]`,
    samples: marker[direction],
  }));
}

function isWhole(text: string): boolean {
  return text !== "" && text === text.trim() && !/[\r\n]/.test(text);
}

function refuse(what: string, allowed: string, where: string): never {
  fail("out-of-range", `${what} cannot be written; ${allowed}`, { argument: "channels", where });
}
