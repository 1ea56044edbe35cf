import type { Direction, Marker } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { Column } from "./columns.js";
import { scaled } from "./scaled.js";
import type { Table } from "./tableReader.js";
import { counted, listed, quoted } from "./words.js";

type Ways = Partial<Record<Direction, Float64Array>>;

const DIRECTIONS = ["forward", "up", "right"] as const;

/** Puts the columns of each marker together; NaN in all three directions where one is blank. */
export function markersOf({ columns, values, lineOf, rows }: Table): {
  readonly markers: readonly Marker[];
  readonly cautions: readonly Caution[];
} {
  const byName = new Map<string, Ways>();
  for (const [k, column] of columns.columns.entries()) {
    const { role } = column as Column;
    if (role.kind !== "marker") continue;
    const ways = byName.get(role.name) ?? {};
    ways[role.direction] = scaled(values[k] as Float64Array, column, lineOf);
    byName.set(role.name, ways);
  }
  const markers: Marker[] = [];
  const cautions: Caution[] = [];
  const flat: string[] = [];
  for (const [name, ways] of byName) {
    const seen = DIRECTIONS.filter((direction) => ways[direction]?.some((sample) => !Number.isNaN(sample)));
    // A direction that is blank throughout was not recorded.
    const recorded = seen.length > 0 ? seen : DIRECTIONS.filter((direction) => ways[direction] !== undefined);
    const torn = blankTogether(recorded.map((direction) => ways[direction] as Float64Array));
    if (torn > 0) {
      cautions.push({
        code: "marker-in-part",
        message: `marker ${quoted(name)} has ${counted(torn, "row")} with some directions blank and some not; it was taken as not seen there`,
        where: name,
        values: { count: torn },
      });
    }
    if (recorded.length < 3) flat.push(name);
    const way = (direction: Direction) => ways[direction] ?? new Float64Array(rows).fill(Number.NaN);
    markers.push({ name, forward: way("forward"), up: way("up"), right: way("right") });
  }
  if (flat.length > 0) {
    cautions.push({
      code: "marker-without-direction",
      message: `${counted(flat.length, "marker")} (${listed(flat)}) have columns for one or two directions; the others hold no value (NaN)`,
      where: "markers",
      values: { count: flat.length },
    });
  }
  return { markers, cautions };
}

/** Blanks all series where one is blank; gives the number of rows in which they differed. */
function blankTogether(series: readonly Float64Array[]): number {
  let torn = 0;
  for (let i = 0; i < (series[0]?.length ?? 0); i++) {
    let blanks = 0;
    for (const samples of series) if (Number.isNaN(samples[i])) blanks++;
    if (blanks === 0 || blanks === series.length) continue;
    torn++;
    for (const samples of series) samples[i] = Number.NaN;
  }
  return torn;
}
