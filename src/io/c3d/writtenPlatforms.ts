import type { Channel, Platform, Position } from "../../recording/index.js";
import type { Caution } from "../../units/index.js";
import type { C3dParameter } from "./c3dFile.js";
import type { OwnContent } from "./ownGroup.js";
import { type ListParameter, parameterParts } from "./parameterParts.js";

/** One analogue channel to write. */
interface WrittenChannel {
  readonly name: string;
  readonly unit: string;
  readonly samples: Float64Array;
}

/** The analogue part of a recording as a file holds it. */
export interface WrittenPlatforms {
  readonly channels: readonly WrittenChannel[];
  /** Of the group FORCE_PLATFORM. */
  readonly parameters: readonly C3dParameter[];
  /** What was made that no recording states. */
  readonly cautions: readonly Caution[];
  readonly content: Pick<
    OwnContent,
    "roles" | "names" | "plates" | "platformNames" | "platformSides" | "platformZeros"
  >;
}

/**
 * The six channels of type 1 in their order. Of plate axes x forward, y right, z down and the action on the plate, which
 * is the opposite of the force on the runner: forward and right change sign, down of the action is up of the reaction;
 * the free moment on the plate about down is that on the runner about up.
 */
const TYPE_1 = [
  "-force forward",
  "-force right",
  "force up",
  "centre-of-pressure forward",
  "centre-of-pressure right",
  "free-moment up",
] as const;

/** The labels of these six, before the plate's number: along the plate's axes, not the recording's. */
const LABELS = ["Fx", "Fy", "Fz", "Px", "Py", "Mz"] as const;

/** Half the sides of a plate that is made for force channels, m, where their centre of pressure does not need more. */
const HALF_SIDE = 0.5;

/** Lays out channels and platforms: platforms as they are, whole sets of force channels as type 1, the others by themselves. */
export function writtenPlatforms(
  platforms: readonly Platform[],
  channels: readonly Channel[],
): WrittenPlatforms {
  const written: WrittenChannel[] = [];
  const roles: string[] = [];
  const names: string[] = [];
  const plates: string[] = [];
  const rows: {
    readonly type: number;
    readonly numbers: number[];
    readonly platform: Platform | null;
    readonly half: number;
  }[] = [];
  const cautions: Caution[] = [];
  const roleOf = ({ quantity, direction }: Channel) =>
    quantity === "other" ? "other" : `${quantity} ${direction}`;
  const complete = [...new Set(channels.map(({ plate }) => plate))].filter((plate) =>
    TYPE_1.every((role) => find(channels, plate, role) !== undefined),
  );
  const numbers = plateNumbers(complete.length, platforms, channels);
  for (const channel of channels) {
    const role = roleOf(channel);
    const place = TYPE_1.findIndex((one) => one.replace(/^-/, "") === role);
    const plate = place < 0 ? -1 : complete.indexOf(channel.plate);
    const turned = plate >= 0 && TYPE_1[place]?.startsWith("-");
    const { name, unit, samples } = channel;
    const label = plate < 0 ? name : `${LABELS[place]}${numbers[plate]}`;
    written.push({ name: label, unit, samples: turned ? samples.map((value) => 0 - value) : samples });
    names.push(label === name ? "" : name);
    roles.push(turned ? `-${role}` : role);
    plates.push(channel.plate ?? "");
  }
  for (const plate of complete) {
    const own = TYPE_1.map((role) => find(channels, plate, role) as Channel);
    const half = halfSideOf(own);
    rows.push({
      type: 1,
      numbers: own.map((channel) => channels.indexOf(channel) + 1),
      platform: null,
      half,
    });
    cautions.push(madeCaution(plate, half, numbers[cautions.length] as number));
  }
  for (const platform of platforms) {
    const numbers = platform.channels.map((_, k) => written.length + k + 1);
    rows.push({ type: platform.type, numbers, platform, half: 0 });
    for (const channel of platform.channels) {
      written.push(channel);
      roles.push("platform");
      names.push("");
      plates.push("");
    }
  }
  const of = (value: (platform: Platform) => string) =>
    rows.map(({ platform }) => (platform === null ? "" : value(platform)));
  const most = Math.max(6, ...rows.map(({ numbers }) => numbers.length));
  const floats = (name: string, size: readonly number[], values: readonly number[], description: string) =>
    parameter({ name, type: "float", rows: size, values, description });
  const integers = (name: string, size: readonly number[], values: readonly number[], description: string) =>
    parameter({ name, type: "integer", rows: size, values, description });
  const matrices = rows.some(({ type }) => type === 4);
  return {
    channels: written,
    parameters: [
      ...parameterParts({
        name: "USED",
        type: "integer",
        values: [rows.length],
        single: true,
        description: "platforms",
      }),
      ...integers(
        "TYPE",
        [],
        rows.map(({ type }) => type),
        "types of the platforms",
      ),
      // First frame behind the last: none. Each platform's own stands in the group of this library.
      ...integers("ZERO", [], [1, 0], "first and last frame without load"),
      ...floats(
        "CORNERS",
        [3, 4],
        rows.flatMap(({ platform, half }) => cornersOf(platform, half)),
        "corners of the surface",
      ),
      ...floats(
        "ORIGIN",
        [3],
        rows.flatMap(({ platform }) => platform?.origin ?? [0, 0, 0]),
        "transducer to surface, or spacings",
      ),
      ...integers(
        "CHANNEL",
        [most],
        rows.flatMap(({ numbers }) => [...numbers, ...new Array<number>(most - numbers.length).fill(0)]),
        "numbers of the channels",
      ),
      ...(matrices
        ? floats(
            "CAL_MATRIX",
            [6, 6],
            rows.flatMap(({ platform }) => matrixOf(platform)),
            "force and moment for a volt",
          )
        : []),
    ],
    cautions,
    content: {
      roles,
      names,
      plates,
      platformNames: of(({ name }) => name),
      platformSides: of(({ side }) => side ?? ""),
      platformZeros: of(({ zero }) => (zero === undefined ? "" : `${zero.from} ${zero.to}`)),
    },
  };
}

