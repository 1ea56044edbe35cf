import type { Channel, Direction, Recording, Side } from "../../src/recording/index.js";
import { seededRandom } from "../../src/statistics/index.js";

/** A walk given by formulas, each foot on a belt of its own. */
export interface Walk {
  readonly mass: number;
  readonly speed: number;
  /** s. */
  readonly strideTime: number;
  /** s. */
  readonly stanceTime: number;
}

/** Slow to fast; no time is a whole number of samples, so that every contact falls between them in its own way. */
export const WALKS: readonly Walk[] = [
  { mass: 70, speed: 1.35, strideTime: 1.0837, stanceTime: 0.6703 },
  { mass: 58, speed: 1.0, strideTime: 1.2391, stanceTime: 0.7923 },
  { mass: 84, speed: 1.7, strideTime: 0.9613, stanceTime: 0.5719 },
];

/** Strides of a recording. */
const STRIDES = 20;
/** Of the first contact within the recording, s; the walk goes on before and behind it. */
const START = 0.3;
const GRAVITY = 9.80665;
/** Mean of a foot's vertical force over its stance, as a share of its scale: of sines of order 1, 3 and 5. */
const MEAN = (2 / Math.PI) * (1.05 + 0.3 / 3 + 0.03 / 5);

/** Force of a foot at a time from its contact, N: by sines, scaled so that both feet carry body weight. */
export function footForce(walk: Walk, time: number): Readonly<Record<"forward" | "up" | "medial", number>> {
  const { mass, strideTime, stanceTime } = walk;
  const u = time / stanceTime;
  if (u <= 0 || u >= 1) return { forward: 0, up: 0, medial: 0 };
  const weight = mass * GRAVITY;
  const s = (n: number) => Math.sin(n * Math.PI * u);
  const scale = strideTime / (2 * stanceTime * MEAN);
  return {
    forward: -0.2 * weight * s(2) * (1 - 0.25 * Math.cos(2 * Math.PI * u)),
    up: weight * scale * (1.05 * s(1) + 0.3 * s(3) + 0.03 * s(5)),
    medial: weight * (0.055 * s(1) + 0.015 * s(3)),
  };
}

/** The walk's contacts in order, at the zeros of the force. */
export function walkContacts({
  strideTime,
  stanceTime,
}: Walk): { side: Side; initialContact: number; toeOff: number }[] {
  return Array.from({ length: 2 * STRIDES + 6 }, (_, k) => {
    const initialContact = START + ((k - 3) * strideTime) / 2;
    return { side: k % 2 === 1 ? "right" : "left", initialContact, toeOff: initialContact + stanceTime };
  });
}

/** The walk at 1 kHz, with white noise of a standard deviation in N on each force. */
export function walkRecording(walk: Walk, noise: number, seed: number): Recording {
  const { normal } = seededRandom(seed);
  const contacts = walkContacts(walk);
  const length = Math.round((START + STRIDES * walk.strideTime) * 1000);
  const channels = (["left", "right"] as const).flatMap((side) => {
    const own = contacts.filter((contact) => contact.side === side);
    const forces = Array.from({ length }, (_, i) => {
      const contact = own.find(
        ({ initialContact, toeOff }) => initialContact < i / 1000 && i / 1000 < toeOff,
      );
      return footForce(walk, contact === undefined ? 0 : i / 1000 - contact.initialContact);
    });
    const channel = (
      direction: Direction,
      value: (force: ReturnType<typeof footForce>) => number,
    ): Channel => ({
      name: `${side} ${direction}`,
      quantity: "force",
      direction,
      unit: "N",
      samples: Float64Array.from(forces, (force) => value(force) + noise * normal()),
      plate: side,
    });
    return [
      channel("forward", ({ forward }) => forward),
      channel("up", ({ up }) => up),
      channel("right", ({ medial }) => (side === "right" ? -medial : medial)),
    ];
  });
  return {
    sampleRate: 1000,
    startTime: 0,
    channels,
    subject: { mass: walk.mass },
    speed: walk.speed,
    surface: "belt",
    grade: 0,
    origin: { format: "synthetic" },
    cautions: [],
  };
}
