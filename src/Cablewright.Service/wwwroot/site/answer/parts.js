// The list for the shop.
import { families, materials } from "../build/words.js";
import { el } from "../page/dom.js";
import { length, lengthToBuy, size } from "./figures.js";

/** @param {Assessment} answer @param {Words["UnitSystem"]} units */
export function parts({ materials: lines, verdict }, units) {
  const isWrong = verdict === "fail";
  return [
    el("h3", {}, isWrong ? "What is in it now: do not buy this" : "What to buy"),
    el("ul", { class: isWrong ? "parts wrong" : "parts" }, ...lines.map((line) => part(line, units))),
  ];
}

/** @param {MaterialLine} line @param {Words["UnitSystem"]} units */
function part(line, units) {
  const bought = line.cutLengthMetres ?? line.lengthMetres;
  const amount = bought === undefined ? `${line.count} ×` : lengthToBuy(bought, units);
  const what = [
    line.ratingAmps === undefined ? undefined : `${line.ratingAmps} A`,
    line.family && families[line.family],
    line.size && size(line.size),
    line.material && materials[line.material],
    line.item,
  ];
  const laid =
    line.cutLengthMetres === undefined || line.lengthMetres === undefined ? "" : `${length(line.lengthMetres, units)} as it lies`;
  return el(
    "li",
    { class: line.item.split(" ")[0] ?? "" },
    el("span", { class: "amount" }, amount),
    el("span", { class: "what" }, what.filter(Boolean).join(" "), laid && el("small", {}, laid)),
  );
}
