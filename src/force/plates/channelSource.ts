import { channelOf, type Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import type { ForceComponents } from "../groundReaction.js";
import { type CentreOfPressureColumns, centreOfPressureFloor, momentOf } from "../moments.js";
import { saturationCautions } from "../saturation.js";
import type { PlateSource } from "./plateSource.js";
import { refuseUpsideDown } from "./refuseUpsideDown.js";
import { sideOfName } from "./sideOfName.js";

const DIRECTIONS = ["forward", "up", "right"] as const;

/** The force channels of one plate, or of a recording without named plates, with `plate` being `null`. */
export function channelSource(recording: Recording, plate: string | null): PlateSource {
  const own = {
    ...recording,
    channels: recording.channels.filter((channel) => (channel.plate ?? null) === plate),
  };
  const force = forcesOf(own, plate);
  refuseUpsideDown(
    force.up,
    plate === null ? "the vertical force" : `the vertical force of "${plate}"`,
    'read the file with the axis stated as "down", or with forceOn: "ground" where it holds the force on the ground',
    0,
  );
  return {
    name: plate,
    side: plate === null ? null : sideOfName(plate),
    force,
    moment: null,
    press: (corrected) => pressed(own, corrected, plate),
    centre: null,
    zero: null,
    signs: null,
    cautions: saturationCautions(
      DIRECTIONS.flatMap((name) => (force[name] ? [{ name, samples: force[name] }] : [])),
      force.up,
    ),
  };
}

function pressed(
  recording: Recording,
  force: ForceComponents,
  plate: string | null,
): ReturnType<NonNullable<PlateSource["press"]>> {
  const column = (quantity: "centre-of-pressure" | "free-moment", direction: "forward" | "right" | "up") =>
    channelOf(recording, quantity, direction)?.samples;
  const forward = column("centre-of-pressure", "forward");
  const right = column("centre-of-pressure", "right");
  const freeMoment = column("free-moment", "up");
  const columns: CentreOfPressureColumns = {
    ...(forward && { forward }),
    ...(right && { right }),
    ...(freeMoment && { freeMoment }),
  };
  const { sampleRate, startTime } = recording;
  const floor = centreOfPressureFloor(force.up, columns, sampleRate, startTime, plate ?? undefined);
  return { moment: momentOf(force, columns, floor), floor };
}

function forcesOf(recording: Recording, plate: string | null): ForceComponents {
  const forces: Partial<Record<"forward" | "up" | "right", Float64Array>> = {};
  for (const direction of DIRECTIONS) {
    const channel = channelOf(recording, "force", direction);
    if (channel === undefined) continue;
    const gap = channel.samples.findIndex(Number.isNaN);
    if (gap >= 0) {
      let missing = 0;
      for (let i = gap; i < channel.samples.length; i++) if (Number.isNaN(channel.samples[i])) missing++;
      const time = recording.startTime + gap / recording.sampleRate;
      // What the reader said of these cells names the line of the file.
      const said = recording.cautions.find(({ code, where }) => code === "gap" && where === channel.name);
      const line = said?.values?.line === undefined ? "" : `, line ${said.values.line} of the file`;
      fail(
        "gap",
        `"${channel.name}" lacks ${missing} of ${channel.samples.length} samples, the first at ${time.toFixed(3)} s (sample ${gap}${line}); fill the gaps before force is computed`,
        {
          where: `${channel.name}, sample ${gap}`,
          values: {
            channel: channel.name,
            sample: gap,
            time,
            missing,
            ...(line && { line: said?.values?.line }),
          },
        },
      );
    }
    forces[direction] = channel.samples;
  }
  const { up } = forces;
  if (up === undefined) {
    const on = plate === null ? "the recording" : `plate "${plate}"`;
    // Why a force platform of the file gives no force is what its reader said.
    const said = recording.cautions.filter(({ code }) => /^platform-/.test(code));
    fail(
      "missing-channel",
      `${on} has no vertical force; a force channel in the direction "up" is needed, it has ${recording.channels.map(({ name }) => name).join(", ") || "none"}${said.map(({ message }) => `; ${message}`).join("")}`,
      {
        argument: "recording",
        values: {
          channels: recording.channels.map(({ name }) => name),
          ...(said.length > 0 && { platforms: said.map(({ where }) => where ?? null) }),
        },
      },
    );
  }
  return { ...forces, up };
}
