/** Writes a setting, not a measurement: four significant digits, without needless ones. */
export function plainNumber(value: number): string {
  return String(Number(value.toPrecision(4)));
}
