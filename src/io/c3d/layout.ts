import type { Caution } from "../../units/index.js";
import type { C3dHeader, C3dStorage } from "./c3dFile.js";
import { COUNT_LIMIT, type Fit, frameCount } from "./frameCount.js";
import type { ParameterTable } from "./parameterTable.js";
import { BLOCK_SIZE } from "./readHeader.js";
import { quoted, refuseFile } from "./refuse.js";

/** How far ANALOG:RATE may lie from POINT:RATE × samples in a frame and be the same rate, as a share of it. */
export const RATE_ROUNDING: number = 1e-4;

/** Where the data of a file are and how they are laid out. */
export interface Layout {
  readonly points: number;
  readonly channels: number;
  readonly samplesPerFrame: number;
  readonly frames: number;
  readonly firstFrame: number;
  readonly frameRate: number;
  /** Without sign. */
  readonly scale: number;
  readonly storage: C3dStorage;
  /** Place of the first byte of data. */
  readonly start: number;
  /** Numbers in one frame. */
  readonly perFrame: number;
}

/** What header and parameters both state. */
interface Statement {
  readonly points: number;
  readonly channels: number;
  readonly samplesPerFrame: number;
  readonly frameRate: number;
  readonly scale: number;
  readonly dataStart: number;
}

/**
 * Finds the layout of the data. What header and parameters both state is taken from the parameters (from memory: the
 * format's guide calls the header a copy of them), with a `Caution` where they differ; from the header only where the file is too
 * short for what the parameters state and long enough for what the header does, or longer than the parameters state and just as
 * long as the header does.
 */
export function layoutOf(
  header: C3dHeader,
  table: ParameterTable,
  bytes: number,
): { readonly layout: Layout; readonly cautions: readonly Caution[] } {
  const cautions: Caution[] = [];
  const inHeader = statementOfHeader(header);
  const inParameters = statementOfParameters(table, inHeader, cautions);
  const { frames, cautions: ofFrames } = frameCount(header, table, (count) =>
    fitOf(inParameters, count, bytes),
  );
  cautions.push(...ofFrames);
  const [ofParameters, ofHeader] = [fitOf(inParameters, frames, bytes), fitOf(inHeader, frames, bytes)];
  const why =
    ofParameters === "too short" && ofHeader !== "too short"
      ? "the file is too short for the parameters"
      : ofParameters === "left over" && ofHeader === "filled"
        ? "the header's fills the file, the parameters' leaves data over"
        : null;
  const chosen = why === null ? inParameters : inHeader;
  cautions.push(...differences(inHeader, inParameters, why));
  const { points, channels, samplesPerFrame, scale, dataStart } = chosen;
  if (frames < 1) refuseFile("POINT:FRAMES", "the file holds no frame");
  if (!(chosen.frameRate > 0 && Number.isFinite(chosen.frameRate))) {
    refuseFile("POINT:RATE", `the rate is ${chosen.frameRate} Hz; it must be above 0`);
  }
  if (!Number.isFinite(scale)) refuseFile("POINT:SCALE", `the scale is ${scale}; a finite number is needed`);
  if (dataStart < 2) {
    refuseFile("POINT:DATA_START", `the data begin in block ${dataStart}, where the header is`, {
      dataStart,
    });
  }
  if (channels > 0 && samplesPerFrame === 0) {
    refuseFile("ANALOG:RATE", `there are ${channels} analogue channels and no sample in a frame`);
  }
  const storage = storageOf(chosen, frames, bytes);
  const start = (dataStart - 1) * BLOCK_SIZE;
  const perFrame = 4 * points + channels * samplesPerFrame;
  const needed = start + frames * perFrame * sizeOf(storage);
  if (needed > bytes) {
    const whole =
      perFrame === 0 ? 0 : Math.max(0, Math.floor((bytes - start) / (perFrame * sizeOf(storage))));
    refuseFile(
      `frame ${whole + 1}`,
      `the file ends within it, after ${bytes} bytes; its ${frames} frames of ${points} points and ${channels} × ${samplesPerFrame} analogue values from byte ${start} need ${needed}: it is cut off, or its parameters are wrong`,
      { bytes, needed, frames, whole },
    );
  }
  if (fitOf({ ...chosen, scale: storage === "float" ? -1 : 1 }, frames, bytes) === "left over") {
    cautions.push({
      code: "data-left-over",
      message: `the file holds ${bytes - needed} bytes behind its ${frames} frames; they were not read`,
      where: "POINT:FRAMES",
      values: { bytes: bytes - needed },
    });
  }
  const { firstFrame, cautions: ofFirst } = firstFrameOf(header, table);
  cautions.push(...ofFirst);
  const layout: Layout = {
    points,
    channels,
    samplesPerFrame,
    frames,
    firstFrame,
    frameRate: chosen.frameRate,
    scale: Math.abs(scale),
    storage,
    start,
    perFrame,
  };
  return { layout, cautions };
}

function statementOfHeader(header: C3dHeader): Statement {
  const { points, analoguePerFrame, samplesPerFrame, frameRate, scale, dataStart } = header;
  const channels = samplesPerFrame === 0 ? 0 : Math.floor(analoguePerFrame / samplesPerFrame);
  return { points, channels, samplesPerFrame, frameRate, scale, dataStart };
}

