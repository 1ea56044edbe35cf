import {
  type MotionBidsRecording,
  type ReadMotionBidsOptions,
  writeMotionBids,
} from "../../../src/io/index.js";
import type { Recording } from "../../../src/recording/index.js";
import { seededRandom } from "../../../src/statistics/index.js";
import { LAB } from "./files.js";

/** An input of {@link readMotionBids}, made from a seed. */
export interface BidsFuzzInput {
  readonly bytes: MotionBidsRecording;
  readonly options: ReadMotionBidsOptions;
}

const wave = (k: number, length = 8): Float64Array =>
  Float64Array.from({ length }, (_, i) => (i === k ? Number.NaN : 100 * k + i));

/** A recording with a part of every kind. */
const WHOLE: Recording = {
  sampleRate: 1000,
  startTime: 0.25,
  channels: [
    { name: "up", quantity: "force", direction: "up", unit: "N", samples: wave(9), plate: "left" },
    { name: "up", quantity: "force", direction: "up", unit: "N", samples: wave(8), plate: "right" },
    {
      name: "cop",
      quantity: "centre-of-pressure",
      direction: "forward",
      unit: "m",
      samples: wave(2),
      plate: "left",
    },
    { name: "EMG", quantity: "other", direction: null, unit: "mV", samples: wave(3) },
  ],
  platforms: [
    {
      name: "plate 1",
      type: 2,
      channels: ["N", "N", "N", "N m", "N m", "N m"].map((unit, k) => ({
        name: `c${k}`,
        unit,
        samples: wave(k),
      })),
      corners: [
        { forward: 0.6, up: 0, right: 0.4 },
        { forward: 0, up: 0, right: 0.4 },
        { forward: 0, up: 0, right: 0 },
        { forward: 0.6, up: 0, right: 0 },
      ],
      origin: [0, 0, -0.04],
    },
  ],
  markers: {
    sampleRate: 200,
    startTime: 0.25,
    markers: [{ name: "heel", forward: wave(0, 3), up: wave(1, 3), right: wave(9, 3) }],
  },
  events: [{ label: "go", time: 0.3, side: "left" }],
  subject: { mass: 70 },
  speed: 3,
  origin: { format: "motion-bids" },
  cautions: [],
};

/** What may stand in the place of a piece of a file. */
const PIECES = [
  "",
  "\t",
  "\n",
  "\r",
  "\r\n",
  '"',
  '""',
  "n/a",
  "NaN",
  "-",
  "1e999",
  "-1",
  "0",
  "1e-320",
  "0x1F",
  "٣",
  "\u0000",
  "\uFEFF",
  "\ud800",
  "null",
  "true",
  "{}",
  "[]",
  "[",
  "{",
  "}",
  ",",
  ":",
  '"__proto__":{},',
  '"SamplingFrequency":-1,',
  '"GaitKinetics":[],',
  '"platforms":[{"columns":["up"]}],',
  '"Levels":{"runner":"UUU"},',
  "name\t",
  "POS",
  "LATENCY",
  "MISC",
  "kN",
  "furlong",
  "x",
  "z",
  "quat_w",
  "force",
  "platform",
  "marker",
  "9".repeat(400),
  "\t".repeat(2000),
  "\n".repeat(2000),
  "[".repeat(2000),
] as const;

/** Options for the files of this library, and for those of another laboratory. */
const OPTIONS: Readonly<Record<"own" | "lab", readonly ReadMotionBidsOptions[]>> = {
  own: [
    {},
    {},
    {},
    { axes: { x: "right", y: "forward", z: "up" }, mass: 80 },
    { columns: { EMG: "other", cop: "time" } },
  ],
  lab: [
    {},
    {},
    {},
    { axes: { z: "down" }, forceOn: "ground" },
    { columns: { Fz: "other", heel_x: "cop_forward" } },
  ],
};

type Files = Record<string, unknown>;

/** Makes files with pieces of one or more of them changed: texts, tables by rows and columns, files swapped or gone. */
export function bidsFuzzInput(seed: number): BidsFuzzInput {
  const { uniform } = seededRandom(seed);
  const below = (n: number): number => Math.floor(uniform() * n);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  const kind = pick(["own", "lab"] as const);
  const files: Files = kind === "own" ? { ...writeMotionBids(WHOLE) } : { ...LAB };
  for (let edits = 1 + below(3); edits > 0; edits--) edit(files, below, pick);
  return { bytes: asBytes(files, below) as unknown as MotionBidsRecording, options: pick(OPTIONS[kind]) };
}

function edit(files: Files, below: (n: number) => number, pick: <T>(list: readonly T[]) => T): void {
  const holder =
    typeof files.markers === "object" && below(4) === 0 ? { ...(files.markers as Files) } : files;
  const name = pick(["motion", "motion", "channels", "channels", "sidecar", "channelsSidecar", "events"]);
  const text = holder[name];
  if (typeof text !== "string") return;
  holder[name] = changed(text, below, pick, holder);
  if (holder !== files) files.markers = holder;
}

function changed(
  text: string,
  below: (n: number) => number,
  pick: <T>(list: readonly T[]) => T,
  files: Files,
): unknown {
  const at = below(text.length + 1);
  switch (below(7)) {
    case 0:
      return text.slice(0, at) + pick(PIECES) + text.slice(at + below(12));
    case 1:
      return text.slice(0, at);
    case 2: {
      // A row twice, gone or in another place.
      const lines = text.split("\n");
      const [line] = lines.splice(below(lines.length), below(2));
      lines.splice(below(lines.length), 0, line ?? "");
      return lines.join("\n");
    }
    case 3: {
      // A column gone, or one too many, in every row.
      const column = below(8);
      return text.replace(/.+/g, (line) => {
        const cells = line.split("\t");
        cells.splice(column, 1);
        return cells.join("\t");
      });
    }
    case 4:
      return pick([files.channels, files.sidecar, files.motion, undefined, null, 7, ""]);
    default: {
      // One cell, word or number in the place of another.
      const token = /"[^"\n]*"|[^\t\n",:{}[\] ]+/g;
      token.lastIndex = at;
      const found = token.exec(text);
      if (found === null) return text;
      return text.slice(0, found.index) + pick(PIECES) + text.slice(found.index + found[0].length);
    }
  }
}

/** Now and then bytes in place of a text, whole or cut within a character. */
function asBytes(files: Files, below: (n: number) => number): Files {
  if (below(3) > 0) return files;
  const bytes: Files = { ...files };
  for (const [name, text] of Object.entries(files)) {
    if (typeof text !== "string") continue;
    const encoded = new TextEncoder().encode(text);
    if (below(8) === 0 && encoded.length > 0) encoded[below(encoded.length)] = below(256);
    bytes[name] = encoded;
  }
  return bytes;
}
