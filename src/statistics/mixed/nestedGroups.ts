/** A group of the nested layout with what the likelihood needs of its values. */
export interface NestedGroup {
  /** Groups within it; empty for the innermost. */
  readonly inside: readonly NestedGroup[];
  /** Of an innermost group: its number of values, the sums of all columns, and their sums of products, row by row. */
  readonly count: number;
  readonly sums: Float64Array;
  readonly products: Float64Array;
}

/**
 * Sorts values into nested groups. A label counts within the groups around it.
 *
 * @param columns - All of one length: the fixed effects, then the values.
 * @param levels - Labels of every value, outermost level first.
 */
export function nestedGroups(
  columns: readonly Float64Array[],
  levels: readonly ArrayLike<string | number>[],
): readonly NestedGroup[] {
  const all = Array.from({ length: columns[0]?.length ?? 0 }, (_, i) => i);
  return split(all, 0);

  function split(rows: readonly number[], depth: number): NestedGroup[] {
    const labels = levels[depth];
    if (labels === undefined) return [];
    const groups = new Map<string | number, number[]>();
    for (const row of rows) {
      const label = labels[row] as string | number;
      const group = groups.get(label);
      if (group === undefined) groups.set(label, [row]);
      else group.push(row);
    }
    return Array.from(groups.values(), (own) => groupOf(own, split(own, depth + 1)));
  }

  function groupOf(rows: readonly number[], inside: readonly NestedGroup[]): NestedGroup {
    const width = columns.length;
    const sums = new Float64Array(width);
    const products = new Float64Array(width * width);
    for (const row of rows) {
      for (let a = 0; a < width; a++) {
        const value = (columns[a] as Float64Array)[row] as number;
        sums[a] = (sums[a] as number) + value;
        for (let b = 0; b <= a; b++) {
          const product = value * ((columns[b] as Float64Array)[row] as number);
          products[a * width + b] = (products[a * width + b] as number) + product;
        }
      }
    }
    for (let a = 0; a < width; a++)
      for (let b = 0; b < a; b++) products[b * width + a] = products[a * width + b] as number;
    return { inside, count: rows.length, sums, products };
  }
}