function statementOfParameters(table: ParameterTable, header: Statement, cautions: Caution[]): Statement {
  const either = (group: string, name: string, found: number | undefined, inHeader: number): number => {
    const [given] = table.get(group, name)?.data ?? [];
    if (found !== undefined || given === undefined) return found ?? inHeader;
    cautions.push({
      code: "header-disagrees",
      message: `${group}:${name} is ${shown(given)}, which it cannot be; the header's ${inHeader} was used`,
      where: `${group}:${name}`,
      values: { header: inHeader, parameters: plain(given) },
    });
    return inHeader;
  };
  const points = either("POINT", "USED", whole(table.count("POINT", "USED")), header.points);
  const channels = either("ANALOG", "USED", whole(table.count("ANALOG", "USED")), header.channels);
  const rate = table.number("POINT", "RATE");
  const usable = rate !== undefined && rate > 0 && Number.isFinite(rate) ? rate : undefined;
  const frameRate = either("POINT", "RATE", usable, header.frameRate);
  const analogueRate = table.number("ANALOG", "RATE");
  const ratio = analogueRate === undefined ? Number.NaN : analogueRate / frameRate;
  const nearest = Math.round(ratio);
  // Rates are stored with 24 bits: 1000 Hz over 33.333 Hz is not quite 30.
  const even = nearest >= 1 && nearest <= 0xffff && Math.abs(ratio / nearest - 1) < RATE_ROUNDING;
  const [written] = table.get("ANALOG", "RATE")?.data ?? [];
  if (!even && channels > 0 && written !== undefined) {
    cautions.push({
      code: "header-disagrees",
      message: `ANALOG:RATE is ${shown(written)} and POINT:RATE ${frameRate} Hz, no whole number of samples in a frame; the header's ${header.samplesPerFrame} was used`,
      where: "ANALOG:RATE",
      values: { analogueRate: plain(written), frameRate, header: header.samplesPerFrame },
    });
  }
  return {
    points,
    channels,
    samplesPerFrame: even ? nearest : header.samplesPerFrame,
    frameRate,
    scale: either("POINT", "SCALE", table.number("POINT", "SCALE"), header.scale),
    dataStart: either("POINT", "DATA_START", whole(table.count("POINT", "DATA_START")), header.dataStart),
  };
}

function shown(value: number | string): string {
  return typeof value === "string" ? `the text ${quoted(value)}` : String(value);
}

/** For a caution, which holds no NaN. */
function plain(value: number | string): number | string {
  return Number.isFinite(value) ? value : String(value);
}

function whole(value: number | undefined): number | undefined {
  return value !== undefined && Number.isInteger(value) && value >= 0 && value <= 0xffff ? value : undefined;
}

function sizeOf(storage: C3dStorage): number {
  return storage === "float" ? 4 : 2;
}

/** Negative scale: floating numbers. A scale of 0, which a file without points may have, leaves it to the file's length. */
function storageOf(stated: Statement, frames: number, bytes: number): C3dStorage {
  if (stated.scale < 0) return "float";
  const asFloat = fitOf({ ...stated, scale: -1 }, frames, bytes);
  return stated.scale === 0 && asFloat !== "too short" ? "float" : "integer";
}

function fitOf(stated: Statement, frames: number, bytes: number): Fit {
  const { points, channels, samplesPerFrame, scale, dataStart } = stated;
  const perFrame = (4 * points + channels * samplesPerFrame) * (scale < 0 ? 4 : 2);
  const left = bytes - (dataStart - 1) * BLOCK_SIZE - frames * perFrame;
  if (dataStart < 2 || left < 0) return "too short";
  return left >= BLOCK_SIZE + perFrame ? "left over" : "filled";
}

const SOURCES: Readonly<Record<keyof Statement, string>> = {
  points: "POINT:USED",
  channels: "ANALOG:USED",
  samplesPerFrame: "ANALOG:RATE",
  frameRate: "POINT:RATE",
  scale: "POINT:SCALE",
  dataStart: "POINT:DATA_START",
};

/** @param why - Why the header counts; `null` where the parameters do. */
function differences(header: Statement, parameters: Statement, why: string | null): Caution[] {
  return (Object.keys(SOURCES) as (keyof Statement)[]).flatMap((key) => {
    const [one, two] = [header[key], parameters[key]];
    if (key === "samplesPerFrame" && parameters.channels === 0 && header.channels === 0) return [];
    if (Math.abs(one - two) <= 1e-5 * Math.abs(two)) return [];
    const counted = why === null ? "the parameters" : `${why}; the header`;
    return [
      {
        code: "header-disagrees",
        message: `the header says ${one} where ${SOURCES[key]} says ${two}; ${counted} counted`,
        where: SOURCES[key],
        values: { header: one, parameters: two },
      },
    ];
  });
}

/** The header holds 16 bits of the number; parameters of the trial, where present, the whole of it. */
function firstFrameOf(
  { firstFrame: inHeader }: C3dHeader,
  table: ParameterTable,
): { readonly firstFrame: number; readonly cautions: readonly Caution[] } {
  const [low, high] = table.numbers("TRIAL", "ACTUAL_START_FIELD");
  const ofHeader = Math.max(1, inHeader);
  if (low === undefined) return { firstFrame: ofHeader, cautions: [] };
  const firstFrame = Math.max(1, (low & 0xffff) + 65536 * ((high ?? 0) & 0xffff));
  const same = inHeader === (firstFrame & 0xffff) || ofHeader === Math.min(firstFrame, COUNT_LIMIT);
  if (same) return { firstFrame, cautions: [] };
  const message = `the header says that the first frame is number ${inHeader}, and TRIAL:ACTUAL_START_FIELD ${firstFrame}; the parameter counted, and times begin by it`;
  const values = { header: inHeader, parameters: firstFrame };
  return {
    firstFrame,
    cautions: [{ code: "header-disagrees", message, where: "TRIAL:ACTUAL_START_FIELD", values }],
  };
}
