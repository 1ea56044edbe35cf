/** The line of the file, from 1, that each row of numbers, from 0, begins in. */
export interface LineMap {
  /** To be called for each row in turn. */
  readonly add: (row: number, line: number) => void;
  readonly lineOf: (row: number) => number;
}

/** Makes a map that grows only where comments, blank lines or cells of several lines stand between rows. */
export function lineMap(): LineMap {
  const firstRows: number[] = [];
  const offsets: number[] = [];
  let last = Number.NaN;
  return {
    add: (row, line) => {
      if (line - row === last) return;
      last = line - row;
      firstRows.push(row);
      offsets.push(last);
    },
    lineOf: (row) => {
      let low = 0;
      let high = firstRows.length - 1;
      while (low < high) {
        const middle = (low + high + 1) >> 1;
        if ((firstRows[middle] as number) <= row) low = middle;
        else high = middle - 1;
      }
      return row + (offsets[low] ?? 1);
    },
  };
}
