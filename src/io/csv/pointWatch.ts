/** Watches whether points inside numbers may set thousands apart: "613" and below it "1.613". */
export interface PointWatch {
  /** Takes a cell that is a number; `column` counts from 0. */
  readonly take: (cell: string, value: number, column: number, line: number) => void;
  /** Line of the first point that seems to set thousands apart; 0 where none does. */
  readonly suspect: () => number;
}

/** A number with its thousands set apart by a point, or one of exactly three decimals. */
const THOUSANDS = /^[+-]?[1-9]\d{0,2}\.\d{3}$/;
/** By so much a number without a point is larger than its neighbour with one: nearer to 1000 than to 1 as a ratio. */
const JUMP: number = 31.6;

/**
 * Makes a watch over one file. Points are decimal signs as soon as one number cannot have its thousands set apart ("0.125",
 * "12.5") or leaves them together ("1613"). Else the neighbours in a column tell: where they go from "613" to
 * "1.613", on the whole, and not from "2" to "1.613", the point sets thousands apart. Zeros tell nothing.
 */
export function pointWatch(): PointWatch {
  const before: number[] = [];
  const pointBefore: boolean[] = [];
  let decided = false;
  let first = 0;
  let jumps = 0;
  let steps = 0;
  return {
    take: (cell, value, column, line) => {
      if (decided || value === 0) return;
      const hasPoint = cell.includes(".");
      if (hasPoint ? !THOUSANDS.test(cell.trim()) : Math.abs(value) >= 1000) {
        decided = true;
        return;
      }
      if (hasPoint && first === 0) first = line;
      if (pointBefore[column] === !hasPoint) {
        const ratio = Math.abs(value / (before[column] as number));
        if ((hasPoint ? 1 / ratio : ratio) > JUMP) jumps++;
        else steps++;
      }
      before[column] = value;
      pointBefore[column] = hasPoint;
    },
    suspect: () => (!decided && jumps > steps ? first : 0),
  };
}
