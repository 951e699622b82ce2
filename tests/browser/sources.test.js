// The page's scripts hold their types, against the published contract, and are formatted.
import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { test } from "node:test";
import { promisify } from "node:util";

const run = promisify(execFile);

/** @param {string[]} command */
async function passes(command) {
  const [program = "", ...rest] = command;
  await run(program, rest).catch((/** @type {{ stdout: string, stderr: string }} */ failed) =>
    assert.fail(failed.stdout + failed.stderr),
  );
}

test("types hold against the published contract", () => passes(["npm", "run", "--silent", "types"]));

test("sources are formatted", () => passes(["npm", "run", "--silent", "formatted"]));
