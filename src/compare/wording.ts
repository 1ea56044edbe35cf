import type { Metric } from "../metrics/index.js";
import type { ComparedValues, ComponentName, MetricComparison } from "./comparison.js";

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  return words.length < 2
    ? (words[0] ?? "")
    : `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

/** "the vertical force", "the anteroposterior (braking) and mediolateral force". */
export function forceOf(components: readonly ComponentName[]): string {
  const words = components.map((name) => (name === "anteroposterior" ? "anteroposterior (braking)" : name));
  return `the ${listed(words)} force`;
}

/** First letter large. */
export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** A part of a sentence as a sentence. */
export function sentence(text: string): string {
  return `${capital(text)}.`;
}

/** "is" for one, "are" for more. */
export function is(count: number): string {
  return count === 1 ? "is" : "are";
}

/** Four significant digits without needless zeros: 1650, 16.28, 0.2034. */
export function digits(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/**
 * "13.30 to 17.57": two numbers with the decimals that give the larger one four significant digits, and none that both do
 * without.
 */
export function fromTo(one: number, other: number): string {
  const size = Math.max(Math.abs(one), Math.abs(other));
  let decimals = size === 0 ? 0 : Math.min(20, Math.max(0, 3 - Math.floor(Math.log10(size))));
  const ends = (value: number) => value.toFixed(decimals).endsWith("0");
  while (decimals > 0 && ends(one) && ends(other)) decimals--;
  return `${one.toFixed(decimals)} to ${other.toFixed(decimals)}`;
}

/**
 * Prints two numbers with four significant digits, or with as many more as it takes until what is said of the numbers,
 * that they differ in some way, holds of what is printed.
 */
export function apart(
  one: number,
  other: number,
  differ: (one: number, other: number) => boolean = (a, b) => a !== b,
): readonly [string, string] {
  for (let precision = 4; precision < 17; precision++) {
    const [a, b] = [Number(one.toPrecision(precision)), Number(other.toPrecision(precision))];
    if (differ(a, b)) return [String(a), String(b)];
  }
  return [String(one), String(other)];
}

/** Prints a share above a limit as a percentage of three significant digits, or of as many as show it above the limit. */
export function percentApart(share: number, limit: number): string {
  for (let precision = 3; precision < 17; precision++) {
    const percent = Number((100 * share).toPrecision(precision));
    if (percent > 100 * limit) return String(percent);
  }
  return String(100 * share);
}

/** "1 stride", "18 strides". */
export function strides(count: number): string {
  return `${count} stride${count === 1 ? "" : "s"}`;
}

/** What is said behind a metric that grows where the load falls, since readings speak of load. */
export function lessIsMore(moreLoad: Metric["moreLoad"], of: "load" | "work" = "load"): string {
  return moreLoad === "lower" ? `, of which less is more ${of}` : "";
}

/** A component's change for a reading of its load: "-5.5 %"; with the metric's name where less of it is more load. */
export function loadChange(values: ComparedValues, unit: string, { name, moreLoad }: Metric): string {
  const own = change(values, unit);
  return moreLoad === "lower" ? `${name} ${own}${lessIsMore(moreLoad)}` : own;
}

/**
 * One decimal with its sign, or four significant digits in the unit where there is no share of the baseline's mean. A
 * difference that speed's effect was taken off is said to be so: the means beside it do not differ by it.
 */
export function change(values: ComparedValues | MetricComparison, unit: string): string {
  const size =
    values.percent === null ? `${signed(values.difference)} ${unit}` : `${signedPercent(values.percent)} %`;
  const beside = "speedAlone" in values && values.speedAlone?.takenOff === true;
  return beside ? `${size} beside the effect of speed` : size;
}

/** "1650 to 1560 N (-5.5 %, 99 % interval -7.0 to -4.0 %)": the reading interval beside the difference. */
export function numbersOf(values: ComparedValues, unit: string): string {
  const { baseline, changed, readingInterval } = values;
  const { low, high, level } = readingInterval;
  const scale = 100 / Math.abs(baseline.mean);
  const interval =
    values.percent === null
      ? `${signed(low)} to ${signed(high)} ${unit}`
      : `${signedPercent(scale * low)} to ${signedPercent(scale * high)} %`;
  return `${fromTo(baseline.mean, changed.mean)} ${unit} (${change(values, unit)}, ${digits(100 * level)} % interval ${interval})`;
}

function signed(value: number): string {
  return `${value > 0 ? "+" : ""}${digits(value)}`;
}

function signedPercent(percent: number): string {
  const text = percent.toFixed(Math.abs(percent) < 100 ? 1 : 0);
  if (Number(text) === 0) return text.replace("-", "");
  return percent > 0 ? `+${text}` : text;
}
