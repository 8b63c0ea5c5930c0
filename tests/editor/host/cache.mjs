/**
 * A cache folder filled once, whoever comes first. Several processes may ask at the same time; one builds, the
 * others wait for it. A folder is complete if it exists, because it is built beside its place and renamed into it.
 */
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";

/**
 * Makes sure `folder` exists, calling `build(temporaryFolder)` if it does not.
 * Rejects with what `build` rejects with; nothing half-made is left behind.
 */
export async function fillOnce(folder, build) {
  if (existsSync(folder)) return folder;
  mkdirSync(dirname(folder), { recursive: true });
  const release = await lock(`${folder}.lock`);
  try {
    if (existsSync(folder)) return folder;
    removeAbandoned(folder);
    const partial = `${folder}.partial-${process.pid}`;
    mkdirSync(partial, { recursive: true });
    try {
      await build(partial);
      if (!existsSync(folder)) renameSync(partial, folder);
    } finally {
      rmSync(partial, { recursive: true, force: true });
    }
    return folder;
  } finally {
    release();
  }
}

/** What builders that were killed have left behind. */
function removeAbandoned(folder) {
  const parent = dirname(folder);
  const prefix = `${basename(folder)}.partial-`;
  for (const entry of readdirSync(parent)) {
    if (!entry.startsWith(prefix) || isAlive(Number(entry.slice(prefix.length)))) continue;
    rmSync(join(parent, entry), { recursive: true, force: true });
  }
}

/** Takes the lock file, waiting while a living process holds it. A lock whose owner has died is taken over. */
async function lock(file) {
  for (;;) {
    try {
      writeFileSync(file, String(process.pid), { flag: "wx" });
      return () => rmSync(file, { force: true });
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
    }
    await sleep(500);
    const owner = readOwner(file);
    if (owner !== undefined && !isAlive(owner)) rmSync(file, { force: true });
  }
}

function readOwner(file) {
  try {
    const owner = Number(readFileSync(file, "utf8"));
    return owner > 0 ? owner : undefined;
  } catch {
    return undefined;
  }
}

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}
