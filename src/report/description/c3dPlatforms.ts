import type { C3dFile } from "../../io/index.js";
import { c3dNumbers } from "./c3dNumbers.js";
import type { DescribedPlatform, DescribedPoint } from "./description.js";
import { platformPlace } from "./platformPlace.js";

const AXES = ["x", "y", "z"] as const;

/** Lists the platforms as the parameters of the group FORCE_PLATFORM state them, as far as they are stated. */
export function c3dPlatforms(file: C3dFile): readonly DescribedPlatform[] {
  const numbers = (name: string) => c3dNumbers(file, "FORCE_PLATFORM", name);
  const types = numbers("TYPE");
  const corners = numbers("CORNERS");
  const origins = numbers("ORIGIN");
  const used = Math.max(0, Math.min(numbers("USED")[0] ?? types.length, types.length));
  const zero = zeroOf(numbers("ZERO"), file);
  return types.slice(0, used).map((type, index) => {
    const own = corners.slice(12 * index, 12 * (index + 1));
    return {
      name: String(index + 1),
      type,
      channels: c3dPlatformChannels(file, index).map(
        (number) => file.analogue.channels[number]?.name ?? String(number + 1),
      ),
      place: own.length < 12 ? null : platformPlace(cornersOf(own), AXES),
      origin: origins.slice(3 * index, 3 * index + 3),
      zero,
      calibrated: type >= 4 && numbers("CAL_MATRIX").length > 0,
      side: null,
    };
  });
}

/** Places, from 0, of the channels of a platform. */
export function c3dPlatformChannels(file: C3dFile, index: number): readonly number[] {
  const all = c3dNumbers(file, "FORCE_PLATFORM", "CHANNEL");
  const platforms = c3dNumbers(file, "FORCE_PLATFORM", "TYPE").length;
  const each = platforms === 0 ? 0 : Math.floor(all.length / platforms);
  return all
    .slice(each * index, each * (index + 1))
    .filter((number) => number > 0)
    .map((number) => number - 1);
}

/** Four points from their twelve numbers. */
function cornersOf(numbers: readonly number[]): readonly DescribedPoint[] {
  return [0, 3, 6, 9].map((at) =>
    Object.fromEntries(AXES.map((axis, k) => [axis, numbers[at + k] as number])),
  );
}

/** Frames, counted from 1 and both included, as samples; a last frame before the first means none. */
function zeroOf(
  [first = 0, last = 0]: readonly number[],
  { analogue: { samplesPerFrame } }: C3dFile,
): { readonly from: number; readonly to: number } | null {
  if (first < 1 || last < first) return null;
  return { from: (first - 1) * samplesPerFrame, to: last * samplesPerFrame };
}
