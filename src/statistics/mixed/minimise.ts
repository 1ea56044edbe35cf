/**
 * Finds a low point of a function of a few numbers by the simplex of Nelder and Mead (1965, Comput. J. 7:308, from memory), started
 * anew from where it ended until that gains nothing.
 */
export function minimise(of: (x: readonly number[]) => number, start: readonly number[]): readonly number[] {
  let best = start;
  let value = of(start);
  for (let round = 0; round < 12; round++) {
    const found = simplex(of, best, round % 2 === 0 ? 0.5 : 0.05);
    const gained = value - found.value;
    if (found.value < value) {
      best = found.x;
      value = found.value;
    }
    if (round > 1 && !(gained > 1e-11 * (1 + Math.abs(value)))) break;
  }
  return best;
}

interface Corner {
  readonly x: readonly number[];
  readonly value: number;
}

function simplex(of: (x: readonly number[]) => number, start: readonly number[], size: number): Corner {
  const n = start.length;
  const at = (x: readonly number[]): Corner => ({ x, value: of(x) });
  const corners = [
    at(start),
    ...start.map((_, i) => at(start.map((v, j) => (i === j ? v + size * (1 + Math.abs(v)) : v)))),
  ];
  for (let step = 0; step < 400 * n; step++) {
    corners.sort((a, b) => a.value - b.value);
    const [first, last] = [corners[0] as Corner, corners[n] as Corner];
    const spread = Math.max(...first.x.map((v, i) => Math.abs(v - (last.x[i] as number))));
    if (spread < 1e-9 && Math.abs(last.value - first.value) <= 1e-13 * (1 + Math.abs(first.value))) break;
    const centre = first.x.map((_, i) =>
      corners.slice(0, n).reduce((sum, { x }) => sum + (x[i] as number) / n, 0),
    );
    const along = (factor: number) => at(centre.map((c, i) => c + factor * ((last.x[i] as number) - c)));
    const mirrored = along(-1);
    if (mirrored.value < first.value) {
      const further = along(-2);
      corners[n] = further.value < mirrored.value ? further : mirrored;
    } else if (mirrored.value < (corners[n - 1] as Corner).value) {
      corners[n] = mirrored;
    } else {
      const nearer = mirrored.value < last.value ? along(-0.5) : along(0.5);
      if (nearer.value < Math.min(mirrored.value, last.value)) corners[n] = nearer;
      else
        for (let k = 1; k <= n; k++)
          corners[k] = at((corners[k] as Corner).x.map((v, i) => ((first.x[i] as number) + v) / 2));
    }
  }
  corners.sort((a, b) => a.value - b.value);
  return corners[0] as Corner;
}
