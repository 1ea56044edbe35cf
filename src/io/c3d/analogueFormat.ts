import type { Caution } from "../../units/index.js";
import type { C3dAnalogue, C3dProcessor } from "./c3dFile.js";
import { dataBlock } from "./dataBlock.js";
import type { Layout } from "./layout.js";
import type { ParameterTable } from "./parameterTable.js";

/** Frames, spread evenly over the file, that the two readings are compared on. */
const FRAMES_COMPARED = 512;

/**
 * Finds whether stored integers are signed: ANALOG:FORMAT says it. Where it is missing the format says signed, but
 * 16-bit data may still be unsigned: then both readings are tried, and the one whose samples stay nearer to the
 * offsets is taken, unsigned with a `Caution`; the wrong one jumps by 65 536 at the baseline.
 */
export function analogueFormat(
  bytes: Uint8Array,
  processor: C3dProcessor,
  layout: Layout,
  table: ParameterTable,
  offsets: readonly number[],
): { readonly format: C3dAnalogue["format"]; readonly cautions: readonly Caution[] } {
  const stated = table.text("ANALOG", "FORMAT")?.trim().toLowerCase() ?? "";
  if (stated === "unsigned" || stated === "signed") return { format: stated, cautions: [] };
  if (layout.storage === "float" || layout.channels === 0) return { format: "signed", cautions: [] };
  const { signed, unsigned } = distances(bytes, processor, layout, offsets);
  if (signed <= unsigned) return { format: "signed", cautions: [] };
  const message = `ANALOG:FORMAT does not say whether samples are signed; unsigned was taken, by which they lie ${unsigned.toFixed(0)} steps from their offsets in the mean, and ${signed.toFixed(0)} as signed ones`;
  const values = { signed, unsigned };
  return {
    format: "unsigned",
    cautions: [{ code: "analogue-format-missing", message, where: "ANALOG:FORMAT", values }],
  };
}

/** Mean distance of the samples from their offsets by both readings, in steps. */
function distances(
  bytes: Uint8Array,
  processor: C3dProcessor,
  { points, channels, frames, perFrame, storage, start }: Layout,
  offsets: readonly number[],
): { readonly signed: number; readonly unsigned: number } {
  const block = dataBlock(perFrame, 1, processor, storage);
  const compared = Math.min(frames, FRAMES_COMPARED);
  let signed = 0;
  let unsigned = 0;
  for (let i = 0; i < compared; i++) {
    const frame = Math.floor((i * frames) / compared);
    block.load(bytes, start + frame * perFrame * 2, 1);
    for (let k = 0; k < channels; k++) {
      const offset = offsets[k] ?? 0;
      const raw = block.numbers[4 * points + k] as number;
      signed += Math.abs(raw - offset);
      unsigned += Math.abs((raw & 0xffff) - (offset < 0 ? offset + 65536 : offset));
    }
  }
  const count = compared * channels;
  return { signed: signed / count, unsigned: unsigned / count };
}
