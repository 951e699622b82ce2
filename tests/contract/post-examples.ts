// Posts every worked example with the types that the published contract gives, and reads the answers through them.
import { readdirSync, readFileSync } from "node:fs";
import { audit } from "./audits.js";
import type { components, paths } from "./generated/contract.js";
import { checkInline, matchKept } from "./kits.js";

type Build = components["schemas"]["Build"];
type Post = paths["/v1/assessments"]["post"];
type Assessment = Post["responses"][200]["content"]["application/json"];
type Problem = Post["responses"][422]["content"]["application/problem+json"];

const [service, folder, shop, key] = process.argv.slice(2);
if (service === undefined || folder === undefined || shop === undefined || key === undefined) {
  throw new Error("usage: post-examples <service> <folder of examples> <shop> <its key>");
}

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
  vehicle: {
    alternator: { ratedCurrent: "120 A", lowSpeedCurrent: "55 A", pulleyRatio: 2.7, idleSpeed: "750 rpm" },
    standbyLoad: "2 A",
    batteries: [
      { id: "starter", chemistry: "agm", reserveCapacity: "120 min", peukertExponent: 1.15 },
      { id: "rear", polarisation: [{ resistance: "3 mOhm", timeConstant: "10 s" }] },
    ],
    capacitors: [{ at: "bass", capacitance: "1 F" }],
  },
  runs: [
    { id: "charging", from: "starter", to: "rear", length: "9 ft", isolator: { kind: "dc-dc-charger", ratedCurrent: "40 A" } },
    { id: "feed", from: "rear", to: "bass", length: "3 ft", conductor: { size: "4 AWG", material: "copper" } },
  ],
  limits: { engineOffTime: "2 h" },
};

function told({ supply, runs }: Assessment): string {
  const lasting = supply.cases.map((one) => `${one.case} ${one.averageBalanceAmps} A for ${one.minutesToLimit ?? "ever"} min`);
  const stored = supply.batteries.map((battery) => `${battery.id} ${battery.usableAmpHours} Ah`);
  const held = supply.capacitors.map((capacitor) => `${capacitor.at} ${capacitor.holdsMilliseconds} ms`);
  const parted = runs.flatMap((run) => (run.isolator === undefined ? [] : [`${run.id} ${run.isolator.kind}`]));
  return [...lasting, ...stored, ...held, ...parted, `burst ${supply.burst?.lowestVolts ?? "none"}`].join(", ");
}

const examples = readdirSync(folder)
  .filter((file) => file.endsWith(".request.json"))
  .map((file): [string, Build] => [file, JSON.parse(readFileSync(`${folder}/${file}`, "utf8")) as Build]);
if (examples.length === 0) throw new Error("no examples");

for (const [name, build] of [...examples, ["typed literal", typed] as [string, Build]]) {
  const answer = await post(build);
  if (isProblem(answer)) throw new Error(`${name}: ${answer.detail}`);
  const hottest = Math.max(...answer.runs.map((run) => run.temperatureCelsius));
  console.log(`${name}: ${answer.verdict}, ${answer.runs.length} runs, hottest ${hottest.toFixed(1)} C, ${told(answer)}`);
}

type Batch = paths["/v1/assessments/batch"]["post"];
type Item = Batch["responses"][200]["content"]["application/json"][number];
const builds: Batch["requestBody"]["content"]["application/json"] = [typed, { ...typed, runs: [] }];
const batch = await fetch(`${service}/v1/assessments/batch`, {
  method: "POST",
  headers: { "content-type": "application/json" },
  body: JSON.stringify(builds),
});
const items = (await batch.json()) as Item[];
console.log(`batch: ${items.map((item) => `${item.line} ${item.assessment?.verdict ?? item.problem?.code}`).join(", ")}`);
if (items.map((item) => item.status).join() !== "200,422") throw new Error("the batch was not answered build by build");

const refused = await post({ ...typed, runs: [] });
if (!isProblem(refused) || refused.status !== 422 || refused.errors.length === 0) throw new Error("a build without runs was not refused");

console.log(await audit(service));
console.log(await checkInline(service));
console.log(await matchKept(service, shop, key));
