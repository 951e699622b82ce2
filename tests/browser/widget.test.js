// The widget on the page of an invented shop on another origin, whose policy allows nothing inline.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { after, before, test } from "node:test";
import { gzipSync } from "node:zlib";
import { browser, keep, scrollsSideways, service, shop, violations } from "./support.js";

/** @type {import("node:http").Server} */
let server;
const { open } = browser();
const widget = "../../src/Cablewright.Service/wwwroot/widget";
const { newest, versions } = JSON.parse(readFileSync(`${widget}/versions.json`, "utf8"));
const pinned = versions.find((/** @type {{ version: string }} */ one) => one.version === newest);

/** What stands in the shop's page; each test sets it. */
let product = "";

/** @param {string} markup @param {string} integrity */
const shopPage = (markup, integrity) => `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Plover Car Parts</title>
<meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark">
<link rel="icon" href="data:,">
<script type="module" src="${service}/widget/${pinned.script}" integrity="${integrity}" crossorigin="anonymous"></script>
<link rel="stylesheet" href="/shop.css"></head>
<body><main><h1>Amplifier cable, by the foot</h1>${markup}</main></body></html>`;

/** @type {string} */
let integrity = pinned.integrity;

before(async () => {
  server = createServer((request, response) => {
    const isCss = request.url === "/shop.css";
    response.setHeader("content-type", isCss ? "text/css" : "text/html; charset=utf-8");
    response.setHeader(
      "content-security-policy",
      `default-src 'none'; script-src ${service}; style-src 'self'; connect-src ${service}; img-src data:; form-action 'none'; ` +
        "base-uri 'none'; require-trusted-types-for 'script'; trusted-types 'none'",
    );
    const css =
      "html { color-scheme: light dark } body { font: 1rem sans-serif; margin: 1rem } .themed { --cable-check-act: #7a1f5c; --cable-check-on-act: #fff }";
    response.end(isCss ? css : shopPage(product, integrity));
  });
  await new Promise((listens) => server.listen(Number(new URL(shop).port), "127.0.0.1", () => listens(undefined)));
});
after(() => void server.close());

/** @param {string} markup @param {import("./support.js").Screen} [screen] */
async function visited(markup, screen = {}) {
  product = markup;
  const { page, failures } = await open(screen);
  await page.goto(`${shop}/`);
  await page.locator("cable-check h2").waitFor();
  return { page, failures };
}

/** @param {import("playwright-core").Page} page @param {string} label @param {string} said */
async function check(page, label, said) {
  await page.getByLabel(label).fill(said);
  await page.getByRole("button", { name: "Check" }).click();
  await page.locator("cable-check #answer:not([aria-busy]) .verdict").waitFor();
  return (await page.locator("cable-check .verdict").textContent()) ?? "";
}

test("it says which cable to take, and the cart hears of it", async () => {
  const { page, failures } = await visited('<cable-check product="reel-4"></cable-check>');
  await page.evaluate(() => {
    const hear = (/** @type {Event} */ event) => Object.assign(globalThis, { heard: /** @type {CustomEvent} */ (event).detail });
    addEventListener("cable-check-cart", hear);
  });
  assert.match(await check(page, "Power, all channels", "500"), /Take 19 ft 4 AWG copper power wire, with a \d+ A [\w-]+ fuse/);
  assert.equal(await page.getByLabel("Power, all channels").inputValue(), "500 W");
  assert.match((await page.locator("cable-check .lights").textContent()) ?? "", /Safety: good.*Supply: not judged/);
  await page.getByRole("button", { name: "Add to cart" }).click();
  const heard = await page.evaluate(() => /** @type {any} */ (globalThis).heard);
  assert.equal(heard.product, "reel-4");
  assert.equal(heard.light, "good");
  assert.ok(heard.needs.some((/** @type {MaterialLine} */ part) => part.item === "power wire" && part.size === "4 AWG"));
  assert.deepEqual(failures, []);
});

test("by the amplifier's own fuses, in metres", async () => {
  const { page } = await visited('<cable-check units="metric"></cable-check>');
  await page.getByText("own fuses").click();
  await page.getByLabel("Vehicle").selectOption("van");
  assert.equal(await page.getByLabel("Cable from battery to amplifier").inputValue(), "8 m");
  assert.match(await check(page, "Its fuses, added up", "60 A"), /Take 9 m \d+ mm2 copper power wire/);
});

