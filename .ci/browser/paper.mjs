// Sheets on paper: the right size, no more pages than they may have, no word lost or off the edge.
// node paper.mjs OUTPUT-FOLDER A4|Letter PICTURES-FOLDER
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { conclude, pages, withBrowser } from "./browser.mjs";

// The most pages that a sheet of each kind may take.
const AT_MOST = { card: 1, care: 4, handover: 4 };
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

function decode(text) {
  return text.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&");
}
