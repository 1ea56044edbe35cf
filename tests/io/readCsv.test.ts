import { describe, expect, it } from "vitest";
import { READ_CSV_DEFAULTS, type ReadCsvOptions, readCsv, ZERO_TOLERANCE } from "../../src/io/index.js";
import { cop, force, freeMoment } from "./fixtures.js";

const table = (...lines: string[]) => lines.join("\n");
const refusal = (
  text: string,
  options: ReadCsvOptions = {},
): { code: string; message: string; where?: string; argument?: string } => {
  try {
    readCsv(text, options);
  } catch (caught) {
    return caught as { code: string; message: string; where?: string; argument?: string };
  }
  throw new Error("it was read");
};

describe("header", () => {
  it("any order, any case, units in brackets or parentheses, known units brought to SI", () => {
    const recording = readCsv(
      table(
        "UP [kN],Time (ms),Cop Forward [mm],cop-right(cm),Free_Moment [N·mm],right[lbf],FORWARD [kgf]",
        "0.5,10,100,2,5000,1,1",
        "0.6,12,200,3,6000,2,2",
      ),
    );
    expect(recording.sampleRate).toBe(500);
    expect(recording.startTime).toBe(0.01);
    expect(force(recording, "up")).toEqual([500, 600]);
    expect(cop(recording, "forward")).toEqual([0.1, 0.2]);
    expect(cop(recording, "right")).toEqual([0.02, 0.03]);
    expect(freeMoment(recording)).toEqual([5, 6]);
    expect(force(recording, "right")[0]).toBeCloseTo(4.4482216152605, 12); // pound-force, NIST SP 811, app. B.8 (from memory)
    expect(force(recording, "forward")[0]).toBe(9.80665);
  });

  it("an option's unit is refused where the header states another, and passes where it states the same", () => {
    const { code, message, where } = refusal("up [kN]\n700\n710", { sampleRate: 100, units: { up: "N" } });
    expect({ code, where }).toEqual({ code: "conflict", where: 'line 1, column 1 "up [kN]"' });
    expect(message).toContain('"kN"');
    for (const unit of ["kN", " kN "]) {
      const recording = readCsv("up [kN]\n0.7", { sampleRate: 100, units: { up: unit } });
      expect(force(recording, "up")).toEqual([700]);
      expect(recording.cautions).toEqual([]);
    }
    const moment = readCsv("up [N],free_moment [N·mm]\n1,2000", {
      sampleRate: 1,
      units: { free_moment: "N mm" },
    });
    expect(freeMoment(moment)).toEqual([2]);
  });

  it("brackets that hold no unit leave it to the option", () => {
    const recording = readCsv("up (corrected)\n700", { sampleRate: 1, units: { up: "N" } });
    expect(force(recording, "up")).toEqual([700]);
    expect(recording.cautions).toEqual([expect.objectContaining({ code: "option-over-file", where: "up" })]);
  });

  it.each(["ignore", "units", "columns"] as const)("%s may name columns of the file alone", (option) => {
    const value = option === "ignore" ? ["Tme"] : { Tme: option === "units" ? "s" : "time" };
    const error = refusal("time [s],up [N]\n0,1\n1,2", { [option]: value });
    expect(error).toMatchObject({ code: "out-of-range", argument: option, where: "line 1" });
    expect(error.message).toBe(
      `${option} names "Tme", and the file has no such column; line 1 names "time [s]", "up [N]"`,
    );
  });

  it("ignores all unknown names, though there may be none", () => {
    expect(force(readCsv("time [s],up [N]\n0,1\n1,2", { ignore: ["*"] }), "up")).toEqual([1, 2]);
    expect(force(readCsv("time [s],up [N],EMG\n0,1,5\n1,2,6", { ignore: ["*"] }), "up")).toEqual([1, 2]);
  });

  it.each(["down", "vertical", "Fw", "other:", ""])("refuses to take a column as %j", (word) => {
    const error = refusal("Vertical GRF [N]\n1", { sampleRate: 1, columns: { "Vertical GRF": word } });
    expect(error).toMatchObject({ code: "out-of-range", argument: "columns" });
    expect(error.message).toContain(`columns states "Vertical GRF" as ${JSON.stringify(word)}`);
    expect(error.message).toContain("cop_forward");
    expect(error.message.includes('{ z: "down" }')).toBe(word === "down");
  });

  it.each([
    ["time_s", "time"],
    ["Time stamp", "time"],
    ["COP AP", "cop_forward"],
    ["cop_ml", "cop_right"],
    ["GRF anterior", "forward"],
    ["ML force", "right"],
    ["Vertical GRF", "up"],
    ["torque", "free_moment"],
  ])("advises to take %j as %s", (name, word) => {
    expect(refusal(`up [N],${name}\n1,2`, { sampleRate: 1 }).message).toContain(
      `columns: { "${name}": "${word}" }`,
    );
  });

  // 2026-11-25: every unknown name was advised to be "up", a moment and a marker too.
  it.each([
    ["Mx [N m]", "Mx", "other:Mx"],
    ["m1_X (m)", "m1_X", "marker:m1:x"],
    ["HEEL.y [mm]", "HEEL.y", "marker:HEEL:y"],
    ["height [cm]", "height", "other:height"],
    ["knee [deg]", "knee", "other:knee"],
    ["EMG [mV]", "EMG", "other:EMG"],
    ["free torque Tz_1 [N m]", "free torque Tz_1", "free_moment"],
    ["plate 2 [N]", "plate 2", "up"],
  ])("2026-11-25: advises by the unit to take %j as %s, and that can be done", (heading, name, word) => {
    const text = `up [N],${heading}\n1,2`;
    expect(refusal(text, { sampleRate: 1 }).message).toContain(`columns: { "${name}": "${word}" }`);
    if (word === "up" || word.startsWith("marker:")) return;
    expect(readCsv(text, { sampleRate: 1, columns: { [name]: word } }).channels).toHaveLength(2);
  });
  it("2026-11-25: the unit may stand in a row below or in an option", () => {
    expect(refusal("up,Mx\nN,N m\n1,2", { sampleRate: 1 }).message).toContain('"Mx": "other:Mx"');
    const units = { Mx: "N m" };
    expect(refusal("up [N],Mx\n1,2", { sampleRate: 1, units }).message).toContain('"Mx": "other:Mx"');
  });
  it.each([
    ["sep=;\nup [N];right [N]\n1;2", ";"],
    ["sep=,\nup [N],right [N]\n1,2", ","],
    ["sep=;\nup [N]\tright [N]\n1\t2", "tab"],
  ])("2026-11-25: a first line %j was an unknown column; it is said to be left out by skip", (text) => {
    const error = refusal(text, { sampleRate: 1 });
    expect(error).toMatchObject({ code: "unreadable-file", argument: "skip", where: "line 1" });
    expect(error.message).toMatch(/^line 1 holds "sep=.?", .* skip: 1$/);
    expect(readCsv(text, { sampleRate: 1, skip: 1 }).channels).toHaveLength(2);
  });

  it("says where the vertical force is itself among what is ignored", () => {
    const error = refusal("time [s],up [N]\n0,1", { ignore: ["up"] });
    expect(error).toMatchObject({ code: "missing-channel", argument: "ignore" });
    expect(error.message).toContain('column 2 "up [N]" holds the vertical force');
    const axes = { y: "down" } as const;
    expect(refusal("Fy [N]\n1", { sampleRate: 1, ignore: ["Fy"], axes }).argument).toBe("ignore");
    expect(refusal("right [N],EMG\n1,2", { sampleRate: 1, ignore: ["EMG"] }).argument).toBeUndefined();
  });

  it("columns named by axis go where the axes point, opposite directions change sign", () => {
    const text = "Fx [N],Fy [N],Fz [N],COPx [m],COPy [m],Tz [N m]\n1,2,-3,0.1,0.2,4";
    const recording = readCsv(text, { sampleRate: 1, axes: { x: "left", y: "backward", z: "down" } });
    expect(force(recording, "right")).toEqual([-1]);
    expect(force(recording, "forward")).toEqual([-2]);
    expect(force(recording, "up")).toEqual([3]);
    expect(cop(recording, "right")).toEqual([-0.1]);
    expect(cop(recording, "forward")).toEqual([-0.2]);
    // T_z = x F_y − y F_x keeps its sign where all three axes are turned round, and "down" is "up" once more.
    expect(freeMoment(recording)).toEqual([4]);
    const rightHanded = { x: "right", y: "backward", z: "down" } as const;
    expect(freeMoment(readCsv(text, { sampleRate: 1, axes: rightHanded }))).toEqual([-4]);
    expect(recording.cautions.map(({ code }) => code)).toEqual(["left-handed-axes"]);
  });

  it("force on the ground changes the sign of force and free moment, not of the centre of pressure", () => {
    const text =
      "up [N],forward [N],cop_forward [m],free_moment [N m],time [s]\n-700,30,0.1,4,0\n-710,31,0.2,5,1";
    const recording = readCsv(text, { forceOn: "ground" });
    expect(force(recording, "up")).toEqual([700, 710]);
    expect(force(recording, "forward")).toEqual([-30, -31]);
    expect(cop(recording, "forward")).toEqual([0.1, 0.2]);
    expect(freeMoment(recording)).toEqual([-4, -5]);
  });

  it("one axis is enough for one column, a moment needs all three", () => {
    expect(force(readCsv("Fz [N]\n5", { sampleRate: 1, axes: { z: "up" } }), "up")).toEqual([5]);
    expect(refusal("Fz [N],Tz [N m]\n5,1", { sampleRate: 1, axes: { z: "up" } }).code).toBe("unknown-axes");
  });

  it("free moments about horizontal axes and heights of the centre of pressure pass only as zeros", () => {
    const axes = { x: "right", y: "forward", z: "up" } as const;
    const read = (tx: number, height: number) =>
      readCsv(`Fz [N],Tx [N m],Tz [N m],COPz [m]\n5,${tx},2,${height}`, { sampleRate: 1, axes });
    expect(freeMoment(read(0, ZERO_TOLERANCE))).toEqual([2]);
    expect(() => read(0.1, 0)).toThrow(expect.objectContaining({ code: "unreadable-file" }));
    expect(() => read(0, -0.01)).toThrow(expect.objectContaining({ code: "unreadable-file" }));
  });

  it("other channels are kept with their unit, as written", () => {
    const recording = readCsv("up [N],other:EMG [mV],other:belt\n5,0.3,7", {
      sampleRate: 1,
    });
    expect(recording.channels.slice(1).map(({ name, unit, samples }) => [name, unit, samples[0]])).toEqual([
      ["EMG", "mV", 0.3],
      ["belt", "", 7],
    ]);
  });

  it("unnamed columns at the end are no columns while they are blank", () => {
    const text = "up [N],right [N],,\n5,6,,\n7,8";
    expect(force(readCsv(text, { sampleRate: 1 }), "right")).toEqual([6, 8]);
    expect(refusal("up [N],right [N],,\n5,6,,1", { sampleRate: 1 }).where).toBe("line 2");
  });

  it.each<[string, string, ReadCsvOptions, string]>([
    ["an unknown name", "up [N],foward [N]\n1,2", {}, 'column 2 "foward [N]"'],
    ["a word for a table", "hello\nworld", {}, 'column 1 "hello"'],
    ["numbers for names", "1,2\n3,4", {}, "line 1"],
    ["the same column twice", "up [N],UP [N]\n1,2", {}, 'column 2 "UP [N]"'],
    ["two columns of one direction", "up [N],Fz [N]\n1,2", { axes: { z: "up" } }, 'column 2 "Fz [N]"'],
    ["a nameless column", "up [N],,right [N]\n1,2,3", {}, "column 2"],
  ])("refuses %s as unreadable", (_, text, options, place) => {
    const { code, message } = refusal(text, { sampleRate: 1, ...options });
    expect(code).toBe("unreadable-file");
    expect(message).toContain(place);
  });

  it.each<[string, string, ReadCsvOptions]>([
    ["missing-channel", "time [s],right [N]\n0,1\n1,2", {}],
    ["missing-channel", "Fz [N]\n1", { axes: { z: "forward" } }],
    ["missing-channel", Array.from({ length: 40 }, (_, i) => `other:${i}`).join(), {}],
    ["unknown-unit", "up\n1", {}],
    ["unknown-unit", "up [stone]\n1", {}],
    ["unknown-unit", "up\n1", { units: { up: "constructor" } }],
    ["unit-mismatch", "up [kg]\n1", {}],
    ["unit-mismatch", "up [N],cop_right [N]\n1,2", {}],
    ["unknown-axes", "Fz [N]\n1", {}],
    ["unknown-axes", "Fz [N],Fy [N]\n1,2", { axes: { z: "up" } }],
    ["unknown-axes", "Fz [N]\n1", { axes: { z: "up", y: "down" } }],
    ["unknown-axes", "Fz [N]\n1", { axes: { z: "north" as "up" } }],
    ["out-of-range", "up [N]\n1", { sampleRate: 0 }],
    ["not-finite", "up [N]\n1", { sampleRate: Number.NaN }],
    ["out-of-range", "up [N]\n1", { mass: 700 }],
    ["out-of-range", "up [N]\n1", { speed: 20 }],
    ["out-of-range", "up [N]\n1", { surface: "track" as "belt" }],
    ["out-of-range", "up [N]\n1", { decimal: ";" as "," }],
    ["out-of-range", "up [N]\n1", { forceOn: "plate" as "ground" }],
    ["wrong-type", "up [N]\n1", { ignore: "Time" as unknown as [] }],
    ["wrong-type", "up [N]\n1", { units: { up: 5 } as unknown as Record<string, string> }],
    ["wrong-type", "up [N]\n1", { columns: null as unknown as Record<string, string> }],
    ["wrong-type", new ArrayBuffer(3) as unknown as string, {}],
    ["unknown-option", "up [N]\n1", { rate: 5 } as ReadCsvOptions],
    ["missing-value", "up [N]\n1", { sampleRate: null }],
  ])("%s: %j with %j", (code, text, options) => {
    expect(refusal(text, { sampleRate: 1, ...options }).code).toBe(code);
  });
});

