/**
 * Waits until `probe` answers something other than undefined, false or null, and answers that.
 * Throws after `timeout` (ms), naming what was waited for.
 */
export async function waitUntil<T>(
  what: string,
  probe: () => T | undefined | null | false | Thenable<T | undefined | null | false>,
  timeout = 15_000,
): Promise<T> {
  const end = Date.now() + timeout;
  for (;;) {
    const value = await probe();
    if (value !== undefined && value !== null && value !== false) return value;
    if (Date.now() > end) throw new Error(`waited ${timeout} ms in vain until ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
