import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/editor/**", "node_modules/**", "tests/output/**"],
    setupFiles: ["tests/setup/property-seed.ts"],
    testTimeout: 60_000,
    // No test changes what a module holds, so that files share the modules they read: most of the time went into reading them anew.
    isolate: false,
  },
});
