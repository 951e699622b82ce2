// What was found, by consequence: what forbids it, what is to be settled, what is worth knowing.
import { describe } from "../build/describe.js";
import { fieldAt } from "../form/faults.js";
import { button, el } from "../page/dom.js";
import { light } from "./lights.js";

const concerns = {
  safety: "Safety",
  performance: "Performance",
  supply: "Supply",
};

/** @type {[Finding["severity"], string][]} */
const groups = [
  ["fail", "Not like this"],
  ["caution", "Settle first"],
];

/** @param {Assessment} answer @param {Build} build */
export function findings({ findings: all }, build) {
  const of = (/** @type {Finding["severity"]} */ severity) => all.filter((finding) => finding.severity === severity);
  const serious = groups.flatMap(([severity, title]) => {
    const some = of(severity);
    return some.length === 0
      ? []
      : [
          el("h3", {}, `${title} (${some.length})`),
          el("ol", { class: "findings" }, ...some.map((finding) => item(finding, build))),
        ];
  });
  const infos = of("info");
  return [
    ...(serious.length > 0 ? serious : [el("p", { class: "clear" }, "Nothing stands against it.")]),
    infos.length > 0 &&
      el(
        "details",
        {},
        el("summary", {}, `Worth knowing (${infos.length})`),
        el("ol", { class: "findings" }, ...infos.map((finding) => item(finding, build))),
      ),
  ];
}

/** @param {Finding} finding @param {Build} build */
function item(finding, build) {
  const sign = finding.severity === "info" ? null : light(finding.severity);
  const field = fieldAt(finding.pointer);
  const where = describe(build, finding.pointer);
  const lead = button("Show the field", () => fieldAt(finding.pointer)?.focus(), {
    class: "lead",
    "aria-label": `Show the field: ${where}`,
  });
  return el(
    "li",
    { class: `finding ${finding.severity}` },
    el("p", { class: "finding-where" }, sign, `${finding.concern ? `${concerns[finding.concern]} · ` : ""}${where}`),
    el("p", { class: "finding-said" }, finding.message),
    finding.remedy && el("p", { class: "remedy" }, el("strong", {}, "Do this: "), finding.remedy),
    el(
      "details",
      {},
      el("summary", {}, "How it was judged"),
      el(
        "dl",
        {},
        ...pair("Workings", finding.workings),
        ...pair("Rests on", finding.source),
        ...pair("Rule", finding.rule),
        ...pair("Code", finding.code),
      ),
    ),
    field && lead,
  );
}

/** @param {string} name @param {string | undefined} said */
const pair = (name, said) => (said ? [el("dt", {}, name), el("dd", {}, said)] : []);
