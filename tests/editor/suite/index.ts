/** Entry of the editor tests inside the extension host: runs every registered test and reports. */
import { writeFileSync } from "node:fs";
import { allTests } from "./registry.js";

/** What the runner reads back from the file named by ROOTFAST_EDITOR_RESULTS. */
export interface EditorResults {
  readonly passed: number;
  readonly failed: number;
}

const longestTest = 60_000;

/** Called by VS Code. Rejects if a test failed or if there is none, which makes VS Code exit with code 1. */
export async function run(): Promise<void> {
  let passed = 0;
  let failed = 0;
  for (const { name, body } of allTests()) {
    const started = Date.now();
    try {
      await withinTime(body());
      passed += 1;
      console.log(`  passed  ${name} (${Date.now() - started} ms)`);
    } catch (error) {
      failed += 1;
      const reason = error instanceof Error ? (error.stack ?? error.message) : String(error);
      console.log(`  FAILED  ${name}\n${reason.replace(/^/gm, "          ")}`);
    }
  }
  const results: EditorResults = { passed, failed };
  const file = process.env.ROOTFAST_EDITOR_RESULTS;
  if (file) writeFileSync(file, JSON.stringify(results));
  if (failed > 0) throw new Error(`${failed} of ${passed + failed} editor tests failed`);
  if (passed === 0) throw new Error("no editor test was registered");
}

async function withinTime(work: Promise<void>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`not done after ${longestTest / 1000} s`)), longestTest);
  });
  try {
    await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}
