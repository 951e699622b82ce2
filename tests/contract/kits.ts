// Kits with the types of the published contract: kept by a shop, held against a build one by one and all together.
import { expectStatus, send } from "./calls.js";
import type { components, paths } from "./generated/contract.js";

type Build = components["schemas"]["Build"];
type Kit = components["schemas"]["Kit"];
type Check = paths["/v1/kit-checks"]["post"];
type CheckRequest = Check["requestBody"]["content"]["application/json"];
type CheckAnswer = Check["responses"][200]["content"]["application/json"];
type Match = paths["/v1/kit-matches"]["post"];
type MatchRequest = Match["requestBody"]["content"]["application/json"];
type MatchAnswer = Match["responses"][200]["content"]["application/json"];
type Put = paths["/v1/shops/{shop}/kits/{sku}"]["put"];
type Page = paths["/v1/shops/{shop}/kits"]["get"]["responses"][200]["content"]["application/json"];

const build: Build = {
  vehicle: { batteries: [{ id: "starter" }] },
  amplifiers: [{ id: "bass", ratedOutput: "500 W", efficiency: "80 %" }],
  runs: [
    { id: "feed", from: "starter", to: "bass", length: "12 ft", route: "cabin" },
    { id: "ground", from: "bass", to: "body", length: "2 ft" },
  ],
};

const thin: Kit = {
  name: "Kit of 14 AWG",
  price: 19.9,
  currency: "EUR",
  parts: [
    { kind: "power-wire", size: "14 AWG", material: "copper", length: "17 ft", colour: "red" },
    { kind: "ground-wire", size: "14 AWG", material: "copper", length: "3 ft", colour: "red" },
    { kind: "fuse", rating: "60 A", family: "ANL" },
  ],
};

const stout: Kit = {
  ...thin,
  name: "Kit of 1/0 AWG",
  price: 99.9,
  parts: [
    { kind: "power-wire", size: "1/0 AWG", material: "copper", length: "17 ft", colour: "red" },
    { kind: "ground-wire", size: "1/0 AWG", material: "copper", length: "3 ft", colour: "black" },
    { kind: "fuse", rating: "80 A", family: "ANL", largestConductor: "1/0 AWG" },
    { kind: "ring-terminal", size: "1/0 AWG", count: 2 },
    { kind: "turn-on-lead", length: "17 ft" },
    { kind: "signal-interconnect", length: "17 ft" },
  ],
};

export async function checkInline(service: string): Promise<string> {
  const asked: CheckRequest = { build, kit: thin };
  const answered = await send<CheckAnswer>("POST", `${service}/v1/kit-checks`, asked);
  expectStatus("kit check", answered, 200);
  const { verdict, findings, needs, trial } = answered.body;
  if (verdict !== "does-not-serve") throw new Error(`the thin kit ${verdict}`);
  const bought = needs.map((need) => `${need.item} ${need.size ?? need.ratingAmps ?? ""}`.trim());
  return `kit check: ${verdict}, ${findings.map((finding) => finding.code).join(", ")}; needs ${bought.join(", ")}; tried: ${trial?.verdict ?? "no"}`;
}

export async function matchKept(service: string, shop: string, key: string): Promise<string> {
  const own = `${service}/v1/shops/${shop}/kits`;
  for (const [sku, kit] of [["thin", thin], ["stout", stout]] as const) {
    const kept = await send<Put["responses"][201]["content"]["application/json"]>("PUT", `${own}/${sku}`, kit, key);
    expectStatus(sku, kept, 201);
    if (kept.body.sku !== sku) throw new Error(`${sku} was kept as ${kept.body.sku}`);
  }

  const page = (await (await fetch(own, { headers: { authorization: `Bearer ${key}` } })).json()) as Page;
  const named: CheckRequest = { build, shop, sku: "stout" };
  const checked = await send<CheckAnswer>("POST", `${service}/v1/kit-checks`, named, key);
  expectStatus("check of a kept kit", checked, 200);
  if (checked.body.revision !== page.revision) throw new Error("the check names another revision than the list");

  const asked: MatchRequest = { build, shop, limit: 10 };
  const matched = await send<MatchAnswer>("POST", `${service}/v1/kit-matches`, asked, key);
  expectStatus("kit matches", matched, 200);
  const found = matched.body.kits.map((kit) => `${kit.sku} ${kit.verdict} ${kit.price} ${kit.currency}`);
  if (matched.body.kits.map((kit) => kit.sku).join() !== "stout,thin") throw new Error(`matches: ${found.join(", ")}`);
  expectStatus("kit matches without a key", await send("POST", `${service}/v1/kit-matches`, asked), 401);
  return `kit matches: ${found.join(", ")}; revision ${matched.body.revision} of ${page.kits.length} kits`;
}
