// The page's own reckoning, run in the browser that it is for: what people type, changes to a build, links.
import assert from "node:assert/strict";
import { test } from "node:test";
import { browser, service } from "./support.js";

const { open } = browser();

/** Calls a function of a module of the page. @param {string} module @param {string} name @param {unknown[][]} calls
 * @returns {Promise<any[]>} */
async function call(module, name, calls) {
  const { page } = await open();
  await page.goto(`${service}/`);
  return page.evaluate(
    async ([path, name, calls]) => {
      const loaded = await import(/** @type {string} */ (path));
      return /** @type {unknown[][]} */ (calls).map((given) => loaded[/** @type {string} */ (name)](...given));
    },
    [`${service}/site/build/${module}.js`, name, calls],
  );
}

test("quantities are read as people type them", async () => {
  // Ways of writing that people use: common practice, no source.
  const said = [
    ["17", "length", "us", "17 ft"],
    ["5", "length", "metric", "5 m"],
    ["17'", "length", "us", "17 ft"],
    ["17' 6\"", "length", "us", "17 ft 6 in"],
    ["17’6”", "length", "us", "17 ft 6 in"],
    ["17 feet 6 inches", "length", "us", "17 ft 6 in"],
    ["17ft", "length", "us", "17 ft"],
    ["4,9 m", "length", "metric", "4.9 m"],
    ["4.9 metres", "length", "metric", "4.9 m"],
    ["500", "W", "us", "500 W"],
    ["500w", "W", "us", "500 W"],
    ["1,000 watts", "W", "us", "1000 W"],
    ["500 W RMS", "W", "us", "500 W"],
    ["1.2 kw", "W", "us", "1.2 kW"],
    ["80 amps", "A", "us", "80 A"],
    ["80a", "A", "us", "80 A"],
    ["70 ah", "Ah", "us", "70 Ah"],
    ["80", "%", "us", "80 %"],
    ["two metres", "length", "us", "two m"],
  ];
  const read = await call("typed", "typed", said);
  assert.deepEqual(
    read,
    said.map((row) => row[3]),
  );
});

test("sizes are read as people type them", async () => {
  const said = ["4awg", "AWG 4", "4 gauge", "0 gauge", "0000", "1/0", "16mm²", "16 sq mm", "thick"];
  const read = await call(
    "typed",
    "typedSize",
    said.map((text) => [text]),
  );
  assert.deepEqual(read, ["4 AWG", "4 AWG", "4 AWG", "1/0 AWG", "0000 AWG", "1/0 AWG", "16 mm2", "16 mm2", "thick"]);
});

test("a link gives back what it was made of", async () => {
  const build = { name: "Öffnung \u{1f697} </script>", amplifiers: [{ id: "a" }], runs: [] };
  const [hash] = await call("link", "toHash", [[build]]);
  assert.match(hash, /^#build=[A-Za-z0-9_-]+$/);
  assert.deepEqual(await call("link", "fromHash", [[hash], [""], ["#build=%%"]]), [build, null, undefined]);
});

test("members are set and taken out by pointer (RFC 6901)", async () => {
  const build = { amplifiers: [{ id: "a" }], runs: [{ id: "r", conductor: { size: "4 AWG" } }] };
  const [put] = await call("pointers", "put", [[build, "/runs/0/fuse/rating", "80 A"]]);
  assert.deepEqual(put.runs[0], { id: "r", conductor: { size: "4 AWG" }, fuse: { rating: "80 A" } });
  const [taken, first, polluted] = await call("pointers", "take", [
    [build, "/runs/0/conductor/size"],
    [build, "/amplifiers/0"],
    [build, "/nothing/there"],
  ]);
  assert.deepEqual(taken.runs[0], { id: "r" });
  assert.deepEqual(first.amplifiers, []);
  assert.deepEqual(polluted, build);
  assert.deepEqual(await call("pointers", "put", [[build, "/__proto__/x", "y"]]), [build]);
});
