/** Starts and stops the VS Code server of the hosted editor, and writes the addresses its page is opened with. */
import { spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import { createWriteStream, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureHost } from "./install.mjs";

/** Settings of every hosted editor: nothing that asks, greets or reaches out. */
const quietSettings = {
  "workbench.startupEditor": "none",
  "workbench.tips.enabled": false,
  "chat.commandCenter.enabled": false,
  "extensions.autoUpdate": false,
  "extensions.autoCheckUpdates": false,
  "extensions.ignoreRecommendations": true,
  "update.mode": "none",
  "telemetry.telemetryLevel": "off",
  "git.enabled": false,
};

/**
 * Starts a server on a free port of this machine alone, behind a random token.
 * `dataFolder` keeps its state and its log, `env` is seen by the extension host, `testDriver` lets a page report test
 * results, and `settings` are added to the machine's. Answers the server as `{ port, origin, address, stop, log }`,
 * where `address` writes a page's URL and `stop` ends the server and all it started.
 */
export async function startServer({ dataFolder, env = {}, testDriver = false, settings = {} }) {
  const { server } = await ensureHost();
  const machine = join(dataFolder, "data", "Machine");
  mkdirSync(machine, { recursive: true });
  writeFileSync(join(machine, "settings.json"), JSON.stringify({ ...quietSettings, ...settings }, null, 2));
  const token = randomBytes(16).toString("hex");
  const log = join(dataFolder, "server.log");
  const args = [
    server,
    "--host", "127.0.0.1",
    "--port", "0",
    "--connection-token", token,
    "--accept-server-license-terms",
    "--disable-workspace-trust",
    "--disable-update-check",
    "--telemetry-level", "off",
    "--server-data-dir", dataFolder,
    // If this process is killed outright, the server ends by itself some minutes after its last page has gone.
    "--enable-remote-auto-shutdown",
    ...(testDriver ? ["--enable-smoke-test-driver"] : []),
  ];
  const child = spawn(process.execPath, args, {
    // Without a gallery it asks nobody on the network about extensions.
    env: { ...process.env, EXTENSIONS_GALLERY: JSON.stringify({ serviceUrl: "" }), ...env },
    stdio: ["ignore", "pipe", "pipe"],
    // A group of its own, so that the extension hosts end with it.
    detached: process.platform !== "win32",
  });
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const sink = createWriteStream(log);
  child.stderr.pipe(sink, { end: false });
  const port = await listeningPort(child, sink, log);
  const origin = `127.0.0.1:${port}`;
  return {
    port,
    origin,
    log,
    address: (page) => pageAddress({ origin, token, ...page }),
    stop: async () => {
      end(child);
      await Promise.race([ended, new Promise((resolve) => setTimeout(resolve, 5000).unref())]);
      sink.end();
    },
  };
}

function listeningPort(child, sink, log) {
  return new Promise((resolve, reject) => {
    let seen = "";
    const timer = setTimeout(() => fail("did not start within 60 s"), 60_000);
    const endedEarly = (code) => fail(`ended with code ${code}`);
    const fail = (why) => {
      clearTimeout(timer);
      end(child);
      reject(new Error(`The VS Code server ${why}. Its log is ${log}\n${seen}`));
    };
    child.once("error", (error) => fail(error.message));
    child.once("exit", endedEarly);
    child.stdout.on("data", (chunk) => {
      sink.write(chunk);
      if (seen.length < 20_000) seen += chunk;
      const match = /listening on (\d+)/.exec(seen);
      if (!match) return;
      clearTimeout(timer);
      child.off("exit", endedEarly);
      resolve(Number(match[1]));
    });
  });
}

/** Ends the server's whole process group, by the id of the process started here. */
function end(child) {
  if (child.exitCode !== null || child.signalCode !== null) return;
  try {
    if (process.platform === "win32") child.kill();
    else process.kill(-child.pid, "SIGTERM");
  } catch (error) {
    if (error.code !== "ESRCH") throw error;
  }
}

/**
 * The URL of a page on `folder` (absolute path). `extensions` are folders of extensions under development, `tests` is
 * a test module, `file` is opened at the start.
 */
function pageAddress({ origin, token, folder, extensions = [], tests, file }) {
  const remote = (path) => `vscode-remote://${origin}${pathToFileURL(path).pathname}`;
  const payload = [["skipWelcome", "true"], ...extensions.map((path) => ["extensionDevelopmentPath", remote(path)])];
  if (tests) payload.push(["extensionTestsPath", remote(tests)]);
  if (file) payload.push(["openFile", remote(file)]);
  const query = new URLSearchParams({ tkn: token, payload: JSON.stringify(payload) });
  if (folder) query.set("folder", decodeURIComponent(pathToFileURL(folder).pathname));
  return `http://${origin}/?${query}`;
}
