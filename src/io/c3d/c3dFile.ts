import type { Caution, Hertz } from "../../units/index.js";

/** The order of bytes and the form of floating numbers: by the processors that the format names. */
export type C3dProcessor = "intel" | "dec" | "mips";

/** How points and analogue samples are stored: 16-bit integers with a scale, or 32-bit floating numbers. */
export type C3dStorage = "integer" | "float";

/** How texts are stored: the format knows characters of one byte only, files of today hold UTF-8 as well. */
export type C3dEncoding = "utf-8" | "latin-1";

interface C3dParameterBase {
  readonly name: string;
  readonly description: string;
  /** Marked as not to be changed by a user. */
  readonly locked: boolean;
  /** Sizes along each dimension, the first running fastest; empty for a single value. Of texts the first is the width in bytes. */
  readonly dimensions: readonly number[];
}

/** A parameter that holds texts, without the blanks that fill them up. */
export interface C3dTextParameter extends C3dParameterBase {
  readonly type: "character";
  readonly data: readonly string[];
}

/** A parameter that holds numbers: 8-bit and 16-bit integers with a sign, or 32-bit floating numbers. */
export interface C3dNumberParameter extends C3dParameterBase {
  readonly type: "byte" | "integer" | "float";
  readonly data: readonly number[];
}

/** One parameter as it is stored. */
export type C3dParameter = C3dTextParameter | C3dNumberParameter;

/** A group of parameters, in the file's order. */
export interface C3dGroup {
  /** From 1 to 127. */
  readonly id: number;
  readonly name: string;
  readonly description: string;
  readonly locked: boolean;
  readonly parameters: readonly C3dParameter[];
}

/** An event of the header, at most 18 of them. */
export interface C3dHeaderEvent {
  /** Up to four characters. */
  readonly label: string;
  /** s after the first frame that the file holds. */
  readonly time: number;
  /** As stored: 0 or 1. */
  readonly displayFlag: number;
}

/** What the first block of the file says, as stored; the parameters say most of it again. */
export interface C3dHeader {
  readonly points: number;
  /** Analogue values in one frame: channels × samples. */
  readonly analoguePerFrame: number;
  /** Number, from 1, of the first frame in the recording that the file was taken from. */
  readonly firstFrame: number;
  readonly lastFrame: number;
  /** Frames; for information. */
  readonly longestGap: number;
  /** Units of length for one integer step; negative in a file of floating numbers. */
  readonly scale: number;
  /** Number, from 1, of the first block of 512 bytes with data. */
  readonly dataStart: number;
  readonly samplesPerFrame: number;
  readonly frameRate: number;
  readonly events: readonly C3dHeaderEvent[];
}

/** The way of one point in the file's own axes and unit; NaN where it was not seen. */
export interface C3dPoint {
  readonly name: string;
  readonly description: string;
  /** As written, such as `mm`. */
  readonly unit: string;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Mean distance of the rays that made the point, in its unit; 0 where it was interpolated or filtered, NaN where not seen. */
  readonly residual: Float64Array;
  /** One bit for each of up to seven cameras that saw it. */
  readonly cameras: Uint8Array;
}

/** One analogue channel, scaled: (stored − offset) × scale × general scale. */
export interface C3dChannel {
  readonly name: string;
  readonly description: string;
  /** As written, such as `N` or `Nmm`. */
  readonly unit: string;
  readonly scale: number;
  readonly offset: number;
  readonly samples: Float64Array;
}

/** The analogue part of a file. */
export interface C3dAnalogue {
  readonly sampleRate: Hertz;
  readonly samplesPerFrame: number;
  /** Factor of all channels. */
  readonly generalScale: number;
  /** Whether stored integers count from −32768 or from 0. */
  readonly format: "signed" | "unsigned";
  readonly channels: readonly C3dChannel[];
}

/** A C3D file as it is: in its own axes and units, every parameter included. */
export interface C3dFile {
  readonly processor: C3dProcessor;
  readonly storage: C3dStorage;
  readonly encoding: C3dEncoding;
  readonly header: C3dHeader;
  readonly groups: readonly C3dGroup[];
  readonly frameRate: Hertz;
  readonly frames: number;
  /** Number, from 1, of the file's first frame in the trial: above 1 where the file was cropped. */
  readonly firstFrame: number;
  readonly points: readonly C3dPoint[];
  readonly analogue: C3dAnalogue;
  readonly cautions: readonly Caution[];
}
