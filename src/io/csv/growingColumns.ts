/** Arrays of numbers, one a column, that grow together. */
export interface GrowingColumns {
  /** The arrays, with room for a row. */
  readonly withRoom: (row: number) => readonly Float64Array[];
  /** The arrays cut to their rows; nothing may be added behind it. */
  readonly cut: (rows: number) => readonly Float64Array[];
}

const FIRST_ROWS = 4096;
/** Numbers that all columns together begin with at most, so that a wide header alone costs nothing. */
const FIRST_NUMBERS = 1_048_576;

/** Makes columns whose length doubles when they are full. */
export function growingColumns(count: number): GrowingColumns {
  let capacity = Math.max(1, Math.min(FIRST_ROWS, Math.floor(FIRST_NUMBERS / Math.max(1, count))));
  const columns = Array.from({ length: count }, () => new Float64Array(capacity));
  return {
    withRoom: (row) => {
      if (row >= capacity) {
        capacity *= 2;
        for (let k = 0; k < count; k++) {
          const longer = new Float64Array(capacity);
          longer.set(columns[k] as Float64Array);
          columns[k] = longer;
        }
      }
      return columns;
    },
    cut: (rows) => {
      for (let k = 0; k < count; k++) columns[k] = (columns[k] as Float64Array<ArrayBuffer>).slice(0, rows);
      return columns;
    },
  };
}
