// Posts every worked example with the types that the published contract gives, and reads the answers through them.
import { readdirSync, readFileSync } from "node:fs";
import type { components, paths } from "./generated/contract.js";

type Build = components["schemas"]["Build"];
type Post = paths["/v1/assessments"]["post"];
type Assessment = Post["responses"][200]["content"]["application/json"];
type Problem = Post["responses"][422]["content"]["application/problem+json"];

const [service, folder] = process.argv.slice(2);
if (service === undefined || folder === undefined) throw new Error("usage: post-examples <service> <folder of examples>");

async function post(build: Build): Promise<Assessment | Problem> {
  const answer = await fetch(`${service}/v1/assessments`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(build),
  });
  return (await answer.json()) as Assessment | Problem;
}

function isProblem(answer: Assessment | Problem): answer is Problem {
  return "traceId" in answer;
}

const typed: Build = {
  amplifiers: [{ id: "bass", ratedOutput: "500 W", amplifierClass: "D" }],
  vehicle: { batteries: [{ id: "starter", chemistry: "agm" }] },
  runs: [{ id: "feed", from: "starter", to: "bass", length: "12 ft", conductor: { size: "4 AWG", material: "copper" } }],
};

const examples = readdirSync(folder)
  .filter((file) => file.endsWith(".request.json"))
  .map((file): [string, Build] => [file, JSON.parse(readFileSync(`${folder}/${file}`, "utf8")) as Build]);
if (examples.length === 0) throw new Error("no examples");

for (const [name, build] of [...examples, ["typed literal", typed] as [string, Build]]) {
  const answer = await post(build);
  if (isProblem(answer)) throw new Error(`${name}: ${answer.detail}`);
  const hottest = Math.max(...answer.runs.map((run) => run.temperatureCelsius));
  console.log(`${name}: ${answer.verdict}, ${answer.runs.length} runs, hottest ${hottest.toFixed(1)} C`);
}

const refused = await post({ ...typed, runs: [] });
if (!isProblem(refused) || refused.status !== 422 || refused.errors.length === 0) throw new Error("a build without runs was not refused");
