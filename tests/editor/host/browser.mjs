/**
 * Finds a Chromium and starts it without a window. In this order: the one named by ROOTFAST_CHROMIUM, one installed
 * on the machine, and the one that npm's @sparticuz/chromium carries (Linux on x64), with the system libraries and
 * fonts it needs beside it, so that a bare machine will do.
 */
import { createReadStream, createWriteStream, existsSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { delimiter, join } from "node:path";
import { pipeline } from "node:stream/promises";
import { createBrotliDecompress } from "node:zlib";
import { fillOnce } from "./cache.mjs";
import { ensureHost, repository } from "./install.mjs";

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * Starts a browser and answers playwright's `Browser`. Rejects with one message that lists what was tried.
 * The playwright package is the extension's own development dependency.
 */
export async function launchBrowser() {
  const { chromium } = createRequire(join(repository, "package.json"))("playwright-core");
  const start = ({ executablePath, env }) =>
    chromium.launch({ executablePath, headless: true, args: flags, env: { ...process.env, ...env } });

  const named = process.env.ROOTFAST_CHROMIUM;
  if (named) return start({ executablePath: named });

  const failures = [];
  for (const executablePath of installedBrowsers()) {
    try {
      return await start({ executablePath });
    } catch (error) {
      failures.push(`${executablePath}: ${error.message.split("\n")[0]}`);
    }
  }
  if (process.platform === "linux" && process.arch === "x64") return start(await packagedBrowser());
  throw new Error(
    ["No Chromium was found. Install one, or name it in ROOTFAST_CHROMIUM.", ...failures].join("\n  "),
  );
}

function installedBrowsers() {
  const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge"];
  const suffix = process.platform === "win32" ? ".exe" : "";
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, name + suffix)));
  const applications = [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  ];
  return [...onPath, ...(process.platform === "darwin" ? applications : [])].filter((file) => existsSync(file));
}

/** Unpacks the packaged browser once, and says how to start it. */
async function packagedBrowser() {
  const { folder, modules } = await ensureHost();
  const browser = join(folder, "browser");
  await fillOnce(browser, async (target) => {
    await unpack(modules, target);
    writeFileSync(join(target, "fonts.conf"), fontSettings(browser, join(modules, "dejavu-fonts-ttf", "ttf")));
  });
  return {
    executablePath: join(browser, "chromium"),
    env: {
      // These are the NSS, NSPR and Expat libraries the browser was built against; a bare machine lacks them.
      LD_LIBRARY_PATH: join(browser, "libraries", "lib"),
      FONTCONFIG_FILE: join(browser, "fonts.conf"),
    },
  };
}

async function unpack(modules, target) {
  const carrier = join(modules, "@sparticuz", "chromium");
  const tar = createRequire(join(carrier, "package.json"))("tar-fs");
  const inflate = (name, sink) =>
    pipeline(createReadStream(join(carrier, "bin", name)), createBrotliDecompress(), sink);
  await Promise.all([
    inflate("chromium.br", createWriteStream(join(target, "chromium"), { mode: 0o755 })),
    inflate("swiftshader.tar.br", tar.extract(target)),
    inflate("al2023.tar.br", tar.extract(join(target, "libraries"))),
    inflate("fonts.tar.br", tar.extract(join(target, "fonts"))),
  ]);
}

/** The same fonts everywhere, one of them with a MATH table, so that pictures and formulas look alike on every machine. */
function fontSettings(browser, ttf) {
  const prefer = (family, font) =>
    `<alias binding="same"><family>${family}</family><prefer><family>${font}</family></prefer></alias>`;
  return [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    "<fontconfig>",
    `<dir>${ttf}</dir>`,
    `<dir>${join(browser, "fonts")}</dir>`,
    `<cachedir>${join(browser, "font-cache")}</cachedir>`,
    prefer("sans-serif", "Open Sans"),
    prefer("system-ui", "Open Sans"),
    prefer("serif", "DejaVu Serif"),
    prefer("monospace", "DejaVu Sans Mono"),
    prefer("math", "DejaVu Math TeX Gyre"),
    prefer("Latin Modern Math", "DejaVu Math TeX Gyre"),
    "</fontconfig>",
  ].join("\n");
}
