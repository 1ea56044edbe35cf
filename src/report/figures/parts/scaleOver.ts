import { scaleLinear } from "../../plot.js";
import { formatNumber } from "../../wording/formatNumber.js";

/** Where values lie in a drawing, and the ticks that say so. */
export interface ValueScale {
  readonly place: (value: number) => number;
  readonly ticks: readonly { readonly value: number; readonly at: number; readonly label: string }[];
}

/** Beyond it differences of two numbers overflow. */
const LARGEST = 1e300;
/** Least distance of the ends as a share of their size, and by itself. */
const LEAST_SPAN = 1e-12;
const SMALLEST = 1e-300;
/** Of the label of a tick. */
const MOST_DECIMALS = 8;
/** No place lies farther off the drawing: it is not seen, and long numbers break paths. */
const FARTHEST = 1e5;

/**
 * Lays a linear scale over values, its ends at round numbers. Values that are not finite are left out; a single value
 * stands in the middle.
 *
 * @param values - What must fit.
 * @param range - Places of the lowest and the highest value.
 * @param count - Ticks wanted, about.
 */
export function scaleOver(
  values: Iterable<number>,
  range: readonly [number, number],
  count: number,
): ValueScale {
  const scale = scaleLinear(domainOf(values), range).nice(count);
  const place = (value: number): number => {
    const at = scale(within(value, LARGEST));
    return Number.isFinite(at) ? within(at, FARTHEST) : (range[0] + range[1]) / 2;
  };
  const ticks = scale.ticks(count);
  const decimals = decimalsOf(ticks);
  return {
    place,
    ticks: ticks.map((value) => ({
      value,
      at: place(value),
      label: labelOf(value, decimals).replaceAll("-", "−"),
    })),
  };
}

function domainOf(values: Iterable<number>): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    low = Math.min(low, within(value, LARGEST));
    high = Math.max(high, within(value, LARGEST));
  }
  if (low > high) return [0, 1];
  const size = Math.max(Math.abs(low), Math.abs(high));
  // Numbers that differ in their last digits alone have no round numbers between them.
  if (high - low > size * LEAST_SPAN && high - low > SMALLEST) return [low, high];
  const room = size > SMALLEST ? size * 0.05 : 1;
  return [low - room, high + room];
}

function within(value: number, largest: number): number {
  return Math.min(Math.max(value, -largest), largest);
}

/** Ticks too near for the decimals of a number are written in powers of ten. */
function labelOf(value: number, decimals: number): string {
  if (decimals <= MOST_DECIMALS) return formatNumber(value, decimals);
  return value === 0 ? "0" : value.toExponential(0);
}

/** As many as the distance between ticks asks for. */
function decimalsOf(ticks: readonly number[]): number {
  const [first, second] = ticks;
  if (first === undefined || second === undefined) return 3;
  return Math.max(0, -Math.floor(Math.log10(second - first) + 1e-9));
}
