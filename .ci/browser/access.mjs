// Every kind of page against WCAG 2.2 AA: axe in light and dark, headings, the keyboard, zoom, and what is left without styles.
// node access.mjs OUTPUT-FOLDER
import { readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { conclude, pages, standIn, withBrowser } from "./browser.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
// WCAG 2.2, 1.4.10 and 1.4.4: 320 px; 1280 px at 200 %.
const WIDTHS = [320, 640];
const faults = [];

// The first and the largest page of each kind stand for it.
const kinds = new Map();
for (const one of pages(process.argv[2])) {
  const size = statSync(one.file).size;
  const known = kinds.get(one.kind) ?? { first: one, largest: one, size };
  kinds.set(one.kind, size > known.size ? { ...known, largest: one, size } : known);
}
const chosen = new Set([...kinds.values()].flatMap(({ first, largest }) => [first, largest]));

await withBrowser({}, async (browser) => {
  const page = await browser.newPage();
  await standIn(page, process.argv[2]);
  for (const one of chosen) {
    const fault = (what) => faults.push(`${one.path}: ${what}`);
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.goto(one.address, { waitUntil: "load" });
    for (const colorScheme of ["light", "dark"]) {
      await page.emulateMedia({ colorScheme });
      // Folded words count too.
      await page.evaluate(() => document.querySelectorAll("details").forEach((fold) => (fold.open = true)));
      await page.evaluate(AXE);
      const found = await page.evaluate((values) => axe.run(document, { runOnly: { type: "tag", values }, resultTypes: ["violations"] }), TAGS);
      for (const { id, help, nodes } of found.violations) fault(`${colorScheme}: ${id}: ${help}: ${nodes.length} × ${nodes[0].html.slice(0, 120)} ${nodes[0].failureSummary.split("\n").at(-1).trim()}`);
    }
    (await page.evaluate(order)).forEach(fault);
    (await keyboard(page)).forEach(fault);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      if (wide > width) fault(`scrolls sideways at ${width} px: ${wide} px wide`);
    }
    (await page.evaluate(withoutStyles)).forEach(fault);
  }
});
conclude(`${chosen.size} pages of ${kinds.size} kinds by axe in light and dark, by keyboard, at ${WIDTHS.join(" and ")} px and without styles`, faults);

// Runs in the page: one heading of the first level, none that skips a level.
function order() {
  const faults = [];
  const levels = [...document.querySelectorAll("h1, h2, h3, h4, h5, h6")].map((heading) => [Number(heading.localName[1]), heading.textContent]);
  levels.forEach(([level, text], at) => {
    const before = at === 0 ? 0 : levels[at - 1][0];
    if (level > before + 1) faults.push(`heading "${text}" goes from level ${before} to ${level}`);
  });
  if (levels.filter(([level]) => level === 1).length !== 1) faults.push("has not one heading of the first level");
  return faults;
}

// The Tab key reaches everything that does something, in the order of the page, and shows where it is.
async function keyboard(page) {
  const faults = [];
  const expected = await page.evaluate(() => {
    const all = [...document.querySelectorAll("a[href], summary, button, input, [tabindex='0']")].filter((one) => one.checkVisibility());
    all.forEach((one, at) => (one.dataset.tab = at));
    document.activeElement?.blur();
    return all.length;
  });
  for (let at = 0; at < Math.min(expected, 150); at++) {
    await page.keyboard.press("Tab");
    const [reached, shown, name] = await page.evaluate(() => {
      const style = getComputedStyle(document.activeElement);
      const seen = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
      return [document.activeElement.dataset.tab, seen, document.activeElement.textContent.trim().slice(0, 40)];
    });
    if (Number(reached) !== at) {
      faults.push(`the Tab key reaches "${name}" (${reached}) in the place of ${at}`);
      break;
    }
    if (!shown) faults.push(`"${name}" does not show that it has the focus`);
  }
  return faults;
}

// Runs in the page: what style sheets write must stand in the page as well, and the page must still be whole without them.
function withoutStyles() {
  const faults = [];
  const plain = (text) => text.replace(/\s+/g, " ");
  const text = plain(document.body.textContent);
  for (const element of document.body.querySelectorAll("*")) {
    for (const side of ["::before", "::after"]) {
      const written = /^"(.*)"$/.exec(getComputedStyle(element, side).content)?.[1].trim();
      const known = written && (text.includes(plain(written)) || element.getAttribute("href") === written);
      if (/\p{L}/u.test(written ?? "") && !known) faults.push(`only the style sheet says "${written}"`);
    }
  }
  document.querySelectorAll("link[rel=stylesheet], style").forEach((sheet) => sheet.remove());
  const said = plain(document.body.innerText);
  for (const heading of document.querySelectorAll("h1, h2, caption, summary")) {
    if (!said.includes(plain(heading.textContent).trim())) faults.push(`"${heading.textContent}" is not shown without styles`);
  }
  return faults;
}
