// The job's name and the units that it is written in.
import { el } from "../page/dom.js";
import { field } from "./field.js";

/** @param {import("./field.js").Page} page */
export function job(page) {
  const units = page.build().units ?? "us";
  const radio = (/** @type {Words["UnitSystem"]} */ value, /** @type {string} */ said) => {
    const input = el("input", {
      type: "radio",
      name: "units",
      value,
      change: () => page.reshape({ ...page.build(), units: value }, `units-${value}`),
    });
    input.id = `units-${value}`;
    input.checked = units === value;
    return el("label", { class: "radio" }, input, said);
  };
  return [
    field(page, "/name", { none: "if you like", extra: "wide" }),
    el(
      "fieldset",
      { class: "units" },
      el("legend", {}, "Write answers in"),
      radio("us", "feet, AWG"),
      radio("metric", "metres, mm²"),
    ),
  ];
}
