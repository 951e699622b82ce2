// The try page in use: first answer, typing, faults, links, steps back, failures of the service.
import assert from "node:assert/strict";
import { test } from "node:test";
import { browser, service } from "./support.js";

const { open, another } = browser();

/** @typedef {import("playwright-core").Page} Page */

/** Opens the page and waits for its first answer. @param {string} [hash] */
async function opened(hash = "") {
  const { page, failures } = await open();
  await page.goto(`${service}/${hash}`);
  await page.locator("#verdict .verdict").waitFor();
  return { page, failures };
}

/** @param {Page} page @param {string} pointer */
const field = (page, pointer) => page.locator(`#form [data-pointer="${pointer}"]`);

/** Waits until the headline says so. @param {Page} page @param {RegExp} said */
const headline = (page, said) => page.locator("#verdict .headline").filter({ hasText: said }).waitFor();

/** @param {Page} page */
const linked = (page) =>
  page.evaluate(() => {
    const text = location.hash.slice("#build=".length).replaceAll("-", "+").replaceAll("_", "/");
    return JSON.parse(new TextDecoder().decode(Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))));
  });

test("a stranger is answered without a click", async () => {
  const start = performance.now();
  const { page, failures } = await opened();
  assert.ok(performance.now() - start < 30_000);
  await headline(page, /it can be built/);
  assert.match((await page.locator("#parts").textContent()) ?? "", /4 AWG copper power wire.*\d+ A [\w-]+ fuse/s);
  assert.deepEqual(await page.locator(".lights strong").allTextContents(), ["Good", "Good", "Good"]);
  assert.match((await page.locator("#head .burn").textContent()) ?? "", /Wiring can burn a car/);
  assert.match((await page.locator("#cautions").textContent()) ?? "", /qualified installer/);
  assert.deepEqual(failures, []);
});

test("typing changes the answer, and a bare number is shown with its unit", async () => {
  const { page } = await opened();
  await field(page, "/amplifiers/0/ratedOutput").fill("1500");
  await page.locator("#parts").filter({ hasText: "1/0 AWG copper power wire" }).waitFor();
  await field(page, "/amplifiers/0/ratedOutput").blur();
  assert.equal(await field(page, "/amplifiers/0/ratedOutput").inputValue(), "1500 W");
  assert.equal((await linked(page)).amplifiers[0].ratedOutput, "1500 W");
});

test("a fault stands beside its field and goes when it is mended", async () => {
  const { page } = await opened();
  const length = field(page, "/runs/0/length");
  await length.fill("17 bananas");
  const fault = page.locator(`[id="${await length.getAttribute("id")}-fault"]`);
  await fault.filter({ hasText: /bananas/ }).waitFor();
  assert.equal(await length.getAttribute("aria-invalid"), "true");
  assert.match((await length.getAttribute("aria-describedby")) ?? "", /-fault/);
  assert.match((await page.locator("#note").textContent()) ?? "", /marked/);
  await length.fill("12 feet");
  await fault.filter({ hasText: /^$/ }).waitFor({ state: "attached" });
  assert.equal(await length.getAttribute("aria-invalid"), null);
  assert.equal(await page.locator("#note").isVisible(), false);
});

test("the link carries the build to another browser", async () => {
  const { page } = await opened();
  await field(page, "/runs/0/length").fill("23 ft");
  await page.locator("#parts").filter({ hasText: "23 ft as it lies" }).waitFor();
  const { page: other, close } = await another();
  await other.goto(page.url());
  await other.locator("#parts").filter({ hasText: "23 ft as it lies" }).waitFor();
  assert.equal(await field(other, "/runs/0/length").inputValue(), "23 ft");
  await close();
});

test("a damaged link says so and shows an example", async () => {
  const { page, failures } = await opened("#build=e30x");
  assert.equal(await page.locator("#link-note").isVisible(), true);
  await headline(page, /it can be built/);
  assert.deepEqual(failures, []);
});

test("back goes one field back, not one letter", async () => {
  const { page } = await opened();
  await field(page, "/runs/0/length").pressSequentially("0");
  await field(page, "/runs/0/length").fill("21 ft");
  await page.locator("#parts").filter({ hasText: "21 ft as it lies" }).waitFor();
  await field(page, "/amplifiers/0/ratedOutput").fill("700 W");
  await page.goBack();
  assert.equal(await field(page, "/amplifiers/0/ratedOutput").inputValue(), "500 W");
  assert.equal(await field(page, "/runs/0/length").inputValue(), "21 ft");
  await page.goBack();
  assert.equal(await field(page, "/runs/0/length").inputValue(), "17 ft");
});

test("an earlier call is given up and its late answer not shown", async () => {
  const { page } = await opened();
  /** @type {string[]} */
  const given = [];
  page.on("requestfailed", (request) => given.push(request.postData() ?? ""));
  await page.route("**/v1/assessments", async (route) => {
    if (route.request().postData()?.includes("40 ft")) await new Promise((later) => setTimeout(later, 1500));
    await route.continue().catch(() => undefined);
  });
  await field(page, "/runs/0/length").fill("40 ft");
  await page.locator("#progress").waitFor();
  await field(page, "/runs/0/length").fill("9 ft");
  await page.locator("#parts").filter({ hasText: "9 ft as it lies" }).waitFor();
  await page.waitForTimeout(1500);
  assert.match((await page.locator("#parts").textContent()) ?? "", /9 ft as it lies/);
  assert.equal(given.filter((body) => body.includes("40 ft")).length, 1);
  assert.equal(await page.locator("#progress").isVisible(), false);
});

