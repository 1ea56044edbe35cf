/** SI units of what is stated of runner and trial. */
const UNITS: Readonly<Record<string, string>> = { mass: "kg", height: "m", speed: "m/s", sampleRate: "Hz" };

/** A statement for a message: a number to six digits with its unit, a word as it is. */
export function shownStatement(key: string, value: number | string): string {
  if (typeof value === "string") return value;
  const unit = UNITS[key];
  return `${Number(value.toPrecision(6))}${unit === undefined ? "" : ` ${unit}`}`;
}
