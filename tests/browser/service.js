// The service and the browser that the checks use: the Release build on a free port, and Debian's Chromium.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { after, afterEach, before } from "node:test";
import { chromium } from "playwright-core";

const program = resolve("../../src/Cablewright.Service/bin/Release/net10.0/Cablewright.Service.dll");
const screens = resolve("../../artifacts/screens");
const axeSource = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** @param {Record<string, string>} settings @returns {Promise<{ address: string, stop: () => Promise<void> }>} */
async function startService(settings) {
  const folder = mkdtempSync(join(tmpdir(), "cablewright-browser-"));
  const environment = {
    ...process.env,
    ASPNETCORE_URLS: "http://127.0.0.1:0",
    Cablewright__Storage__SqliteFile: join(folder, "shops.db"),
    Cablewright__AnonymousWorkPerMinute: "0",
    Cablewright__DrainSeconds: "0",
    ...settings,
  };
  const service = spawn("dotnet", [program], { env: environment, stdio: ["ignore", "ignore", "pipe"] });
  const address = await new Promise((found, failed) => {
    let said = "";
    service.stderr.on("data", (text) => {
      said += text;
      const listens = /listens on (http:\S+)/.exec(said);
      if (listens) found(listens[1]);
    });
    service.on("exit", () => failed(new Error(`the service did not start: ${said}`)));
  });
  const stop = async () => {
    service.removeAllListeners("exit");
    service.kill("SIGTERM");
    await once(service, "exit");
    rmSync(folder, { recursive: true, force: true });
  };
  return { address, stop };
}

const flags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The service and a browser for the tests of a file; `page` opens a page that fails its test where a script fails.
 * @param {Record<string, string>} [settings] */
export function serviceAndBrowser(settings = {}) {
  /** @type {{ address: string, stop: () => Promise<void> }} */
  let service;
  /** @type {import("playwright-core").Browser} */
  let browser;
  before(async () => {
    mkdirSync(screens, { recursive: true });
    service = await startService(settings);
    browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: flags });
  });
  // A page that is left open goes on taking processor time.
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
  });
  after(async () => {
    await browser?.close();
    await service?.stop();
  });
  return {
    address: () => service.address,
    /** @param {import("playwright-core").BrowserContextOptions} [options] */
    async page(options = {}) {
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
    },
  };
}

/** What axe finds wrong, in a line each. @param {import("playwright-core").Page} page @returns {Promise<string[]>} */
export async function violations(page) {
  await page.evaluate(readFileSync(axeSource, "utf8"));
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
