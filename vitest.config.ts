import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/consumers/**", "node_modules/**"],
    typecheck: { enabled: true, include: ["tests/**/*.test-d.ts"], tsconfig: "tsconfig.tests.json" },
    // Simulations take half a minute alone, and several times that beside other checks and with coverage.
    testTimeout: 300_000,
    // No test changes what another sees; loading the library anew for each of 190 files cost as much as the tests.
    isolate: false,
    // Two, as there are checks at a time: the tests are the longest of them.
    maxWorkers: 2,
    coverage: {
      provider: "v8",
      include: ["src/**"],
      exclude: ["src/**/index.ts"],
      reporter: ["text-summary", "json-summary"],
    },
  },
});
