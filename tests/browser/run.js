// Runs the checks: starts the service (the Release build, on a free port) and Chromium once for all files, then Node's own test
// runner. Files to run may be named; all of them where none is.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { chromium } from "playwright-core";

const program = resolve("../../src/Cablewright.Service/bin/Release/net10.0/Cablewright.Service.dll");
const artifacts = resolve("../../artifacts");
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

/** A port that is free now, for the page of the invented shop: the service must know its origin before it starts. */
async function freePort() {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = /** @type {import("node:net").AddressInfo} */ (server.address());
  server.close();
  return address.port;
}

/** @param {string} folder where it keeps its data @param {string} shop whose pages may call it */
async function startService(folder, shop) {
  const settings = {
    ASPNETCORE_URLS: "http://127.0.0.1:0",
    Cablewright__Storage__SqliteFile: join(folder, "shops.db"),
    Cablewright__AnonymousWorkPerMinute: "0",
    Cablewright__DrainSeconds: "0",
    Cablewright__AllowedOrigins: shop,
  };
  const service = spawn("dotnet", [program], { env: { ...process.env, ...settings }, stdio: ["ignore", "ignore", "pipe"] });
  const address = await new Promise((found, failed) => {
    let said = "";
    service.stderr.on("data", (text) => {
      said += text;
      const listens = /listens on (http:\S+)/.exec(said);
      if (listens) found(listens[1]);
    });
    service.once("exit", () => failed(new Error(`the service did not start: ${said}`)));
  });
  return { service, address };
}

const folder = mkdtempSync(join(tmpdir(), "cablewright-browser-"));
mkdirSync(join(artifacts, "screens"), { recursive: true });
const shop = `http://127.0.0.1:${await freePort()}`;
const { service, address } = await startService(folder, shop);
const browser = await chromium.launchServer({ executablePath: "/usr/bin/chromium", args: flags });

const reporters = ["--test-reporter=spec", "--test-reporter-destination=stdout", "--test-reporter=tap"];
const counted = `--test-reporter-destination=${join(artifacts, "browser.tap")}`;
const tests = spawn(process.execPath, ["--test", "--test-concurrency=2", ...reporters, counted, ...process.argv.slice(2)], {
  env: { ...process.env, CHECK_SERVICE: address, CHECK_SHOP: shop, CHECK_BROWSER: browser.wsEndpoint() },
  stdio: "inherit",
});
const [code] = await once(tests, "exit");

await browser.close();
service.kill("SIGTERM");
if (service.exitCode === null) await once(service, "exit");
rmSync(folder, { recursive: true, force: true });
process.exitCode = code ?? 1;
