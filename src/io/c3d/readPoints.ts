import type { C3dPoint, C3dProcessor } from "./c3dFile.js";
import { dataBlock } from "./dataBlock.js";
import type { Layout } from "./layout.js";
import type { ParameterTable } from "./parameterTable.js";

/** Reads the points of a file: positions in its unit, NaN where the fourth word is negative. */
export function readPoints(
  bytes: Uint8Array,
  processor: C3dProcessor,
  layout: Layout,
  table: ParameterTable,
): C3dPoint[] {
  const names = table.texts("POINT", "LABELS");
  const descriptions = table.texts("POINT", "DESCRIPTIONS");
  const unit = table.text("POINT", "UNITS") ?? "";
  const { frames, perFrame, storage, scale, start } = layout;
  const points = Array.from(
    { length: layout.points },
    (_, k): C3dPoint => ({
      name: names[k] ?? "",
      description: descriptions[k] ?? "",
      unit,
      x: new Float64Array(frames),
      y: new Float64Array(frames),
      z: new Float64Array(frames),
      residual: new Float64Array(frames),
      cameras: new Uint8Array(frames),
    }),
  );
  if (points.length === 0) return points;
  const block = dataBlock(perFrame, frames, processor, storage);
  const factor = storage === "float" ? 1 : scale;
  const size = block.numbers.BYTES_PER_ELEMENT;
  for (let first = 0; first < frames; first += block.frames) {
    const count = Math.min(block.frames, frames - first);
    block.load(bytes, start + first * perFrame * size, count);
    for (let k = 0; k < points.length; k++) {
      takePoint(points[k] as C3dPoint, block.numbers, 4 * k, perFrame, first, count, factor, scale);
    }
  }
  return points;
}

function takePoint(
  { x, y, z, residual, cameras }: C3dPoint,
  numbers: Int16Array | Float32Array,
  from: number,
  perFrame: number,
  first: number,
  count: number,
  factor: number,
  scale: number,
): void {
  for (let i = 0, at = from; i < count; i++, at += perFrame) {
    const a = numbers[at] as number;
    const b = numbers[at + 1] as number;
    const c = numbers[at + 2] as number;
    const fourth = numbers[at + 3] as number;
    const frame = first + i;
    // A sum minus itself is 0 for finite numbers alone.
    const sum = a + b + c;
    if (fourth >= 0 && sum - sum === 0) {
      x[frame] = a * factor;
      y[frame] = b * factor;
      z[frame] = c * factor;
      residual[frame] = (fourth & 0xff) * scale;
      cameras[frame] = (fourth >> 8) & 0x7f;
    } else {
      x[frame] = Number.NaN;
      y[frame] = Number.NaN;
      z[frame] = Number.NaN;
      residual[frame] = Number.NaN;
    }
  }
}
