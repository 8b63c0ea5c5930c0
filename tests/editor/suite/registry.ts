/** The editor tests' own small registry: a test is a name and an async function that throws when it fails. */

/** One registered test. */
export interface EditorTest {
  readonly name: string;
  readonly body: () => Promise<void>;
}

const registered: EditorTest[] = [];

/** Registers a test; its name is a sentence. Tests run one after the other, in the order of files and lines. */
export function test(name: string, body: () => Promise<void>): void {
  registered.push({ name, body });
}

/** All tests registered so far. */
export function allTests(): readonly EditorTest[] {
  return registered;
}