describe("cells", () => {
  it("blank cells are gaps: normal beside the force, a caution in it", () => {
    const recording = readCsv("time [s],up [N],cop_right [m]\n0,1,\n1, ,0.5\n2,,0.6");
    expect(force(recording, "up")).toEqual([1, Number.NaN, Number.NaN]);
    expect(cop(recording, "right")).toEqual([Number.NaN, 0.5, 0.6]);
    expect(recording.cautions).toEqual([
      expect.objectContaining({ code: "gap", where: "up", values: { count: 2, line: 3, column: 2 } }),
    ]);
  });

  it.each(["1", " 1 ", "+1.0", "1.", ".1e1", "1E0", "10e-1", "01"])("reads %j as 1", (cell) => {
    expect(force(readCsv(`time [s];up [N]\n0;${cell}\n1;1`, { decimal: "." }), "up")[0]).toBe(1);
  });

  it.each([
    "x",
    "NaN1",
    "Infinity",
    "-inf",
    "1e999",
    "0x1F",
    " 0x1F",
    "0b1",
    "1_000",
    "--1",
    "1 2",
    "−1",
    "1,5",
    "1.2.3",
    "e5",
    ".",
  ])("refuses %j, naming line and column", (cell) => {
    const { code, where, message } = refusal(`# a comment\n\ntime [s]\tup [N]\n0\t1\n1\t${cell}`, {
      decimal: ".",
    });
    expect(code).toBe("unreadable-file");
    expect(where).toBe('line 5, column 2 "up [N]"');
    expect(message).toContain("finite number");
    expect(message).not.toContain("\n");
  });

  it("decimal commas are read where the delimiter is none and a cell proves them", () => {
    expect(force(readCsv("time [s];up [N]\n0;1,613\n0,5;2,25"), "up")).toEqual([1.613, 2.25]);
    expect(force(readCsv("time [s];up [N]\n0;1,613\n1;2,250", { decimal: "," }), "up")).toEqual([
      1.613, 2.25,
    ]);
    expect(force(readCsv('time [s],up [N]\n0,"1,5"\n1,2', { decimal: "," }), "up")).toEqual([1.5, 2]);
  });

  it.each<[string, string, ReadCsvOptions]>([
    ["thousands or decimals", "time [s];up [N]\n0;1,613\n1;2,250", {}],
    ["points and commas", "time [s];up [N]\n0;1.5\n1;2,25", {}],
    ["points behind a blank and commas", "time [s];up [N]\n0; 1.5\n1;2,25", {}],
    ["commas and then points", "time [s];up [N]\n0;2,25\n1;1.5", {}],
    ["points where commas are stated", "time [s];up [N]\n0;1.5\n1;2,25", { decimal: "," }],
    ["two commas", "time [s];up [N]\n0;1,613,000\n1;2,25", {}],
    ["a quoted comma between commas", 'time [s],up [N]\n0,"1,5"\n1,2', {}],
  ])("refuses %s", (_, text, options) => {
    expect(refusal(text, options).code).toBe("unreadable-file");
  });

  it("quoted cells, line ends in three systems, a byte order mark, blank lines at the end", () => {
    for (const end of ["\n", "\r\n", "\r"]) {
      const text = `\uFEFF${['"time [s]","up [N]"', '"0","1"', '"1","2"', "", ""].join(end)}`;
      expect(force(readCsv(text), "up")).toEqual([1, 2]);
    }
  });

  it("counts one cell and one blank cell in the singular", () => {
    expect(refusal("time [s],up [N]\n0").message).toContain(
      "line 2 has 1 cell and the header names 2 columns",
    );
    expect(refusal("up [N]\n1,2", { sampleRate: 1 }).message).toContain("names 1 column;");
    expect(readCsv("time [s],up [N]\n0,1\n1,").cautions[0]?.message).toContain("has 1 blank cell of 2");
    expect(refusal("up [N]\n1").message).toContain("has 1 row and");
  });

  it.each<[string, string, string | undefined]>([
    ["an empty text", "", undefined],
    ["blank lines", "\n \n\n", undefined],
    ["comments alone", "# mass: 70 kg\n# end", undefined],
    ["a header alone", "time [s],up [N]\n", undefined],
    ["a short row", "time [s],up [N]\n0,1\n1", "line 3"],
    ["a long row", "time [s],up [N]\n0,1,2", "line 2"],
    ["a blank line between rows", "time [s],up [N]\n0,1\n\n1,2", "line 3"],
    ["an open quotation mark", 'time [s],up [N]\n0,"1\n1,2', "line 2"],
    ["a quotation mark inside a cell", 'time [s],up [N]\n0,"1"2\n1,2', "line 2"],
    ["a row without its time", "time [s],up [N]\n0,1\n,2\n2,3", 'line 3, column 1 "time [s]"'],
  ])("refuses %s", (_, text, where) => {
    expect(refusal(text)).toMatchObject({ code: "unreadable-file", where });
  });

  describe("a file of several pieces of the parser", () => {
    const rows = Array.from({ length: 200_000 }, (_, i) => `${i / 2},${i % 700}.25`);
    const header = 'time [s],"up\n[N]"';

    it("is read as one", () => {
      const text = [header, ...rows].join("\n");
      expect(text.length).toBeGreaterThan(2 * 1_048_576);
      const up = force(readCsv(text), "up");
      expect(up).toHaveLength(200_000);
      expect(up.findIndex((value, i) => value !== (i % 700) + 0.25)).toBe(-1);
    });

    it("is named by its lines, behind comments and cells of two lines", () => {
      const marked = [...rows.slice(0, 30_000), "# half way", ...rows.slice(30_000, 190_000), "95000,oops"];
      const text = [header, ...marked].join("\n");
      expect(refusal(text).where).toBe('line 190004, column 2 "up\\n[N]"');
    });
  });
});

describe("options", () => {
  it("stand for what the file does not say", () => {
    const stated = {
      mass: 70,
      height: 1.78,
      speed: 3.3,
      surface: "belt",
      grade: 0.05,
      firstFoot: "left",
    } as const;
    const { subject, speed, surface, grade, firstFoot, cautions } = readCsv("up [N]\n1", {
      ...stated,
      sampleRate: 1,
    });
    expect({ ...subject, speed, surface, grade, firstFoot }).toEqual(stated);
    expect(cautions).toEqual([]);
  });

  it("count before the file's own comment, and say so where they differ", () => {
    const text = "# mass: 70 kg\n# speed: 3 m/s\nup [N]\n1";
    const recording = readCsv(text, { mass: 72, speed: 3, sampleRate: 1 });
    expect(recording.subject.mass).toBe(72);
    expect(recording.cautions).toEqual([
      expect.objectContaining({ code: "option-over-file", where: "mass", values: { file: 70, option: 72 } }),
    ]);
  });

  it("have a default each", () => {
    expect(readCsv("# sample rate: 5 Hz\nup [N]\n1", READ_CSV_DEFAULTS)).toEqual(
      readCsv("# sample rate: 5 Hz\nup [N]\n1"),
    );
  });
});
