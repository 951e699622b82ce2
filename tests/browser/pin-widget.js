// Writes the integrity hash of every version of the widget beside them. A version that was published is never edited: its hash is
// in other people's pages.
import { createHash } from "node:crypto";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";

const folder = "../../src/Cablewright.Service/wwwroot/widget";
const names = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort((one, other) => one.localeCompare(other, "en", { numeric: true }));
const versions = names.map((version) => {
  const script = `${version}/cable-check.js`;
  const hash = createHash("sha384")
    .update(readFileSync(`${folder}/${script}`))
    .digest("base64");
  return { version, script, integrity: `sha384-${hash}` };
});
writeFileSync(`${folder}/versions.json`, `${JSON.stringify({ newest: names.at(-1), versions }, null, 2)}\n`);
