/** What the units that files write mean. */
export interface WrittenUnit {
  readonly dimension: "force" | "moment" | "length" | "voltage";
  readonly toSi: number;
}

/** By their letters alone, small; names are often cut to four characters. */
const UNITS: Readonly<Record<string, WrittenUnit>> = {
  n: { dimension: "force", toSi: 1 },
  nt: { dimension: "force", toSi: 1 },
  newt: { dimension: "force", toSi: 1 },
  newton: { dimension: "force", toSi: 1 },
  newtons: { dimension: "force", toSi: 1 },
  kn: { dimension: "force", toSi: 1000 },
  lbf: { dimension: "force", toSi: 4.4482216152605 },
  nm: { dimension: "moment", toSi: 1 },
  ntm: { dimension: "moment", toSi: 1 },
  newtonm: { dimension: "moment", toSi: 1 },
  newtonmeter: { dimension: "moment", toSi: 1 },
  newtonmeters: { dimension: "moment", toSi: 1 },
  newtonmetre: { dimension: "moment", toSi: 1 },
  newtonmetres: { dimension: "moment", toSi: 1 },
  ncm: { dimension: "moment", toSi: 0.01 },
  nmm: { dimension: "moment", toSi: 0.001 },
  ntmm: { dimension: "moment", toSi: 0.001 },
  newtonmm: { dimension: "moment", toSi: 0.001 },
  newtonmillimeter: { dimension: "moment", toSi: 0.001 },
  newtonmillimeters: { dimension: "moment", toSi: 0.001 },
  newtonmillimetre: { dimension: "moment", toSi: 0.001 },
  newtonmillimetres: { dimension: "moment", toSi: 0.001 },
  v: { dimension: "voltage", toSi: 1 },
  volt: { dimension: "voltage", toSi: 1 },
  volts: { dimension: "voltage", toSi: 1 },
  mv: { dimension: "voltage", toSi: 1e-3 },
  millivolt: { dimension: "voltage", toSi: 1e-3 },
  millivolts: { dimension: "voltage", toSi: 1e-3 },
  uv: { dimension: "voltage", toSi: 1e-6 },
  µv: { dimension: "voltage", toSi: 1e-6 },
  microvolt: { dimension: "voltage", toSi: 1e-6 },
  microvolts: { dimension: "voltage", toSi: 1e-6 },
  mm: { dimension: "length", toSi: 0.001 },
  mill: { dimension: "length", toSi: 0.001 },
  millimeter: { dimension: "length", toSi: 0.001 },
  millimeters: { dimension: "length", toSi: 0.001 },
  millimetre: { dimension: "length", toSi: 0.001 },
  millimetres: { dimension: "length", toSi: 0.001 },
  cm: { dimension: "length", toSi: 0.01 },
  cent: { dimension: "length", toSi: 0.01 },
  centimeter: { dimension: "length", toSi: 0.01 },
  centimeters: { dimension: "length", toSi: 0.01 },
  centimetre: { dimension: "length", toSi: 0.01 },
  centimetres: { dimension: "length", toSi: 0.01 },
  m: { dimension: "length", toSi: 1 },
  mete: { dimension: "length", toSi: 1 },
  metr: { dimension: "length", toSi: 1 },
  meter: { dimension: "length", toSi: 1 },
  meters: { dimension: "length", toSi: 1 },
  metre: { dimension: "length", toSi: 1 },
  metres: { dimension: "length", toSi: 1 },
  in: { dimension: "length", toSi: 0.0254 },
  inch: { dimension: "length", toSi: 0.0254 },
  inches: { dimension: "length", toSi: 0.0254 },
  ft: { dimension: "length", toSi: 0.3048 },
  feet: { dimension: "length", toSi: 0.3048 },
};

/** Reads a unit as files write it: "Nmm", "N.mm", "nt", "Newtons", "mete"; `null` where it is none of these. */
export function unitOf(written: string): WrittenUnit | null {
  const letters = written
    .toLowerCase()
    .replace(/[\s.*·⋅_()[\]-]/g, "")
    .replace("μ", "µ");
  return Object.hasOwn(UNITS, letters) ? (UNITS[letters] as WrittenUnit) : null;
}
