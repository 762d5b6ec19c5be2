// A browser of its own for one run, and the pages of a compiled site.
import { readdirSync, rmSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

// Opens a browser with an empty profile, hands it to the work, and closes it whatever happens.
export async function withBrowser(options, work) {
  const profile = mkdtempSync(join(tmpdir(), "wardsheet-browser-"));
  const browser = await chromium.launchPersistentContext(profile, {
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    headless: true,
    args: FLAGS,
    ...options,
  });
  try {
    await work(browser);
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

// Every page below a folder: its path, its address and its kind.
export function pages(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort()
    .map((file) => {
      const path = relative(folder, file);
      return { path, file, address: pathToFileURL(file).href, kind: kind(path) };
    });
}

function kind(path) {
  const [part, room, , file] = path.split("/");
  if (room === "sitter" || room === "round") return room;
  if (part === "private") return path.split("/").at(-1).replace(".html", "");
  if (room === "species") return file === "card.html" ? "card" : "care";
  if (room === "animals") return "animal";
  return room.replace(".html", "");
}

// Says what is wrong, and ends with the status that goes with it.
export function conclude(checked, faults) {
  for (const fault of faults) console.error(`FAULT ${fault}`);
  console.log(`${checked}: ${faults.length} faults`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}
