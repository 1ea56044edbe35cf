import { existsSync } from "node:fs";
import { defineConfig, type Format, type Options } from "tsup";

/**
 * Files whose packages go into the build, so that a user installs none of them: mathjs costs a second when it is
 * imported whole, and the plot packages are ECMAScript modules only, which `require` cannot load on Node 20.
 */
const withPackages = ["units/parse/mathUnits", "report/plot"].filter((path) => existsSync(`src/${path}.ts`));

/** What both ways have in common. The files read as the source does, so there are no source maps. */
function common(format: Format): Options {
  return {
    format,
    outDir: `dist/${format}`,
    target: "es2022",
    // Only for `require`, so that the names of a module's exports stand where Node's reader looks for them.
    platform: format === "cjs" ? "node" : "neutral",
    splitting: false,
    sourcemap: false,
    shims: false,
    silent: true,
    removeNodeProtocol: false,
    outExtension: () => ({ js: ".js" }),
  };
}

/** One output file a source file: a module exists once, whichever entry reaches it, and bundlers drop what is unused. */
function tree(format: Format): Options {
  return {
    ...common(format),
    bundle: false,
    entry: [
      "src/**/*.ts",
      ...withPackages.map((path) => `!src/${path}.ts`),
      ...(format === "cjs" ? ["!src/cli/**"] : []),
    ],
  };
}

/** A file with the used part of its packages inside. `metafile` tells which, for the notices of their licences. */
function filled(format: Format): Options {
  return {
    ...common(format),
    entry: Object.fromEntries(withPackages.map((path) => [path, `src/${path}.ts`])),
    treeshake: false,
    metafile: true,
    esbuildOptions: (options) => {
      options.mainFields = ["module", "main"];
      options.legalComments = "none";
      options.charset = "utf8";
    },
  };
}

const formats: readonly Format[] = ["esm", "cjs"];
export default defineConfig(
  formats.flatMap((format) => (withPackages.length > 0 ? [tree(format), filled(format)] : [tree(format)])),
);
