// What the checks share: pages of the browser that `run.js` started, what axe finds, pictures.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { after, afterEach, before } from "node:test";
import { chromium } from "playwright-core";

const { CHECK_SERVICE = "", CHECK_SHOP = "", CHECK_BROWSER = "" } = process.env;
if (!CHECK_BROWSER) throw new Error("run the checks by: npm test [files]");

/** Where the service is, and the shop whose pages may call it. */
export const service = CHECK_SERVICE;
export const shop = CHECK_SHOP;

const screens = resolve("../../artifacts/screens");
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The browser for the tests of a file. The function opens a page, and tells what its scripts complain of. */
export function browser() {
  /** @type {import("playwright-core").Browser} */
  let browser;
  before(async () => {
    browser = await chromium.connect(CHECK_BROWSER);
  });
  // A page that is left open goes on taking processor time.
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
  });
  after(() => browser?.close());
  /** @param {import("playwright-core").BrowserContextOptions} [options] */
  return async (options = {}) => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, reducedMotion: "reduce", ...options });
    context.setDefaultTimeout(30_000);
    const page = await context.newPage();
    /** @type {string[]} */
    const failures = [];
    page.on("pageerror", (error) => failures.push(error.message));
    page.on("console", (line) => {
      // Chromium writes a line for each refused request; what is refused on purpose is no failure of the page.
      if (line.type() === "error" && !line.text().startsWith("Failed to load resource")) failures.push(line.text());
    });
    return { page, failures };
  };
}

/** What axe finds wrong, in a line each. @param {import("playwright-core").Page} page @returns {Promise<string[]>} */
export async function violations(page) {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { violations } = await /** @type {any} */ (globalThis).axe.run(document, { resultTypes: ["violations"] });
    return violations.map(
      (/** @type {any} */ found) => `${found.id}: ${found.nodes.map((/** @type {any} */ node) => node.html).join(" | ")}`,
    );
  });
}

/** Whether something reaches past the right edge. @param {import("playwright-core").Page} page */
export const scrollsSideways = (page) =>
  page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);

/** Keeps a picture of the page in the test output. @param {import("playwright-core").Page} page @param {string} name */
export const keep = (page, name) => page.screenshot({ path: join(screens, `${name}.png`), fullPage: true });
