import { expect, it } from "vitest";
import { type C3dFile, type C3dParameter, writeC3d } from "../../../src/io/index.js";
import { sampleFile } from "./sampleFile.js";

const refused = (code: string, message: RegExp, file: C3dFile, options = {}) =>
  expect(() => writeC3d(file, options)).toThrow(
    expect.objectContaining({ code, message: expect.stringMatching(message) }),
  );
const withParameter = (parameter: Partial<C3dParameter>) => ({
  ...sampleFile,
  groups: [
    {
      id: 1,
      name: "MORE",
      description: "",
      locked: false,
      parameters: [
        {
          name: "A",
          description: "",
          locked: false,
          type: "integer",
          dimensions: [1],
          data: [1],
          ...parameter,
        } as C3dParameter,
      ],
    },
  ],
});

it("refuses what the form has no room for", () => {
  const [first, ...rest] = sampleFile.analogue.channels as [C3dFile["analogue"]["channels"][0]];
  const channel = (change: object) => ({
    ...sampleFile,
    analogue: { ...sampleFile.analogue, channels: [{ ...first, ...change }, ...rest] },
  });
  const huge = first.samples.map((value) => value * 1e40);
  refused("out-of-range", /16 bits cannot hold/, channel({ samples: huge }));
  refused("out-of-range", /32 bits/, channel({ samples: huge }), { storage: "float" });
  const wide = first.samples.map((value, i) => (i === 3 ? 2e38 : value));
  expect(() => writeC3d(channel({ samples: wide, scale: 2 }), { storage: "float" })).not.toThrow();
  refused("out-of-range", /frame 2 holds a number/, channel({ samples: wide, scale: 2 }), {
    storage: "float",
    processor: "dec",
  });
  refused("unequal-lengths", /"Fz" has 3 values; 21/, channel({ samples: new Float64Array(3) }));
  refused("unequal-lengths", /point "RHEE"/, { ...sampleFile, frames: 6 });
  refused("out-of-range", /its name takes 0 bytes/, withParameter({ name: "" }));
  refused("out-of-range", /its description takes 256 bytes/, withParameter({ description: "a".repeat(256) }));
  refused(
    "out-of-range",
    /texts takes 300 bytes/,
    withParameter({ type: "character", dimensions: [1], data: ["b".repeat(300)] }),
  );
  refused("out-of-range", /MORE:A holds 70000/, withParameter({ data: [70000] }));
  refused("out-of-range", /MORE:A holds 1e\+39/, withParameter({ type: "float", data: [1e39] }));
  refused("unequal-lengths", /MORE:A is 2 and holds 1 values/, withParameter({ dimensions: [2] }));
  refused(
    "out-of-range",
    /a dimension is a whole number/,
    withParameter({ dimensions: [256], data: new Array(256).fill(0) }),
  );
  refused("out-of-range", /group MORE has the id 0/, {
    ...sampleFile,
    groups: [{ ...(sampleFile.groups[1] as C3dFile["groups"][0]), id: 0 }],
  });
  const many = Array.from(
    { length: 300 },
    (_, k) =>
      ({
        name: `P${k}`,
        description: "",
        locked: false,
        type: "float",
        dimensions: [250],
        data: new Array(250).fill(0),
      }) as C3dParameter,
  );
  refused("out-of-range", /the format has room for 255/, {
    ...sampleFile,
    groups: [{ id: 1, name: "MORE", description: "", locked: false, parameters: many }],
  });
  refused("out-of-range", /room for 18/, {
    ...sampleFile,
    header: { ...sampleFile.header, events: new Array(19).fill({ label: "", time: 0, displayFlag: 0 }) },
  });
  refused("out-of-range", /there are 4/, {
    ...sampleFile,
    header: { ...sampleFile.header, events: [{ label: "strike", time: 0, displayFlag: 0 }] },
  });
  refused("out-of-range", /arm/, sampleFile, { processor: "arm" });
  refused("unknown-option", /order/, sampleFile, { order: "arm" });
});
