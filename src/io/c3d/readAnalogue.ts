import type { Caution } from "../../units/index.js";
import { analogueFormat } from "./analogueFormat.js";
import type { C3dAnalogue, C3dChannel, C3dProcessor } from "./c3dFile.js";
import { dataBlock } from "./dataBlock.js";
import { type Layout, RATE_ROUNDING } from "./layout.js";
import type { ParameterTable } from "./parameterTable.js";
import { refuseFile } from "./refuse.js";

/** Reads the analogue channels of a file, scaled: (stored − OFFSET) × SCALE × GEN_SCALE. */
export function readAnalogue(
  bytes: Uint8Array,
  processor: C3dProcessor,
  layout: Layout,
  table: ParameterTable,
): { readonly analogue: C3dAnalogue; readonly cautions: readonly Caution[] } {
  const { channels: count, samplesPerFrame, frames, frameRate, storage, perFrame, start, points } = layout;
  const cautions: Caution[] = [];
  const gain = (name: string): readonly number[] => {
    const values = table.numbers("ANALOG", name);
    const bad = values.slice(0, count).findIndex((value) => !Number.isFinite(value));
    if (bad >= 0)
      refuseFile(`ANALOG:${name}`, `value ${bad + 1} is ${values[bad]}; a finite number is needed`);
    if (values.length < count) {
      cautions.push({
        code: "analogue-scale-missing",
        message: `ANALOG:${name} has ${values.length} values for ${count} channels; ${name === "SCALE" ? "1" : "0"} was used for the others`,
        where: `ANALOG:${name}`,
        values: { values: values.length, channels: count },
      });
    }
    return values;
  };
  const [scales, offsets] = [gain("SCALE"), gain("OFFSET")];
  const generalScale = table.number("ANALOG", "GEN_SCALE") ?? 1;
  if (!Number.isFinite(generalScale)) refuseFile("ANALOG:GEN_SCALE", `it is ${generalScale}`);
  const stored = table.get("ANALOG", "OFFSET")?.type === "integer";
  const { format, cautions: ofFormat } = analogueFormat(bytes, processor, layout, table, offsets);
  cautions.push(...ofFormat);
  const unsigned = format === "unsigned";
  const names = table.texts("ANALOG", "LABELS");
  const descriptions = table.texts("ANALOG", "DESCRIPTIONS");
  const units = table.texts("ANALOG", "UNITS");
  const channels = Array.from({ length: count }, (_, k): C3dChannel => {
    const offset = offsets[k] ?? 0;
    return {
      name: names[k] ?? "",
      description: descriptions[k] ?? "",
      unit: units[k] ?? "",
      scale: scales[k] ?? 1,
      offset: unsigned && stored && offset < 0 ? offset + 65536 : offset,
      samples: new Float64Array(frames * samplesPerFrame),
    };
  });
  if (count > 0) {
    const block = dataBlock(perFrame, frames, processor, storage);
    const numbers =
      unsigned && block.numbers instanceof Int16Array ? new Uint16Array(block.numbers.buffer) : block.numbers;
    const size = numbers.BYTES_PER_ELEMENT;
    const stride = { from: 4 * points, perFrame, samplesPerFrame, channels: count };
    for (let first = 0; first < frames; first += block.frames) {
      const length = Math.min(block.frames, frames - first);
      block.load(bytes, start + first * perFrame * size, length);
      for (let k = 0; k < count; k++) {
        takeChannel(channels[k] as C3dChannel, generalScale, numbers, k, stride, first, length);
      }
    }
  }
  const product = frameRate * samplesPerFrame;
  const stated = table.number("ANALOG", "RATE") ?? product;
  // Both rates are rounded to 24 bits; the stated one is nearer to what was set.
  const sampleRate = Math.abs(stated / product - 1) < RATE_ROUNDING ? stated : product;
  return { analogue: { sampleRate, samplesPerFrame, generalScale, format, channels }, cautions };
}

interface Stride {
  readonly from: number;
  readonly perFrame: number;
  readonly samplesPerFrame: number;
  readonly channels: number;
}

function takeChannel(
  { samples, offset, scale }: C3dChannel,
  generalScale: number,
  numbers: Int16Array | Uint16Array | Float32Array,
  channel: number,
  { from, perFrame, samplesPerFrame, channels }: Stride,
  first: number,
  count: number,
): void {
  const factor = scale * generalScale;
  let to = first * samplesPerFrame;
  for (let frame = 0; frame < count; frame++) {
    let at = frame * perFrame + from + channel;
    for (let k = 0; k < samplesPerFrame; k++, at += channels) {
      samples[to++] = ((numbers[at] as number) - offset) * factor;
    }
  }
}
