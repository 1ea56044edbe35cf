import type { Channel, Recording } from "../src/recording/index.js";
import walking from "./fixtures/events/walking.json" with { type: "json" }; // walking.py, NumPy 2.4.6

export { walking };

/** Time of one foot on the ground, s. */
export const STANCE: number = walking.metrics.stanceTime;
const WEIGHT = walking.massKg * 9.80665;

/** Force of one foot by the fixture's formula, N. */
function footForce(time: number, side: "left" | "right"): { forward: number; up: number; right: number } {
  const u = time / STANCE;
  if (u <= 0 || u >= 1) return { forward: 0, up: 0, right: 0 };
  const s = (n: number) => Math.sin(n * Math.PI * u);
  return {
    forward: -0.2 * WEIGHT * s(2) * (1 - 0.25 * Math.cos(2 * Math.PI * u)),
    up: WEIGHT * walking.scaleK * (1.05 * s(1) + 0.3 * s(3) + 0.03 * s(5)),
    right: WEIGHT * (side === "right" ? -1 : 1) * (0.055 * s(1) + 0.015 * s(3)),
  };
}

/** The fixture's walk at 1 kHz, each foot on a belt of its own, with offsets of the belts' channels. */
export function walkOnBelts(
  offsets: Readonly<Record<"left" | "right", number>> = { left: 0, right: 0 },
  names: Readonly<Record<"left" | "right", string>> = { left: "left", right: "right" },
): Recording {
  const channels: Channel[] = [];
  for (const side of ["left", "right"] as const) {
    const listed = walking.events.filter((event) => event.side === side).map((event) => event.initialContact);
    // The walk goes on before the recording starts, so that its first stride is a whole one.
    const starts = [(listed[0] as number) - walking.metrics.strideTime, ...listed];
    const at = (i: number) => {
      const start = starts.filter((time) => time <= i / 1000).at(-1) ?? Number.POSITIVE_INFINITY;
      return { time: i / 1000 - start, ...footForce(i / 1000 - start, side) };
    };
    const rows = Array.from({ length: 4400 }, (_, i) => at(i));
    for (const direction of ["forward", "up", "right"] as const) {
      channels.push({
        name: `${side} ${direction}`,
        quantity: "force",
        direction,
        unit: "N",
        samples: Float64Array.from(rows, (row) => row[direction] + offsets[side]),
        plate: names[side],
      });
    }
    const place = (forward: boolean) => (row: { time: number; up: number }) =>
      row.up <= 20 ? Number.NaN : forward ? 0.3 - 1.35 * row.time : side === "right" ? 0.055 : -0.055;
    for (const direction of ["forward", "right"] as const) {
      channels.push({
        name: `${side} centre of pressure ${direction}`,
        quantity: "centre-of-pressure",
        direction,
        unit: "m",
        samples: Float64Array.from(rows, place(direction === "forward")),
        plate: names[side],
      });
    }
  }
  return {
    sampleRate: 1000,
    startTime: 0,
    channels,
    subject: { mass: walking.massKg },
    speed: walking.metrics.speed,
    surface: "belt",
    origin: { format: "test" },
    cautions: [],
  };
}
