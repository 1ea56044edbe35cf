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
  filters: ["fft.js"],
  statistics: ["pure-rand"],
  io: ["papaparse"],
  exchange: ["papaparse"],
  cli: ["commander", "papaparse", "yocto-spinner"],
};

/**
 * Packages that only one file may import. The build puts them into that file, so it imports nothing of `src`: what it
 * imported would be there twice.
 */
const builtIn = {
  "src/units/parse/mathUnits.ts": ["mathjs"],
  "src/report/plot.ts": ["d3-scale", "d3-shape"],
};

/** What only the command line may touch. */
const node = ["^node:", "^(fs|path|process|os|url|util|tty|readline|stream|timers)(/|$)"];

const exactly = (path) => `^${path.replaceAll(".", "\\.")}$`;
const installed = (names) => names.map((name) => `^node_modules/(@types/)?${name}/`);
const builtInFiles = Object.keys(builtIn).map(exactly);

const layers = order.flatMap((folder, place) => [
  {
    name: `${folder}-imports-only-from-above`,
    severity: "error",
    from: { path: `^src/${folder}/`, pathNot: builtInFiles },
    to: {
      pathNot: [
        ...order.slice(0, place + 1).map((name) => `^src/${name}/`),
        ...installed(packages[folder] ?? []),
        ...(folder === "cli" ? node : []),
      ],
    },
  },
  {
    name: `${folder}-is-entered-through-its-index`,
    severity: "error",
    from: { path: "^src/([^/]+)/" },
    to: {
      path: `^src/${folder}/`,
      pathNot: ["^src/$1/", `^src/${folder}/index\\.ts$`, "^src/units/parse/index\\.ts$"],
    },
  },
]);

module.exports = {
  forbidden: [
    ...layers,
    ...Object.entries(builtIn).map(([path, names]) => ({
      name: "a-file-with-packages-built-in-imports-nothing-else",
      severity: "error",
      from: { path: exactly(path) },
      to: { pathNot: installed(names) },
    })),
    {
      name: "no-cycles",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "every-folder-has-a-place",
      severity: "error",
      from: { path: "^src/[^/]+/", pathNot: order.map((folder) => `^src/${folder}/`) },
      to: {},
    },
    {
      name: "only-the-root-stands-beside-the-folders",
      severity: "error",
      from: { path: "^src/[^/]+$", pathNot: "^src/index\\.ts$" },
      to: {},
    },
    {
      name: "the-root-reaches-only-its-own-list",
      severity: "error",
      from: { path: "^src/index\\.ts$" },
      to: {
        pathNot:
          "^src/(units|filters|statistics|recording|force|events|models|metrics|trial|compare)/index\\.ts$",
      },
    },
    {
      name: "no-reading-units-behind-the-root",
      severity: "error",
      from: { path: "^src/(?!units/parse/|cli/)" },
      to: { path: "^src/units/parse/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "types", "default"],
    },
  },
};
