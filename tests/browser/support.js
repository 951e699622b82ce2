// What the checks share: pages of the browser that `run.js` started, what axe finds, pictures.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { after, before } from "node:test";
import { chromium } from "playwright-core";

const { CHECK_SERVICE = "", CHECK_SHOP = "", CHECK_BROWSER = "" } = process.env;
if (!CHECK_BROWSER) throw new Error("run the checks by: npm test [files]");

/** Where the service is, and the shop whose pages may call it. */
export const service = CHECK_SERVICE;
export const shop = CHECK_SHOP;

const screens = resolve("../../artifacts/screens");
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * @typedef {{ width?: number, colorScheme?: "light" | "dark" }} Screen
 * @typedef {{ page: import("playwright-core").Page, failures: string[] }} Opened
 */

/** The browser for the tests of a file. Opening a page is what takes longest, so that tests take turns on one; who needs a person
 * of another browser opens `another`. What the scripts of the page complain of is in `failures`. */
export function browser() {
  /** @type {import("playwright-core").Browser} */
  let browser;
  /** @type {import("playwright-core").Page | undefined} */
  let shared;
  /** @type {string[]} */
  let failures = [];
  before(async () => {
    browser = await chromium.connect(CHECK_BROWSER);
  });
  after(() => browser?.close());

  async function fresh() {
    const context = await browser.newContext({ reducedMotion: "reduce" });
    context.setDefaultTimeout(30_000);
    const page = await context.newPage();
    page.on("pageerror", (error) => failures.push(error.message));
    page.on("console", (line) => {
      // Chromium writes a line for each refused request; what is refused on purpose is no failure of the page.
      if (line.type() === "error" && !line.text().startsWith("Failed to load resource")) failures.push(line.text());
    });
    return page;
  }

  /** @param {import("playwright-core").Page} page @param {Screen} screen @returns {Promise<Opened>} */
  async function on(page, { width = 1280, colorScheme = "light" }) {
    failures = [];
    await page.setViewportSize({ width, height: width > 600 ? 900 : 800 });
    await page.emulateMedia({ media: "screen", colorScheme });
    return { page, failures };
  }

  return {
    /** @param {Screen} [screen] */
    async open(screen = {}) {
      if (shared) {
        await shared.unrouteAll({ behavior: "ignoreErrors" });
        await shared.goto("about:blank");
      }
      shared ??= await fresh();
      return on(shared, screen);
    },
    /** @param {Screen} [screen] */
    async another(screen = {}) {
      const page = await fresh();
      return { ...(await on(page, screen)), close: () => page.context().close() };
    },
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
