import type { C3dFile, C3dParameter } from "../../../src/io/index.js";

/** What becomes of a parameter; `null` takes it away. */
export type Change = Partial<C3dParameter> | null;

/** A file with parameters changed, added or, by `null`, taken away; names are `GROUP:NAME`. */
export const changed = (file: C3dFile, changes: Readonly<Record<string, Change>>): C3dFile => {
  let { groups } = file;
  for (const [path, change] of Object.entries(changes)) {
    const [wanted, name] = path.split(":") as [string, string];
    if (!groups.some((group) => group.name === wanted)) {
      groups = [
        ...groups,
        { id: groups.length + 20, name: wanted, description: "", locked: false, parameters: [] },
      ];
    }
    groups = groups.map((group) => {
      if (group.name !== wanted) return group;
      const old = group.parameters.find((one) => one.name === name);
      const base = old ?? { name, description: "", locked: false, dimensions: [1], type: "float", data: [] };
      const parameters = group.parameters.filter((one) => one !== old);
      return {
        ...group,
        parameters: change === null ? parameters : [...parameters, { ...base, ...change } as C3dParameter],
      };
    });
  }
  return { ...file, groups };
};

/** Texts side by side. */
export const units = (...data: string[]): Change => ({
  type: "character",
  data,
  dimensions: [8, data.length],
});
