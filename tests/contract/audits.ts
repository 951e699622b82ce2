// A bench audit with the types of the published contract.
import { expectStatus, send } from "./calls.js";
import type { paths } from "./generated/contract.js";

type Audit = paths["/v1/conductor-audits"]["post"];
type Report = Audit["requestBody"]["content"]["application/json"];
type Answer = Audit["responses"][200]["content"]["application/json"];

const report: Report = {
  claim: { size: "4 AWG", material: "copper" },
  strands: { count: 500, diameter: "0.2 mm", diameterUncertainty: "0.002 mm" },
  resistance: { resistance: "5.6 mOhm", length: "5 m", temperature: "21 C" },
};

export async function audit(service: string): Promise<string> {
  const answered = await send<Answer>("POST", `${service}/v1/conductor-audits`, report);
  expectStatus("audit", answered, 200);
  const { verdict, areaMm2, areas, metals, findings } = answered.body;
  const ways = areas.map((area) => `${area.way} ${area.areaMm2.estimate} mm2`);
  const possible = metals.filter((metal) => metal.possible).map((metal) => metal.material);
  return `audit: ${verdict ?? "no claim"}, ${areaMm2.least} to ${areaMm2.most} mm2 (${ways.join(", ")}), ${possible.join(" or ")}, ${findings.length} findings`;
}
