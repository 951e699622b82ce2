// The head of the answer: what to do, in a line; the lights; the summary.
import { button, byId, el } from "../page/dom.js";
import { light, lightsOf, wordFor } from "./lights.js";

/** @param {Assessment} answer */
export function headline({ verdict, findings }) {
  const count = findings.filter((finding) => finding.severity === "caution").length;
  if (verdict === "fail") return "Stop: do not build it like this";
  if (verdict === "caution") return count === 1 ? "Settle one thing first" : `Settle ${count} things first`;
  return "Good: it can be built like this";
}

/** @param {Assessment} answer */
export const verdict = (answer) =>
  el(
    "div",
    { class: `verdict ${answer.verdict}` },
    light(answer.verdict, "big"),
    el("p", { class: "headline" }, headline(answer)),
  );

/** What a screen reader is told when the answer changes. @param {Assessment} answer */
export const spoken = (answer) =>
  `${headline(answer)}. ${lightsOf(answer)
    .map(([name, state]) => `${name}: ${wordFor(state)}`)
    .join(", ")}.`;

/** The first thing that is wrong, and what cures it. @param {Assessment} answer */
export function worst({ findings }) {
  const [first, ...others] = findings.filter((finding) => finding.severity !== "info");
  if (!first) return null;
  const toOthers = button(`and ${others.length} more`, () => byId("findings-title").focus(), { class: "more" });
  return el(
    "div",
    { class: `worst ${first.severity}` },
    el("h3", {}, first.severity === "fail" ? "What is wrong" : "What to settle"),
    el("p", {}, first.message),
    first.remedy && el("p", { class: "remedy" }, el("strong", {}, "Do this: "), first.remedy),
    others.length > 0 && toOthers,
  );
}
