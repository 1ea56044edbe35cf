import fc from "fast-check";
import { expect, it } from "vitest";
import { readMotionBids, writeMotionBids } from "../../../src/io/index.js";
import { demoRecordings } from "../../../src/synthetic/index.js";
import { recordings } from "./recordings.js";

it("property: what is written comes back equal, to the last bit", () =>
  fc.assert(
    fc.property(recordings, (recording) => {
      const { cautions, ...back } = readMotionBids(writeMotionBids(recording));
      const { cautions: _, ...given } = recording;
      // toStrictEqual tells 0 from −0.
      expect(back).toStrictEqual(given);
      const withGap = recording.channels.filter(
        ({ quantity, samples }) => quantity === "force" && samples.some(Number.isNaN),
      );
      expect(cautions.map(({ code }) => code)).toEqual(withGap.map(() => "gap"));
    }),
    { numRuns: 400, seed: 21 },
  ));

it("property: bytes, Windows line ends and byte order marks read like the text", () => {
  const encoder = new TextEncoder();
  const asWindows = (text: string) => encoder.encode(`\uFEFF${text.replaceAll("\n", "\r\n")}`);
  fc.assert(
    fc.property(recordings, (recording) => {
      const written = writeMotionBids(recording);
      const inBytes = <
        T extends { motion: string; channels: string; sidecar: string; channelsSidecar: string },
      >(
        files: T,
      ) => ({
        motion: asWindows(files.motion),
        channels: asWindows(files.channels),
        sidecar: asWindows(files.sidecar),
        channelsSidecar: asWindows(files.channelsSidecar),
      });
      const bytes = {
        ...inBytes(written),
        ...(written.markers && { markers: inBytes(written.markers) }),
        ...(written.events !== undefined && { events: asWindows(written.events) }),
      };
      expect(readMotionBids(bytes)).toStrictEqual(readMotionBids(written));
    }),
    { numRuns: 100, seed: 22 },
  );
});

it("gives back the demo's recording, and writes it again in the same bytes", () => {
  const { usual } = demoRecordings();
  const written = writeMotionBids(usual);
  const back = readMotionBids(written);
  expect(back.channels).toStrictEqual(usual.channels);
  expect({ ...back, origin: usual.origin, cautions: usual.cautions }).toStrictEqual(usual);
  expect(writeMotionBids(back)).toEqual(written);
});
