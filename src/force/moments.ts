import {
  fail,
  type Hertz,
  type Metres,
  type NewtonMetres,
  type Newtons,
  type Seconds,
} from "../units/index.js";
import type { ForceComponents, MomentComponents } from "./groundReaction.js";

/** Centre of pressure and free moment as a file gives them; NaN where it gives none. */
export interface CentreOfPressureColumns {
  readonly forward?: Float64Array;
  readonly right?: Float64Array;
  readonly freeMoment?: Float64Array;
}

/** Force below which no centre of pressure exists, N. An error of 0.5 N·m is 12 mm there, 25 mm at 20 N. */
export const CENTRE_OF_PRESSURE_FLOOR: Newtons = 40;
/**
 * A file that leaves cells blank above the floor but below this raises the floor; above this a blank cell is
 * a gap, N.
 */
export const CENTRE_OF_PRESSURE_LARGEST_FLOOR: Newtons = 200;
/**
 * Farther from the frame's origin no foot lands, m: the longest rows of platforms, for sprints, are this long. More is a place
 * in millimetres, and refused; places in millimetres that lie nearer show by how fast they move, in a trial. Judgement of
 * this library.
 */
export const CENTRE_OF_PRESSURE_FARTHEST: Metres = 50;
/** No foot twists the ground harder, N·m; more is a moment in N·mm. Judgement of this library. */
export const FREE_MOMENT_LARGEST: NewtonMetres = 500;

/**
 * The force below which this file's centre of pressure is taken to be absent: the library's floor, or the
 * file's own where that is higher.
 * @throws GaitKineticsError `gap`: a blank cell while the foot is clearly loaded.
 */
export function centreOfPressureFloor(
  up: Float64Array,
  columns: CentreOfPressureColumns,
  sampleRate: Hertz,
  startTime: Seconds,
  plate?: string,
): number {
  let floor: number = CENTRE_OF_PRESSURE_FLOOR;
  for (const [name, values] of Object.entries(columns) as [string, Float64Array | undefined][]) {
    if (values === undefined) continue;
    for (let i = 0; i < values.length; i++) {
      const load = up[i] as number;
      if (load < floor) continue;
      if (Number.isFinite(values[i])) {
        refuseImplausible(name, values[i] as number, i, plate);
        continue;
      }
      if (load > CENTRE_OF_PRESSURE_LARGEST_FLOOR) {
        const column = name === "freeMoment" ? "free moment" : `centre of pressure, ${name},`;
        const what =
          plate === undefined
            ? column
            : `${name === "freeMoment" ? "free moment" : "centre of pressure"} of "${plate}"`;
        const time = startTime + i / sampleRate;
        fail(
          "gap",
          `the ${what} is missing at ${time.toFixed(3)} s (sample ${i}), where the vertical force is ${load.toFixed(0)} N; fill the gap, or leave the column out`,
          {
            where: `sample ${i}`,
            values: { sample: i, time, vertical: load },
          },
        );
      }
      floor = load + 1e-9 * load;
    }
  }
  return floor;
}

/** Millimetres taken as metres are finite and look like any other number; they are no place on a plate. */
function refuseImplausible(column: string, value: number, sample: number, plate?: string): void {
  const moment = column === "freeMoment";
  const limit = moment ? FREE_MOMENT_LARGEST : CENTRE_OF_PRESSURE_FARTHEST;
  if (Math.abs(value) <= limit) return;
  const what = moment ? "free moment" : `centre of pressure, ${column},`;
  const [unit, smaller] = moment ? ["N·m", "N·mm"] : ["m", "mm"];
  fail(
    "out-of-range",
    `the ${what}${plate === undefined ? "" : ` of "${plate}"`} is ${Number(value.toPrecision(6))} ${unit} at sample ${sample} under load; it must lie within ${limit} ${unit} of zero: is it in ${smaller}? State its unit`,
    { argument: column, where: `sample ${sample}`, values: { given: value, allowed: limit } },
  );
}

/**
 * Moment about the frame's origin at ground level from force, centre of pressure and free moment.
 *
 * Formula: M = r × F + T with r = (forward, 0, right): M_forward = −c_right F_up, M_right = c_forward F_up,
 * M_up = c_right F_forward − c_forward F_right + T. Below the floor the centre of pressure is held from the
 * nearest sample above it, and the free moment is zero, so that the moment goes to zero with the force.
 */
export function momentOf(
  force: ForceComponents,
  columns: CentreOfPressureColumns,
  floor: number,
): MomentComponents | undefined {
  const { up } = force;
  const loaded = nearestLoaded(up, floor);
  if (loaded === null) return undefined;
  const { forward: copForward, right: copRight, freeMoment } = columns;
  const along = (column: Float64Array | undefined, sign: number) => {
    if (column === undefined) return undefined;
    const moment = new Float64Array(up.length);
    for (let i = 0; i < up.length; i++)
      moment[i] = sign * (column[loaded[i] as number] as number) * (up[i] as number);
    return moment;
  };
  const forward = along(copRight, -1);
  const right = along(copForward, 1);
  let vertical: Float64Array | undefined;
  if (copForward && copRight && freeMoment && force.forward && force.right) {
    vertical = new Float64Array(up.length);
    for (let i = 0; i < up.length; i++) {
      const at = loaded[i] as number;
      vertical[i] =
        (copRight[at] as number) * (force.forward[i] as number) -
        (copForward[at] as number) * (force.right[i] as number) +
        ((up[i] as number) >= floor ? (freeMoment[i] as number) : 0);
    }
  }
  if (!forward && !right) return undefined;
  return { ...(forward && { forward }), ...(vertical && { up: vertical }), ...(right && { right }) };
}

/** For each sample the nearest one at or above the floor (itself where it is); `null` where none is. */
export function nearestLoaded(up: Float64Array, floor: number): Int32Array | null {
  const nearest = new Int32Array(up.length).fill(-1);
  let last = -1;
  for (let i = 0; i < up.length; i++) {
    if ((up[i] as number) >= floor) {
      const from = last < 0 ? 0 : last + Math.floor((i - last) / 2) + 1;
      for (let j = from; j <= i; j++) nearest[j] = i;
      last = i;
    } else nearest[i] = last;
  }
  return last < 0 ? null : nearest;
}