test("a service that cannot be reached, and one that has too much to do", async () => {
  const { page } = await opened();
  await page.route("**/v1/assessments", (route) => route.abort());
  await field(page, "/runs/0/length").fill("18 ft");
  await page
    .locator("#note")
    .filter({ hasText: /cannot be reached/ })
    .waitFor();
  await page.unroute("**/v1/assessments");
  await page.locator("#note button").click();
  await page.locator("#parts").filter({ hasText: "18 ft as it lies" }).waitFor();
  let refused = 0;
  await page.route("**/v1/assessments", (route) =>
    refused++ === 0
      ? route.fulfill({ status: 429, headers: { "retry-after": "1" }, contentType: "application/problem+json", body: "{}" })
      : route.continue(),
  );
  await field(page, "/runs/0/length").fill("19 ft");
  await page
    .locator("#note")
    .filter({ hasText: /too much to do.*1 s/ })
    .waitFor();
  await page.locator("#parts").filter({ hasText: "19 ft as it lies" }).waitFor();
  assert.equal(await page.locator("#note").isVisible(), false);
});

test("a failing build is cured at a click", async () => {
  const { page } = await opened();
  await page.getByRole("button", { name: "A kit that is too thin" }).click();
  await headline(page, /Stop/);
  assert.match((await page.locator("#parts h3").textContent()) ?? "", /do not buy/);
  await page.locator("#changes button.primary").click();
  await headline(page, /it can be built/);
  assert.equal((await linked(page)).runs[0].conductor.material, "copper");
});

test("an answer to a question goes into the build and can be left out again", async () => {
  const { page } = await opened();
  const asked = page.locator("#ask-next li").filter({ hasText: /efficiency/ });
  await asked.locator("input").fill("82");
  await asked.locator("input").press("Enter");
  await page.locator("#form-extras input").waitFor();
  assert.equal((await linked(page)).amplifiers[0].efficiency, "82 %");
  await page
    .locator("#ask-next")
    .filter({ hasNotText: /efficiency/ })
    .waitFor({ state: "attached" });
  await page.locator("#form-extras button").click();
  assert.equal((await linked(page)).amplifiers[0].efficiency, undefined);
  assert.equal(await page.locator("#section-extras").isVisible(), false);
});

test("amplifiers and a second battery come and go with their cables", async () => {
  const { page } = await opened();
  await page.getByRole("button", { name: "Add an amplifier" }).click();
  await page.locator("#parts").filter({ hasText: "distribution block" }).waitFor();
  assert.deepEqual(
    (await linked(page)).runs.map((/** @type {Run} */ run) => `${run.from}>${run.to}`),
    ["battery>block", "block>bass", "block>amp-2"],
  );
  await field(page, "/amplifiers/1/id").fill("Front stage");
  await field(page, "/amplifiers/1/id").blur();
  assert.equal((await linked(page)).runs[2].to, "Front-stage");
  await page.getByRole("button", { name: "Remove amplifier Front-stage" }).click();
  await page.getByRole("button", { name: "Add a second battery" }).click();
  await page.locator("#runs").filter({ hasText: "charging: battery to rear" }).waitFor();
  await page.getByRole("button", { name: "Remove the second battery" }).click();
  assert.deepEqual(
    (await linked(page)).runs.map((/** @type {Run} */ run) => `${run.from}>${run.to}`),
    ["battery>bass"],
  );
});

test("a drawing is shown as an image in which nothing runs, and a service without one is asked once", async () => {
  const { page } = await open();
  let asked = 0;
  /** @type {string | undefined} */
  let drawing;
  await page.route("**/v1/assessments", (route) => {
    if (route.request().headers()["accept"] !== "image/svg+xml") return route.continue();
    asked++;
    return drawing ? route.fulfill({ contentType: "image/svg+xml", body: drawing }) : route.fulfill({ status: 406, body: "" });
  });
  await page.goto(`${service}/`);
  await page.locator("#verdict .verdict").waitFor();
  await field(page, "/runs/0/length").fill("18 ft");
  await page.locator("#parts").filter({ hasText: "18 ft as it lies" }).waitFor();
  assert.equal(await page.locator("#section-drawing").isVisible(), false);
  assert.equal(asked, 1);
  const script = "<script>parent.document.title = document.title = 'taken'</script>";
  drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="300" height="100">${script}<rect width="300" height="100"/></svg>`;
  await page.reload();
  const image = page.locator("#drawing img");
  await image.waitFor();
  assert.equal(await image.evaluate((shown) => /** @type {HTMLImageElement} */ (shown).naturalWidth), 300);
  assert.match((await image.getAttribute("alt")) ?? "", /Wiring drawing. Use 18 ft of 4 AWG copper/);
  assert.notEqual(await page.title(), "taken");
});

test("the JSON and the curl line are those of the build", async () => {
  const { page } = await opened();
  const json = JSON.parse((await page.locator("#json").textContent()) ?? "");
  const answer = await page.request.post(`${service}/v1/assessments`, { data: json });
  assert.equal(answer.status(), 200);
  const curl = (await page.locator("#curl").textContent()) ?? "";
  assert.ok(curl.startsWith("curl -H 'Content-Type: application/json' --data '{"));
  assert.ok(curl.endsWith(`${service}/v1/assessments`));
});

test("every example is answered", async () => {
  const { page, failures } = await opened();
  for (const example of await page.locator("#examples button").all()) {
    await example.click();
    await page.locator("#sheet:not(.stale)").waitFor();
    await page.waitForFunction(() => document.querySelector("#summary")?.textContent);
    assert.equal(await page.locator("#note").isVisible(), false, (await example.textContent()) ?? "");
    assert.equal(await example.getAttribute("aria-pressed"), "true");
  }
  assert.deepEqual(failures, []);
});