test("a cable that is too thin is told apart from one that serves", async () => {
  const { page } = await visited('<cable-check size="8 AWG" material="copper-clad-aluminium" fuse="100 A"></cable-check>');
  const said = await check(page, "Power, all channels", "1000 W");
  assert.match(said, /This 8 AWG cable does not serve\..*Take instead: 19 ft 2 AWG copper/);
  assert.equal(await page.locator("cable-check .verdict.stop").count(), 1);
  await page.locator("cable-check").evaluate((element) => element.setAttribute("size", "1/0 AWG"));
  await page.locator("cable-check").evaluate((element) => (element.removeAttribute("material"), element.removeAttribute("fuse")));
  assert.match(await check(page, "Power, all channels", "500 W"), /This 1\/0 AWG cable (serves|would do)/);
});

test("a kit is checked whole", async () => {
  const parts = [
    { kind: "power-wire", size: "4 AWG", material: "copper", length: "20 ft" },
    { kind: "ground-wire", size: "4 AWG", material: "copper", length: "4 ft" },
    { kind: "fuse", rating: "80 A", family: "ANL" },
  ];
  const { page } = await visited(`<cable-check kit='${JSON.stringify({ name: "Kit 4", parts })}'></cable-check>`);
  assert.match(await check(page, "Power, all channels", "400 W"), /This kit serves/);
  await check(page, "Power, all channels", "3000 W");
  await page.locator("cable-check .verdict.stop").waitFor();
  assert.match((await page.locator("cable-check .verdict").textContent()) ?? "", /This kit does not serve/);
});

test("what cannot be read stands beside its field", async () => {
  const { page } = await visited("<cable-check></cable-check>");
  await page.getByLabel("Power, all channels").fill("plenty");
  await page.getByRole("button", { name: "Check" }).click();
  await page
    .locator("cable-check #ratedOutput-fault")
    .filter({ hasText: /plenty|unit|number/ })
    .waitFor();
  assert.equal(await page.getByLabel("Power, all channels").getAttribute("aria-invalid"), "true");
  await page.route("**/v1/**", (route) => route.abort());
  await page.getByRole("button", { name: "Check" }).click();
  await page
    .locator("cable-check #answer")
    .filter({ hasText: /cannot be reached/ })
    .waitFor();
});

test("strings are replaced, and what they hold stays text", async () => {
  const strings = JSON.stringify({ check: "Prüfen", title: "<img src=x> Passt es?", take: "Nimm {cable}." });
  const { page, failures } = await visited(`<cable-check strings='${strings}'></cable-check>`);
  assert.equal(await page.locator("cable-check h2").textContent(), "<img src=x> Passt es?");
  await page.getByLabel("Power, all channels").fill("500 W");
  await page.getByRole("button", { name: "Prüfen" }).click();
  await page
    .locator("cable-check .verdict")
    .filter({ hasText: /^Nimm 19 ft 4 AWG copper power wire.$/ })
    .waitFor();
  assert.equal(await page.locator("cable-check img").count(), 0);
  assert.deepEqual(failures, []);
});

for (const colorScheme of /** @type {const} */ (["light", "dark"])) {
  test(`${colorScheme}: axe finds nothing, at 360 px nothing scrolls sideways`, async () => {
    const { page } = await visited('<cable-check class="themed" size="8 AWG"></cable-check>', {
      colorScheme,
      width: 360,
    });
    await check(page, "Power, all channels", "1000 W");
    assert.deepEqual(await violations(page), []);
    assert.equal(await scrollsSideways(page), false);
    const act = await page
      .locator("cable-check button")
      .first()
      .evaluate((button) => getComputedStyle(button).backgroundColor);
    assert.equal(act, "rgb(122, 31, 92)");
    await keep(page, `widget-${colorScheme}-360`);
    await page.setViewportSize({ width: 1280, height: 800 });
    await keep(page, `widget-${colorScheme}-1280`);
  });
}

test("a script that was tampered with does not run", async () => {
  integrity = `sha384-${"A".repeat(64)}`;
  product = "<cable-check></cable-check>";
  const { page } = await open();
  await page.goto(`${shop}/`);
  await page.waitForTimeout(500);
  assert.equal(await page.evaluate(() => customElements.get("cable-check") === undefined), true);
  integrity = pinned.integrity;
});

test("its size", () => {
  const bytes = gzipSync(readFileSync(`${widget}/${pinned.script}`)).length;
  assert.ok(bytes < 30 * 1024, `${bytes} bytes`);
});
