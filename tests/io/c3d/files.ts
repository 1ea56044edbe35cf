import { readFileSync } from "node:fs";
import { type C3dFile, parseC3d } from "../../../src/io/index.js";

/** Bytes of a file among the fixtures. */
export const bytesOf = (path: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../fixtures/c3d/${path}`, import.meta.url)));

/** A file among the fixtures, as it is. */
export const parsed = (path: string): C3dFile => parseC3d(bytesOf(path));

/** Bytes with the data of a parameter changed in place: of an intel file, found by its name in its group. */
export function patched(
  bytes: Uint8Array,
  group: number,
  name: string,
  change: (data: DataView) => void,
): Uint8Array {
  const copy = bytes.slice();
  const at = placeOf(copy, group, name);
  const dimensions = copy[at + name.length + 5] as number;
  change(new DataView(copy.buffer, at + name.length + 6 + dimensions));
  return copy;
}

/** Place of a parameter's record. */
export function placeOf(bytes: Uint8Array, group: number, name: string): number {
  for (let at = 516; at < bytes.length - name.length; at++) {
    const length = ((bytes[at] as number) << 24) >> 24;
    if (Math.abs(length) !== name.length || bytes[at + 1] !== group) continue;
    if ([...name].every((letter, k) => bytes[at + 2 + k] === letter.charCodeAt(0))) return at;
  }
  throw new Error(`no ${name}`);
}

/** A file without what hangs on how it was stored. */
export const content = (file: C3dFile) => ({
  ...file,
  cautions: [],
  header: { ...file.header, dataStart: 0 },
  groups: file.groups.map((group) => ({
    ...group,
    parameters: group.parameters.map((one) => (one.name === "DATA_START" ? { ...one, data: [] } : one)),
  })),
});

/** Largest distance between numbers of two lists, NaN only where both have it. */
export function distance(one: Float64Array, two: Float64Array): number {
  if (one.length !== two.length) return Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let i = 0; i < one.length; i++) {
    const [a, b] = [one[i] as number, two[i] as number];
    if (Number.isNaN(a) && Number.isNaN(b)) continue;
    const size = Math.abs(a - b);
    if (Number.isNaN(size)) return Number.POSITIVE_INFINITY;
    if (size > largest) largest = size;
  }
  return largest;
}
