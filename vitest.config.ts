import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/editor/**", "node_modules/**", "tests/output/**"],
    setupFiles: ["tests/setup/property-seed.ts"],
    testTimeout: 60_000,
  },
});
