import type { ComparedValues, ComponentName } from "./comparison.js";

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

/** "is" for one, "are" for more. */
export function is(count: number): string {
  return count === 1 ? "is" : "are";
}

/** Four significant digits without needless zeros: 1650, 16.28, 0.2034. */
export function digits(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** One decimal with its sign, or four significant digits where the baseline's mean is zero and there is no share. */
export function change(values: ComparedValues, unit: string): string {
  return values.percent === null
    ? `${signed(values.difference)} ${unit}`
    : `${signedPercent(values.percent)} %`;
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
  return `${digits(baseline.mean)} to ${digits(changed.mean)} ${unit} (${change(values, unit)}, ${digits(100 * level)} % interval ${interval})`;
}

function signed(value: number): string {
  return `${value > 0 ? "+" : ""}${digits(value)}`;
}

function signedPercent(percent: number): string {
  const text = percent.toFixed(Math.abs(percent) < 100 ? 1 : 0);
  if (Number(text) === 0) return text.replace("-", "");
  return percent > 0 ? `+${text}` : text;
}