/** Numbers, from 1, for plates that are made: those whose labels no channel has. */
function plateNumbers(
  count: number,
  platforms: readonly Platform[],
  channels: readonly Channel[],
): readonly number[] {
  const taken = new Set([...channels, ...platforms.flatMap((one) => one.channels)].map(({ name }) => name));
  const numbers: number[] = [];
  for (let number = 1; numbers.length < count; number++) {
    if (!LABELS.some((label) => taken.has(`${label}${number}`))) numbers.push(number);
  }
  return numbers;
}

/** The surface is invented: the recording states none. */
function madeCaution(plate: string | undefined, half: number, number: number): Caution {
  const side = Number((2 * half).toFixed(1));
  const whose = plate === undefined ? "" : ` of plate "${plate}"`;
  return {
    code: "platform-made",
    message: `the recording states no force platform for its channels${whose}; one of type 1, ${side} m × ${side} m about the origin, was written for other programs, with the channels Fx${number}, Fy${number}, Fz${number}, Px${number}, Py${number}, Mz${number} along its own axes: x forward, y right, z down, the force on the platform`,
    where: `FORCE_PLATFORM${whose}`,
    values: { side, number },
  };
}

function parameter(list: ListParameter): C3dParameter[] {
  return list.values.length === 0 ? [] : parameterParts(list);
}

function find(
  channels: readonly Channel[],
  plate: string | undefined,
  role: (typeof TYPE_1)[number],
): Channel | undefined {
  const wanted = role.replace(/^-/, "");
  return channels.find((one) => one.plate === plate && `${one.quantity} ${one.direction}` === wanted);
}

/** Half a side that the whole centre of pressure lies within, in whole decimetres; 10 m at most. */
function halfSideOf(six: readonly Channel[]): number {
  let farthest = HALF_SIDE;
  for (const { quantity, samples } of six) {
    if (quantity !== "centre-of-pressure") continue;
    for (let i = 0; i < samples.length; i++) {
      const distance = Math.abs(samples[i] as number);
      if (distance > farthest) farthest = distance;
    }
  }
  return Math.min(10, Math.ceil(farthest * 10) / 10);
}

/** Corners in the file's axes, x forward, y left, z up. A plate of force channels is centred on the origin. */
function cornersOf(platform: Platform | null, half: number): number[] {
  const made: readonly Position[] = [
    { forward: half, up: 0, right: half },
    { forward: -half, up: 0, right: half },
    { forward: -half, up: 0, right: -half },
    { forward: half, up: 0, right: -half },
  ];
  return (platform?.corners ?? made).flatMap(({ forward, up, right }) => [forward, 0 - right, up]);
}

/** By columns, the first index running fastest. */
function matrixOf(platform: Platform | null): number[] {
  return Array.from({ length: 36 }, (_, k) => platform?.calibration?.[k % 6]?.[Math.floor(k / 6)] ?? 0);
}
