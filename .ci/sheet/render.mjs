// Renders bench sheets as a reader sees them and fails where one cannot be read.
// Call: node render.mjs BROWSER CASES, a JSON file with a list of
// {name, page, texts}: texts are what has to be seen on the page.
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";

const [browserPath, casesFile] = process.argv.slice(2);
const cases = JSON.parse(readFileSync(casesFile, "utf8"));
const folder = path.dirname(casesFile);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const screens = [
  { name: "screen", width: 1280, height: 900 },
  { name: "phone", width: 390, height: 844 },
];
const schemes = ["light", "dark"];

// Papers, with what the margins of @page leave of them, in CSS pixels.
const pixels = (mm) => (mm * 96) / 25.4;
const papers = [
  { name: "A4", width: pixels(210 - 30), height: pixels(297 - 30) },
  { name: "Letter", width: pixels(215.9 - 30), height: pixels(279.4 - 30) },
];
const levelsOfAccessibility = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

let failures = 0;
function fail(where, what) {
  failures++;
  console.log(`${where}: ${what}`);
}

const browser = await puppeteer.launch({ executablePath: browserPath, args: ["--no-sandbox", "--disable-gpu"] });
for (const each of cases) {
  await seen(each);
  await accessible(each);
  console.log(`${each.name}: looked for ${each.texts.length} texts, and at all drawings`);
}
await browser.close();
process.exit(failures > 0 ? 1 : 0);

// open opens a page, its policy in force unless that is lifted for a tool.
async function open(each, liftPolicy, complain) {
  const page = await browser.newPage();
  await page.setBypassCSP(liftPolicy);
  const url = pathToFileURL(each.page).href;
  page.on("console", (m) => complain(`console: ${m.text()}`));
  page.on("pageerror", (e) => complain(`error: ${e}`));
  page.on("request", (r) => r.url() === url || complain(`it asks for ${r.url()}`));
  await page.goto(url);
  return page;
}

// seen looks at what is visible and whether it stays where it belongs.
async function seen(each) {
  const page = await open(each, false, (what) => fail(each.name, what));
  for (const screen of screens) {
    for (const scheme of schemes) {
      const where = `${each.name}, ${screen.name}, ${scheme}`;
      await page.setViewport(screen);
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      for (const what of await page.evaluate(overflows)) fail(where, what);
      for (const what of await page.evaluate(lost, each.texts)) fail(where, what);
      await page.screenshot({ path: path.join(folder, `${each.name}-${screen.name}-${scheme}.png`) });
    }
  }
  await page.emulateMediaType("print"); // the scheme is dark still: paper is white
  for (const paper of papers) {
    const where = `${each.name}, ${paper.name}`;
    await page.setViewport({ width: Math.floor(paper.width), height: Math.floor(paper.height) });
    for (const what of await page.evaluate(overflows)) fail(where, what);
    for (const what of await page.evaluate(lost, each.texts)) fail(where, what);
    for (const what of await page.evaluate(unprintable, paper.height)) fail(where, what);
    const printed = await page.pdf({ format: paper.name, preferCSSPageSize: false, printBackground: true });
    if (!Buffer.from(printed).subarray(0, 5).equals(Buffer.from("%PDF-"))) fail(where, "it does not print");
    writeFileSync(path.join(folder, `${each.name}-${paper.name}.pdf`), printed);
  }
  await page.close();
}

// accessible asks the accessibility engine.
async function accessible(each) {
  const page = await open(each, true, () => {});
  await page.evaluate(axe);
  for (const screen of screens) {
    for (const scheme of schemes) {
      await page.setViewport(screen);
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      const violations = await page.evaluate(async (tags) => {
        const found = await globalThis.axe.run(document, { runOnly: { type: "tag", values: tags }, resultTypes: ["violations"] });
        return found.violations.map((v) => `${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map((n) => n.html.slice(0, 200)).join(" and ")}`);
      }, levelsOfAccessibility);
      for (const what of violations) fail(`${each.name}, ${screen.name}, ${scheme}`, what);
    }
  }
  await page.close();
}

// overflows, in the page: what is wider than the page, and lettering that leaves
// its drawing.
function overflows() {
  const wrong = [];
  const room = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth > room) wrong.push(`the page is ${document.documentElement.scrollWidth} px wide, the window ${room}`);
  for (const svg of document.querySelectorAll("svg")) {
    const frame = svg.getBoundingClientRect();
    for (const text of svg.querySelectorAll("text")) {
      const box = text.getBoundingClientRect();
      if (box.left < frame.left - 0.5 || box.top < frame.top - 0.5 || box.right > frame.right + 0.5 || box.bottom > frame.bottom + 0.5) {
        wrong.push(`"${text.textContent}" leaves the drawing ${svg.getAttribute("aria-labelledby")}`);
      }
    }
  }
  return wrong;
}

// lost, in the page: texts that a reader cannot see.
function lost(texts) {
  const flat = (text) => text.replace(/\s+/g, " ").trim();
  const visible = flat(document.body.innerText);
  return texts.filter((text) => !visible.includes(flat(text))).map((text) => `not to be seen: ${text}`);
}

// unprintable, in the page laid out for paper: drawings that do not fit one page,
// and a dark page.
function unprintable(height) {
  const wrong = [];
  for (const figure of document.querySelectorAll("figure")) {
    const drawing = figure.querySelector("svg").getBoundingClientRect();
    const room = figure.parentElement.getBoundingClientRect();
    if (figure.getBoundingClientRect().height > height) wrong.push(`"${figure.querySelector("figcaption").innerText}" is higher than the page`);
    if (drawing.right > room.right + 0.5 || drawing.left < room.left - 0.5) wrong.push(`"${figure.querySelector("figcaption").innerText}" is wider than the page`);
  }
  const paper = getComputedStyle(document.documentElement).backgroundColor;
  if (paper !== "rgb(255, 255, 255)") wrong.push(`the paper is ${paper}`);
  return wrong;
}
