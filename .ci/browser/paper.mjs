// Sheets on paper: the right size, no more pages than they may have, no word lost or off the edge.
// node paper.mjs OUTPUT-FOLDER A4|Letter PICTURES-FOLDER
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { conclude, pages, withBrowser } from "./browser.mjs";

// The width of what is printed, in CSS pixels: the paper less the margins of theme/paper.css.
const WIDTHS = { A4: ((210 - 28) / 25.4) * 96, Letter: ((215.9 - 24) / 25.4) * 96 };
// The most pages that a sheet of each kind may take.
const AT_MOST = { card: 1, care: 4, door: 1, handover: 4, record: 6, round: 2, sitter: 6 };
// Width and height in points, 72 to the inch: ISO 216 and ANSI/ASME Y14.1.
const SIZES = { A4: [595.3, 841.9], Letter: [612, 792] };

const [, , output, paper, pictures] = process.argv;
mkdirSync(pictures, { recursive: true });
const faults = [];
const most = {};
const all = pages(output).filter((page) => page.kind in AT_MOST);
const folder = mkdtempSync(join(tmpdir(), "wardsheet-paper-"));

await withBrowser({}, async (browser) => {
  const page = await browser.newPage();
  await page.emulateMedia({ media: "print" });
  for (const one of all) {
    const fault = (what) => faults.push(`${paper} ${one.path}: ${what}`);
    const pdf = join(folder, "sheet.pdf");
    await page.goto(one.address, { waitUntil: "load" });
    await page.setViewportSize({ width: Math.round(WIDTHS[paper]), height: 1000 });
    for (const what of await page.evaluate(clippedOrPale)) fault(what);
    const heads = await page.evaluate(() =>
      [...document.querySelectorAll("h1, h2, h3, h4, caption")].filter((head) => head.checkVisibility()).map((head) => head.innerText.trim()),
    );
    const days = await page.evaluate(() => [...document.querySelectorAll(".days th[rowspan]")].map((day) => day.innerText.trim()));
    const said = await page.evaluate(() => document.body.innerText);
    await page.pdf({ path: pdf, preferCSSPageSize: true });

    const about = execFileSync("pdfinfo", [pdf], { encoding: "utf8" });
    const count = Number(/^Pages:\s+(\d+)/m.exec(about)[1]);
    const size = /^Page size:\s+([\d.]+) x ([\d.]+)/m.exec(about).slice(1).map(Number);
    if (count > AT_MOST[one.kind]) fault(`${count} pages, and ${AT_MOST[one.kind]} are allowed`);
    if (size.some((side, at) => Math.abs(side - SIZES[paper][at]) > 1)) fault(`is ${size.join(" x ")} points`);

    const boxes = execFileSync("pdftotext", ["-bbox", pdf, "-"], { encoding: "utf8", maxBuffer: 1 << 28 });
    const printed = [];
    for (const [, left, top, right, bottom, word] of boxes.matchAll(
      /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g,
    )) {
      printed.push(word);
      const off = left < 0 || top < 0 || right > size[0] || bottom > size[1];
      if (off) fault(`"${word}" runs off the edge`);
    }
    const leaves = pagesOf(boxes);
    for (const head of orphans(leaves, heads, size[1])) fault(`the heading "${head}" ends a page`);
    for (const day of torn(leaves, days)) fault(`a page parts the day before "${day}" from its rows`);
    const lost = missing(said, printed.join(" "));
    if (lost.length > 0) fault(`not printed: ${lost.slice(0, 8).join(", ")}${lost.length > 8 ? " …" : ""}`);

    if (!(one.kind in most)) {
      const picture = join(pictures, `${one.kind}-${paper}`);
      execFileSync("pdftoppm", ["-png", "-r", "60", pdf, picture]);
    }
    most[one.kind] = Math.max(most[one.kind] ?? 0, count);
  }
});
rmSync(folder, { recursive: true, force: true });
for (const kind of Object.keys(AT_MOST)) if (!(kind in most)) faults.push(`there is no sheet of the kind ${kind}`);
const counts = Object.entries(most).map(([kind, count]) => `${kind} ${count}`);
conclude(`${all.length} sheets on ${paper}, most pages: ${counts.join(", ")}`, faults);

