import type { Platform } from "../../recording/index.js";

/** Three series along a plate's axes. */
export interface AlongAxes {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/**
 * Force along the plate's axes, and the moment about the transducer's origin where the type's channels state
 * it.
 */
export interface DecodedChannels {
  readonly force: AlongAxes;
  readonly moment: AlongAxes | null;
}

/**
 * Turns a platform's channels into force and moment along the plate's own axes, signs as recorded.
 *
 * Type 1: force as it is; the moment follows from the centre of pressure. Type 2: as they are. Type 3: Fx =
 * Fx12 + Fx34, Fy = Fy14 + Fy23, Fz the sum of four; Mx = b (Fz1 + Fz2 − Fz3 − Fz4), My = a (−Fz1 + Fz2 + Fz3
 * − Fz4), Mz = b (−Fx12 + Fx34) + a (Fy14 − Fy23), with a and b half the sensors' spacings. Type 4: matrix ×
 * volts.
 */
export function decodeChannels(platform: Platform): DecodedChannels {
  const series = platform.channels.map(({ samples }) => samples);
  if (platform.type === 3) return decodeEight(series, platform.origin);
  const six = platform.type === 4 ? calibrated(series, platform.calibration ?? []) : series;
  const [x, y, z, mx, my, mz] = six as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  return { force: { x, y, z }, moment: platform.type === 1 ? null : { x: mx, y: my, z: mz } };
}

/** Whether type 3 says where its sensors are. */
export function knowsSensors({ origin: [a, b] }: Platform): boolean {
  return a > 0 && b > 0;
}

function decodeEight(
  series: readonly Float64Array[],
  [a, b]: readonly [number, number, number],
): DecodedChannels {
  const at = (channel: number, i: number) => (series[channel] as Float64Array)[i] as number;
  const { length } = series[0] as Float64Array;
  const filled = (value: (i: number) => number): Float64Array => {
    const result = new Float64Array(length);
    for (let i = 0; i < length; i++) result[i] = value(i);
    return result;
  };
  const force = {
    x: filled((i) => at(0, i) + at(1, i)),
    y: filled((i) => at(2, i) + at(3, i)),
    z: filled((i) => at(4, i) + at(5, i) + at(6, i) + at(7, i)),
  };
  if (!(a > 0 && b > 0)) return { force, moment: null };
  const moment = {
    x: filled((i) => b * (at(4, i) + at(5, i) - at(6, i) - at(7, i))),
    y: filled((i) => a * (-at(4, i) + at(5, i) + at(6, i) - at(7, i))),
    z: filled((i) => b * (-at(0, i) + at(1, i)) + a * (at(2, i) - at(3, i))),
  };
  return { force, moment };
}

function calibrated(series: readonly Float64Array[], rows: readonly (readonly number[])[]): Float64Array[] {
  return rows.map((row) => {
    const result = new Float64Array((series[0] as Float64Array).length);
    row.forEach((factor, column) => {
      const volts = series[column] as Float64Array;
      for (let i = 0; i < result.length; i++)
        result[i] = (result[i] as number) + factor * (volts[i] as number);
    });
    return result;
  });
}
