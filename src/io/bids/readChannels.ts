import { type Caution, fail } from "../../units/index.js";
import { readRows, type TableRow } from "./readRows.js";
import { QUANTITIES, type Quantity, quoted, TYPES } from "./words.js";

/** A row of `channels.tsv`: what one column of `motion.tsv` holds. */
export interface BidsChannel {
  /** Place of its column, from 0. */
  readonly column: number;
  readonly name: string;
  /** The name that the recording gave it, where it had to be told from another channel's. */
  readonly recordedName: string | undefined;
  readonly component: string | undefined;
  readonly type: string;
  readonly trackedPoint: string | undefined;
  /** Empty where none is stated. */
  readonly unit: string;
  readonly frame: string | undefined;
  readonly quantity: Quantity | undefined;
}

/** Columns that the standard requires, in its order. */
export const REQUIRED_COLUMNS: readonly string[] = ["name", "component", "type", "tracked_point", "units"];

/** Reads `channels.tsv`. */
export function readChannels(
  text: string,
  argument: string,
  rate: number,
): { readonly channels: readonly BidsChannel[]; readonly cautions: readonly Caution[] } {
  const rows = readRows(text, argument, REQUIRED_COLUMNS);
  if (rows.length === 0) {
    fail("unreadable-file", `${argument} lists no channel; it has a row for each column of motion.tsv`, {
      argument,
      where: argument,
    });
  }
  const channels = rows.map((row, column) => channelOf(row, column, argument));
  const names = new Set<string>();
  for (const { name, column } of channels) {
    if (names.has(name)) {
      fail("unreadable-file", `${argument}, line ${column + 2}: a second channel is named ${quoted(name)}`, {
        argument,
        where: `line ${column + 2}, name`,
      });
    }
    names.add(name);
  }
  return { channels, cautions: cautionsOf(rows, channels, rate) };
}

function channelOf({ line, cells }: TableRow, column: number, argument: string): BidsChannel {
  const name = cells.get("name");
  const type = cells.get("type")?.trim();
  const without = (what: string): never =>
    fail("unreadable-file", `${argument}, line ${line}: the channel has no ${what}`, {
      argument,
      where: `line ${line}, ${what}`,
    });
  if (name === undefined) return without("name");
  if (type === undefined) return without("type");
  const quantity = cells.get("quantity");
  const known = type.toUpperCase();
  return {
    column,
    name,
    recordedName: cells.get("recorded_name"),
    component: cells.get("component")?.trim(),
    type: TYPES.includes(known) ? known : "MISC",
    trackedPoint: cells.get("tracked_point"),
    unit: cells.get("units") ?? "",
    frame: cells.get("reference_frame"),
    quantity: QUANTITIES.find((word) => word === quantity),
  };
}

/** What the table says that a reader of the numbers must know. */
function cautionsOf(rows: readonly TableRow[], channels: readonly BidsChannel[], rate: number): Caution[] {
  const namesWhere = (holds: (row: TableRow) => boolean): string[] =>
    channels.flatMap((channel, k) => (holds(rows[k] as TableRow) ? [channel.name] : []));
  const cautions: Caution[] = [];
  const say = (code: string, names: readonly string[], what: string): void => {
    if (names.length === 0) return;
    const some = names.slice(0, 5).map(quoted).join(", ");
    const more = names.length > 5 ? ` and ${names.length - 5} more` : "";
    cautions.push({ code, message: `${some}${more}: ${what}`, where: names[0] as string });
  };
  const strange = namesWhere(({ cells }) => !TYPES.includes(cells.get("type")?.trim().toUpperCase() ?? ""));
  say("unknown-type", strange, "no type of the standard; taken as MISC");
  const bad = namesWhere(({ cells }) => cells.get("status")?.trim() === "bad");
  say("bad-channel", bad, 'the file marks it "bad"');
  const others = namesWhere(({ cells }) => {
    const stated = Number(cells.get("sampling_frequency"));
    return stated > 0 && stated !== rate;
  });
  say("sampling-frequency-differs", others, `recorded at another rate than the file's ${rate} Hz`);
  return cautions;
}
