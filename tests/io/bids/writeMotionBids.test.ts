import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { motionBidsNames, readMotionBids, writeMotionBids } from "../../../src/io/index.js";
import type { Channel, Recording } from "../../../src/recording/index.js";
import { VERSION } from "../../../src/units/index.js";

const up: Channel = {
  name: "Fz",
  quantity: "force",
  direction: "up",
  unit: "N",
  samples: new Float64Array([700.125, Number.NaN]),
};
const other = (name: string, unit = "V", plate?: string): Channel => ({
  name,
  quantity: "other",
  direction: null,
  unit,
  samples: new Float64Array([-0, 1e21]),
  ...(plate !== undefined && { plate }),
});
const recordingOf = (channels: readonly Channel[], more: Partial<Recording> = {}): Recording => ({
  sampleRate: 1000,
  startTime: 0.5,
  channels,
  subject: { mass: 70 },
  surface: "belt",
  origin: { format: "none" },
  cautions: [],
  ...more,
});
const heel = (name = "heel") => ({
  name,
  forward: new Float64Array([1]),
  up: new Float64Array([2]),
  right: new Float64Array([3]),
});

it("writes the tables as the standard has them: no heading over samples, a row a channel in their order", () => {
  const free: Channel = {
    name: "T",
    quantity: "free-moment",
    direction: "up",
    unit: "N m",
    samples: up.samples,
  };
  const { motion, channels } = writeMotionBids(recordingOf([up, free, other("EMG, left", "mV", "left")]));
  expect(motion).toBe("700.125\t700.125\t-0\nn/a\tn/a\t1e+21\n");
  expect(channels).toBe(
    "name\tcomponent\ttype\ttracked_point\tunits\treference_frame\tquantity\n" +
      "Fz\ty\tMISC\tn/a\tN\trunner\tforce\n" +
      "T\ty\tMISC\tn/a\tN*m\trunner\tfree-moment\n" +
      "EMG, left\tn/a\tMISC\tleft\tmV\tn/a\tother\n",
  );
});

it("writes the sidecars with what the standard requires, and describes what it adds", () => {
  const written = writeMotionBids(recordingOf([up, other("Fz")]), { task: "run5", taskName: "run 5" });
  expect(JSON.parse(written.sidecar)).toEqual({
    TaskName: "run 5",
    TrackingSystemName: "force",
    SamplingFrequency: 1000,
    RecordingDuration: 0.002,
    MotionChannelCount: 2,
    MISCChannelCount: 2,
    POSChannelCount: 0,
    TrackedPointsCount: 0,
    MissingValues: "n/a",
    GaitKinetics: { startTime: 0.5, mass: 70, surface: "belt" },
  });
  const described = JSON.parse(written.channelsSidecar);
  expect(described.reference_frame.Levels.runner).toMatchObject({
    SpatialAxes: "FUR",
    RotationRule: "right-hand",
  });
  const [heading] = Papa.parse<string[]>(written.channels, { delimiter: "\t" }).data;
  const required = ["name", "component", "type", "tracked_point", "units"];
  expect(Object.keys(described)).toEqual((heading as string[]).filter((name) => !required.includes(name)));
  expect(JSON.parse(written.datasetDescription)).toEqual({
    Name: "Force between foot and ground",
    BIDSVersion: "1.10.0",
    DatasetType: "derivative",
    GeneratedBy: [{ Name: "gait-kinetics", Version: VERSION }],
  });
  expect(written).not.toHaveProperty("markers");
  expect(written).not.toHaveProperty("events");
});

it("tells channels of one name apart and gives both their name back", () => {
  const channels = [up, other("Fz"), other("Fz_2")];
  const written = writeMotionBids(recordingOf(channels));
  expect(written.channels.split("\n").map((line) => line.split("\t")[0])).toEqual([
    "name",
    "Fz",
    "Fz_2",
    "Fz_2_2",
    "",
  ]);
  expect(readMotionBids(written).channels).toStrictEqual(channels);
});

it("puts markers at a rate of their own into a tracking system of their own, events beside both", () => {
  const markers = { sampleRate: 200, startTime: 0.5, markers: [heel()] };
  const events = [{ label: "go", time: 0.75 }];
  const written = writeMotionBids(recordingOf([up], { markers, events }), {
    sub: "07",
    ses: "a",
    run: 3,
    desc: "clean",
  });
  expect(written.names).toMatchObject({
    folder: "sub-07/ses-a/motion",
    motion: "sub-07_ses-a_task-running_tracksys-force_run-3_desc-clean_motion.tsv",
    events: "sub-07_ses-a_task-running_run-3_desc-clean_events.tsv",
  });
  expect(written.markers?.names.sidecar).toBe(
    "sub-07_ses-a_task-running_tracksys-markers_run-3_desc-clean_motion.json",
  );
  expect(written.markers?.motion).toBe("1\t2\t3\n");
  expect(JSON.parse(written.markers?.sidecar as string)).toMatchObject({
    SamplingFrequency: 200,
    POSChannelCount: 3,
    TrackedPointsCount: 1,
  });
  expect(written.events).toBe(
    "onset\tduration\ttrial_type\tside\trecording_time\n0.25\tn/a\tgo\tn/a\t0.75\n",
  );
});

describe("refuses", () => {
  it.each([
    ["a blank name", [other("")]],
    ["a name with blanks at its ends", [other(" EMG")]],
    ["a name with a line end", [other("a\nb")]],
    ["a name that means nothing is there", [other("n/a")]],
    ["a unit that means none", [other("EMG", "n/a")]],
    ["a plate without a name", [other("EMG", "V", "")]],
  ])("%s", (_, channels) =>
    expect(() => writeMotionBids(recordingOf(channels))).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ),
  );

  it.each<[string, Partial<Recording>, object, string]>([
    [
      "two markers of one name",
      { markers: { sampleRate: 200, startTime: 0, markers: [heel(), heel()] } },
      {},
      "conflict",
    ],
    [
      "one label for two systems",
      { markers: { sampleRate: 200, startTime: 0, markers: [heel()] } },
      { markersTracksys: "force" },
      "conflict",
    ],
    ["an event whose label has a line end", { events: [{ label: "a\nb", time: 0 }] }, {}, "out-of-range"],
    ["a task name of other letters", {}, { task: "run", taskName: "walk" }, "out-of-range"],
    ["a label with a path in it", {}, { sub: "../1" }, "out-of-range"],
    ["a run that is no number", {}, { run: 1.5 }, "out-of-range"],
    ["an unknown option", {}, { subject: "01" }, "unknown-option"],
    ["a recording that is none", { channels: [] }, {}, "missing-channel"],
  ])("%s", (_, more, options, code) =>
    expect(() => writeMotionBids(recordingOf([up], more), options)).toThrow(
      expect.objectContaining({ code }),
    ),
  );

  it.each([
    { ses: "" },
    { task: "run-5" },
    { tracksys: "a b" },
    { desc: "ä" },
    { sub: 7 as unknown as string },
  ])("the name part %o", (entities) =>
    expect(() => motionBidsNames(entities)).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
});
