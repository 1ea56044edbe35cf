/** Puts a metric's unit behind its name; a ratio has none. */
export function labelled(name: string, unit: string): string {
  return unit === "1" ? name : `${name}, ${unit}`;
}
