import type { C3dFile } from "../../../src/io/index.js";

const frames = 7;
const samplesPerFrame = 3;
const scale = 0.25;
const wave = (length: number, step: (i: number) => number) =>
  Float64Array.from({ length }, (_, i) => step(i));
const point = (name: string, description: string, from: number, gap: number) => {
  const seen = (value: (i: number) => number) => wave(frames, (i) => (i === gap ? Number.NaN : value(i)));
  return {
    name,
    description,
    unit: "mm",
    x: seen((i) => from + 10.25 * i),
    y: seen((i) => -20.5 - i),
    z: seen((i) => 900 + 0.25 * i),
    residual: seen((i) => 0.25 * (i % 4)),
    cameras: Uint8Array.from({ length: frames }, (_, i) => (i === gap ? 0 : 5)),
  };
};

/** A file with a little of everything; its numbers lie on whole steps, so that integers hold them as well. */
export const sampleFile: C3dFile = {
  processor: "intel",
  storage: "integer",
  encoding: "utf-8",
  header: {
    points: 2,
    analoguePerFrame: 9,
    firstFrame: 101,
    lastFrame: 107,
    longestGap: 1,
    scale,
    dataStart: 0,
    samplesPerFrame,
    frameRate: 125,
    events: [
      { label: "RIC", time: 0.0125, displayFlag: 1 },
      { label: "é", time: 0.05, displayFlag: 0 },
    ],
  },
  groups: [
    {
      id: 3,
      name: "POINT",
      description: "Punkte, größer",
      locked: true,
      parameters: [
        {
          name: "SCALE",
          description: "",
          locked: true,
          type: "float",
          dimensions: [],
          data: [scale],
        },
      ],
    },
    {
      id: 1,
      name: "MORE",
      description: "",
      locked: false,
      parameters: [
        {
          name: "BYTES",
          description: "",
          locked: false,
          type: "byte",
          dimensions: [2, 2],
          data: [-128, 127, 0, 1],
        },
        {
          name: "WORDS",
          description: "x",
          locked: true,
          type: "integer",
          dimensions: [3],
          data: [-32768, 32767, 7],
        },
        {
          name: "NUMBERS",
          description: "",
          locked: false,
          type: "float",
          dimensions: [2],
          data: [1.5, -(2 ** -100)],
        },
        { name: "NOTHING", description: "", locked: false, type: "integer", dimensions: [0], data: [] },
        {
          name: "TEXTS",
          description: "",
          locked: false,
          type: "character",
          dimensions: [5, 2],
          data: ["Größe", " a"],
        },
      ],
    },
  ],
  frameRate: 125,
  frames,
  firstFrame: 101,
  points: [point("RHEE", "right heel", 100, -1), point("RTOE", "", 300.5, 2)],
  analogue: {
    sampleRate: 375,
    samplesPerFrame,
    generalScale: 0.5,
    format: "signed",
    channels: [
      {
        name: "Fz",
        description: "vertical",
        unit: "N",
        scale: 0.5,
        offset: 0,
        samples: wave(21, (i) => 25 * i - 100),
      },
      {
        name: "Mx",
        description: "",
        unit: "Nmm",
        scale: -4,
        offset: 2047,
        samples: wave(21, (i) => 200 - 2 * i),
      },
      {
        name: "EMG",
        description: "calf",
        unit: "V",
        scale: 1,
        offset: -5,
        samples: wave(21, (i) => (i % 5) / 2),
      },
    ],
  },
  cautions: [],
};

export const FORMS = (["intel", "dec", "mips"] as const).flatMap((processor) =>
  (["integer", "float"] as const).map((storage) => ({ processor, storage })),
);
