/**
 * The order of the rooms. A file imports from its own folder, from folders above it in this list, and from the
 * packages named for its folder. Denied by default: a new folder must take a place here before anything can use it.
 */
const order = [
  "units",
  "filters",
  "statistics",
  "recording",
  "io",
  "force",
  "events",
  "motion",
  "models",
  "metrics",
  "trial",
  "compare",
  "exchange",
  "synthetic",
  "report",
  "cli",
];

/** Packages a folder may import; everything else from node_modules is denied. */
const packages = {
  units: ["mathjs"],
  statistics: ["pure-rand"],
  io: ["papaparse"],
  exchange: ["papaparse"],
  report: ["d3-scale", "d3-shape"],
  cli: ["commander"],
};

const layers = order.flatMap((folder, place) => {
  const allowed = order.slice(0, place + 1).map((name) => `^src/${name}/`);
  const own = `^src/${folder}/`;
  const allowedPackages = (packages[folder] ?? []).map((name) => `^node_modules/(@types/)?${name}/`);
  return [
    {
      name: `${folder}-imports-only-from-above`,
      severity: "error",
      from: { path: own },
      to: {
        pathNot: [...allowed, ...allowedPackages, ...(folder === "cli" ? ["^node:", "^(fs|path|process|os|url|util|tty)(/|$)"] : [])],
      },
    },
    {
      name: `${folder}-is-entered-through-its-index`,
      severity: "error",
      from: { path: "^src/([^/]+)/" },
      to: {
        path: own,
        pathNot: ["^src/$1/", `^src/${folder}/index\\.ts$`, "^src/units/parse/index\\.ts$"],
      },
    },
  ];
});

module.exports = {
  forbidden: [
    ...layers,
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    {
      name: "every-folder-has-a-place",
      severity: "error",
      from: { path: "^src/[^/]+/", pathNot: order.map((folder) => `^src/${folder}/`) },
      to: {},
    },
    {
      name: "mathjs-stays-in-units-parse",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/units/parse/" },
      to: { path: "^node_modules/mathjs/" },
    },
    {
      name: "the-root-reaches-only-its-own-list",
      severity: "error",
      from: { path: "^src/index\\.ts$" },
      to: { pathNot: "^src/(units|filters|statistics|recording|force|events|models|metrics|trial|compare)/index\\.ts$" },
    },
    {
      name: "no-reading-units-behind-the-root",
      severity: "error",
      from: { path: "^src/(?!units/parse|cli)" },
      to: { path: "^src/units/parse/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.cli.json" },
    enhancedResolveOptions: { extensionAlias: undefined, exportsFields: ["exports"], conditionNames: ["import", "types"] },
  },
};
