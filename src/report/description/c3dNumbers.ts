import type { C3dFile } from "../../io/index.js";

/** Numbers of a parameter of a C3D file and of its continuations (NAME2, NAME3, …); none where it is absent. */
export function c3dNumbers(file: C3dFile, group: string, name: string): readonly number[] {
  const parameters = file.groups
    .filter((one) => one.name.toUpperCase() === group)
    .flatMap((one) => one.parameters);
  const numbers: number[] = [];
  for (let part = 1; ; part++) {
    const wanted = part === 1 ? name : `${name}${part}`;
    const found = parameters.find((parameter) => parameter.name.toUpperCase() === wanted);
    if (found === undefined || found.type === "character") return numbers;
    numbers.push(...found.data);
  }
}
