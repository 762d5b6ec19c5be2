// Pages on a narrow screen: nothing scrolls sideways, nothing is cut off, nothing is asked of a network, nothing goes wrong.
// node screen.mjs OUTPUT-FOLDER PICTURES-FOLDER
import { mkdirSync, statSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { HOME, conclude, pages, standIn, withBrowser } from "./browser.mjs";

const NARROW = 360;
// What a care sheet without photos may weigh with its style sheets, faces and drawings, in bytes as they stand on the disk.
const HEAVIEST = 60_000;
const [, , output, pictures] = process.argv;
mkdirSync(pictures, { recursive: true });
const faults = [];
const all = pages(output);
const shown = new Set();
const weights = [];

await withBrowser({ viewport: { width: NARROW, height: 740 } }, async (browser) => {
  const page = await browser.newPage();
  let path = "";
  page.on("console", (message) => message.type() === "error" && faults.push(`${path}: console: ${message.text()}`));
  page.on("pageerror", (error) => faults.push(`${path}: ${error.message}`));
  // A face that is still on its way when the page is left is broken off; one that is not there fails in another way.
  page.on("requestfailed", (request) => {
    const why = request.failure()?.errorText;
    if (why !== "net::ERR_ABORTED") faults.push(`${path}: cannot load ${request.url()}: ${why}`);
  });
  await standIn(page, output);
  let loaded = new Set();
  page.on("request", (request) => {
    if (request.url().startsWith("file:")) loaded.add(fileURLToPath(request.url().split(/[?#]/)[0]));
    if (path === "public/404.html" && request.url().startsWith(HOME)) return;
    if (!/^(file|data):/.test(request.url())) faults.push(`${path}: asks for ${request.url()}`);
  });
  for (const one of all) {
    path = one.path;
    await page.setViewportSize({ width: NARROW, height: 740 });
    loaded = new Set();
    await page.goto(one.address, { waitUntil: "load" });
    if (one.kind === "care") {
      await page.evaluate(() => document.fonts.ready);
      const icon = await page.evaluate(() => document.querySelector("link[rel=icon]").href);
      loaded.add(fileURLToPath(icon));
      const files = [...loaded].map((file) => [statSync(file).size, basename(file)]);
      const bytes = files.reduce((sum, [size]) => sum + size, 0);
      weights.push([bytes, path]);
      if (!files.some(([, name]) => name.endsWith(".woff2"))) faults.push(`${path}: loads no face`);
      if (bytes > HEAVIEST) faults.push(`${path}: weighs ${bytes} bytes: ${files.map((file) => file.join(" ")).join(", ")}`);
    }
    faults.push(...(await page.evaluate(measure)).map((fault) => `${path}: ${fault}`));
    if (!shown.has(one.kind)) {
      shown.add(one.kind);
      // Every sheet at once is longer than a picture can be.
      if (one.kind === "binder") continue;
      for (const colorScheme of ["light", "dark"]) {
        await page.emulateMedia({ colorScheme });
        await page.setViewportSize({ width: NARROW, height: 740 });
        await page.screenshot({ path: `${pictures}/${one.kind}-narrow-${colorScheme}.png`, fullPage: true });
        await page.setViewportSize({ width: 1280, height: 900 });
        await page.screenshot({ path: `${pictures}/${one.kind}-wide-${colorScheme}.png`, fullPage: true });
      }
      await page.emulateMedia({ colorScheme: "light" });
    }
  }
});
if (all.length < 50) faults.push(`only ${all.length} pages were found in ${output}`);
weights.sort(([a], [b]) => a - b);
if (weights.length === 0) faults.push("no care sheet was weighed");
console.log(`${weights.length} care sheets weigh ${weights.at(0)?.[0]} to ${weights.at(-1)?.[0]} bytes in all, the heaviest ${weights.at(-1)?.[1]}`);
conclude(`${all.length} pages of ${shown.size} kinds (${[...shown].join(", ")}) at ${NARROW} px`, faults);

// Runs in the page.
function measure() {
  const faults = [];
  const named = (element) => {
    const name = element.id ? `#${element.id}` : String(element.className || "").replace(/^(?=.)/, ".");
    return `<${element.localName}${name}> "${element.textContent.trim().slice(0, 30)}"`;
  };
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth) {
    const wide = [...document.body.querySelectorAll("*")].filter((e) => e.getBoundingClientRect().right > root.clientWidth + 1);
    // What stands inside a box that scrolls by itself is not what widens the page.
    const boxed = (e) => e && e !== root && (/(auto|scroll)/.test(getComputedStyle(e).overflowX) || boxed(e.parentElement));
    const first = wide.find((e) => !boxed(e));
    faults.push(`scrolls sideways, ${root.scrollWidth} px wide: ${first ? named(first) : "?"}`);
  }
  for (const element of document.body.querySelectorAll("*")) {
    const style = getComputedStyle(element);
    const hides = /(hidden|clip)/.test(style.overflowX) || /(hidden|clip)/.test(style.overflowY);
    const box = element.getBoundingClientRect();
    const forReadersOnly = box.width <= 1 || box.height <= 1;
    const cut = element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1;
    if (hides && cut && !forReadersOnly && element.clientWidth > 0) faults.push(`cuts off ${named(element)}`);
  }
  return faults;
}