// The words of a page that do not stand in the print as often as on the page. Words may be broken at the end of a line.
function missing(said, printed) {
  const plain = (text) => text.normalize("NFKC").toLowerCase().replace(/[^\p{L}\p{N}\s]/gu, " ");
  const count = (text) => {
    const counts = new Map();
    for (const word of plain(text).split(/\s+/).filter(Boolean)) counts.set(word, (counts.get(word) ?? 0) + 1);
    return counts;
  };
  const [wanted, found] = [count(said), count(printed)];
  const run = plain(decode(printed)).replace(/\s+/g, "");
  return [...wanted].filter(([word, times]) => (found.get(word) ?? 0) < times && run.split(word).length - 1 < times).map(([word]) => word);
}

// What runs over the side of the paper or is cut off by its own box, and words too pale for black and white: WCAG 2.2, 1.4.3.
function clippedOrPale() {
  const faults = [];
  const share = (part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
  for (const element of document.body.querySelectorAll("*")) {
    if (!element.checkVisibility() || element.closest("svg") || element.matches(".skip")) continue;
    const name = `<${element.localName}> "${element.textContent.trim().slice(0, 30)}"`;
    if (element.getBoundingClientRect().right > innerWidth + 1) faults.push(`${name} runs over the side`);
    const style = getComputedStyle(element);
    const cut = style.overflow !== "visible" && (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1);
    if (cut && element.localName !== "img") faults.push(`${name} is cut off by its box`);
    const words = [...element.childNodes].some((child) => child.nodeType === 3 && child.textContent.trim());
    const [red, green, blue] = style.color.match(/[\d.]+/g).map((part) => share(Number(part) / 255));
    if (words && 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05) < 4.5) faults.push(`${name} is too pale`);
  }
  return faults;
}

// The words of each printed page with their places, in points.
function pagesOf(boxes) {
  return boxes.split("<page ").slice(1).map((leaf) =>
    [...leaf.matchAll(/<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g)].map(
      ([, left, top, right, bottom, word]) => ({ left: +left, top: +top, right: +right, bottom: +bottom, word: decode(word) }),
    ),
  );
}

// Headings below which nothing of their own column stands on the same page. The lowest 13 mm are the margin of either paper.
function orphans(leaves, heads, height) {
  const found = [];
  for (const leaf of leaves) {
    const inside = leaf.filter((one) => one.bottom < height - 37);
    for (const head of new Set(heads)) {
      const words = head.split(/\s+/);
      for (let at = 0; at + words.length <= inside.length; at += 1) {
        if (!words.every((word, step) => inside[at + step].word === word)) continue;
        const first = inside[at];
        const last = inside[at + words.length - 1];
        // A heading is set larger than the words around it; the same words in a line of text are none.
        const line = inside.filter((one) => Math.abs(one.top - first.top) < 2 && one.left > last.right && one.left < last.right + 12);
        const before = inside.filter((one) => Math.abs(one.top - first.top) < 2 && one.right < first.left && one.right > first.left - 12);
        if (line.length > 0 || before.length > 0) continue;
        if (!inside.some((one) => one.top > last.bottom - 2 && one.left < first.left + 250 && one.right > first.left - 5)) found.push(head);
      }
    }
  }
  return found;
}

// Days of a table of many rows a day that a page's end parts from the rows below: behind the headings a page begins with a day.
function torn(leaves, days) {
  if (days.length === 0) return [];
  const found = [];
  for (const leaf of leaves) {
    const words = leaf.map((one) => one.word);
    const head = words.findIndex((word, at) => word === "Remarks" && words.slice(at - 9, at).includes("Animal"));
    if (head < 0) continue;
    const next = words.slice(head + 1, head + 4).join(" ");
    if (!days.includes(next)) found.push(next);
  }
  return found;
}

function decode(text) {
  return text.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&");
}
