// Whom the try page reaches: keyboard, screen readers (axe), light and dark, small screens, paper, and names that mean harm.
import assert from "node:assert/strict";
import { test } from "node:test";
import { browser, keep, scrollsSideways, service, violations } from "./support.js";

const { open, another } = browser();

/** @param {import("./support.js").Screen} [screen] @param {string} [hash] */
async function opened(screen = {}, hash = "") {
  const { page, failures } = await open(screen);
  await page.goto(`${service}/${hash}`);
  await page.locator("#verdict .verdict").waitFor();
  return { page, failures };
}

/** @param {unknown} build */
const hashOf = (build) => `#build=${Buffer.from(JSON.stringify(build)).toString("base64url")}`;

for (const colorScheme of /** @type {const} */ (["light", "dark"])) {
  for (const width of [360, 1280]) {
    test(`${colorScheme} at ${width} px: axe finds nothing, nothing scrolls sideways`, async () => {
      const { page, failures } = await opened({ colorScheme, width });
      for (const [index, name] of ["one", "two", "thin"].entries()) {
        await page.locator("#examples button").nth(index).click();
        const job = [/Dunlin/, /Kittiwake/, /Plover/][index] ?? "";
        await page.locator("#job-name").filter({ hasText: job }).waitFor();
        assert.equal(await scrollsSideways(page), false, name);
        await keep(page, `page-${name}-${colorScheme}-${width}`);
      }
      for (const summary of await page.locator("details:not([open]) > summary").all())
        if (await summary.isVisible()) await summary.click();
      assert.deepEqual(await violations(page), []);
      assert.equal(await scrollsSideways(page), false, "all open");
      assert.deepEqual(failures, []);
    });
  }
}

test("the switch chooses dark, and the choice is kept", async () => {
  const { page, close } = await another();
  await page.goto(`${service}/`);
  const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const light = await ground();
  await page.getByRole("button", { name: "Dark" }).click();
  assert.notEqual(await ground(), light);
  const dark = await ground();
  await page.reload();
  assert.equal(await ground(), dark);
  assert.equal(await page.getByRole("button", { name: "Dark" }).getAttribute("aria-pressed"), "true");
  await close();
});

test("with the keyboard alone", async () => {
  const { page } = await opened();
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement?.id), "skip");
  await page.keyboard.press("Enter");
  assert.equal(await page.evaluate(() => document.activeElement?.id), "form");
  await page.keyboard.press("Tab");
  assert.equal(
    await page.evaluate(() => /** @type {HTMLElement} */ (document.activeElement).dataset.pointer),
    "/amplifiers/0/ratedOutput",
  );
  assert.equal(
    await page.evaluate(() => getComputedStyle(/** @type {Element} */ (document.activeElement)).outlineStyle),
    "solid",
  );
  await page.keyboard.press("Control+A");
  await page.keyboard.type("900 W");
  await page
    .locator("#live")
    .filter({ hasText: /built|Settle|Stop/ })
    .waitFor({ state: "attached" });
  await page.locator("#parts").filter({ hasText: "2 AWG copper power wire" }).waitFor();
  // The answer came while the field was in use, and the field still is.
  assert.equal(
    await page.evaluate(() => /** @type {HTMLElement} */ (document.activeElement).dataset.pointer),
    "/amplifiers/0/ratedOutput",
  );
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  assert.equal(
    await page.evaluate(() => /** @type {HTMLElement} */ (document.activeElement).dataset.pointer),
    "/amplifiers/1/ratedOutput",
  );
});

test("the verdict is announced once when it changes", async () => {
  const { page } = await opened();
  const live = page.locator("#live");
  await live
    .filter({ hasText: /it can be built like this. Safety: Good, Performance: Good, Supply: Good/ })
    .waitFor({ state: "attached" });
  assert.equal(await live.getAttribute("aria-live"), "polite");
  await page.getByRole("button", { name: "A kit that is too thin" }).click();
  await live.filter({ hasText: /Stop.*Safety: Stop/ }).waitFor({ state: "attached" });
});

const hostile = {
  markup: `<script>document.title="taken"</script><img src=x onerror="document.title='taken'">`,
  "right to left": "\u202e\u0645\u0643\u0628\u0631 \u0635\u0648\u062a </title>",
  "two hundred letters": "W".repeat(200),
};
test("names that mean harm stay names", async () => {
  const { page, failures } = await opened({ width: 360 });
  for (const [kind, name] of Object.entries(hostile)) {
    await page.locator('#form [data-pointer="/name"]').fill(name);
    const amplifier = page.locator('#form [data-pointer="/amplifiers/0/id"]');
    await amplifier.fill(name);
    await amplifier.blur();
    await page
      .locator("#field-amplifiers-0-id-fault")
      .filter({ hasText: kind === "two hundred letters" ? /40/ : /letters/ })
      .waitFor();
    assert.equal(await page.locator('#form [data-pointer="/runs/0/length"]').getAttribute("aria-invalid"), null);
    assert.notEqual(await page.title(), "taken", kind);
    assert.equal(await page.locator("main script, main img[src=x]").count(), 0, kind);
    assert.equal(await scrollsSideways(page), false, kind);
    await keep(page, `page-name-${kind.replaceAll(" ", "-")}`);
  }
  assert.deepEqual(await violations(page), []);
  assert.deepEqual(failures, []);
});

test("a link of odd parts does not break the page", async () => {
  const { page, failures } = await opened();
  /** @param {unknown} build */
  const follow = (build) => page.evaluate((hash) => void (location.hash = hash), hashOf(build));
  for (const odd of [{}, [], { amplifiers: 3, runs: [] }, { amplifiers: [{ id: "a" }], runs: [{ id: "r", from: 1, to: 2 }] }]) {
    await follow({ amplifiers: [{ id: "a" }], runs: [] });
    await page.locator("#link-note").waitFor({ state: "hidden" });
    await follow(odd);
    await page.locator("#link-note").waitFor();
  }
  await follow({ amplifiers: [], runs: [], vehicle: { batteries: [] }, "<b>": { strange: [null, { a: true }] } });
  await page.locator("#faults li").first().waitFor();
  assert.deepEqual(failures, []);
});

test("on paper: the answer without the form", async () => {
  const { page } = await opened();
  await page.emulateMedia({ media: "print" });
  assert.equal(await page.locator("#form").isVisible(), false);
  assert.equal(await page.locator("#parts").isVisible(), true);
  const paper = await page.pdf({ format: "A4", margin: { top: "12mm", bottom: "12mm", left: "12mm", right: "12mm" } });
  const pages = paper.toString("latin1").match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
  assert.ok(pages >= 1 && pages <= 2, `${pages} pages`);
  await keep(page, "page-print");
});

test("the page loads nothing from elsewhere and runs nothing inline", async () => {
  const { page } = await open();
  /** @type {string[]} */
  const asked = [];
  page.on("request", (request) => asked.push(request.url()));
  const answer = await page.goto(`${service}/`);
  await page.locator("#verdict .verdict").waitFor();
  assert.ok(
    asked.every((url) => url.startsWith(service) || url.startsWith(`blob:${service}`)),
    asked.join("\n"),
  );
  const policy = answer?.headers()["content-security-policy"] ?? "";
  assert.match(policy, /default-src 'none'; script-src 'self'; style-src 'self'/);
  assert.doesNotMatch(policy, /unsafe/);
});
