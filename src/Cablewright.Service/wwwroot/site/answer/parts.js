// The list for the shop: what decides first, small parts in a line.
import { families, materials } from "../build/words.js";
import { el } from "../page/dom.js";
import { length, lengthToBuy, size } from "./figures.js";

/** What one looks for first; the rest is small parts. */
const decisive = /^(power wire|ground wire|fuse|distribution block)/;

/** @param {Assessment} answer @param {Words["UnitSystem"]} units */
export function parts({ materials: lines, verdict }, units) {
  const isWrong = verdict === "fail";
  const small = lines.filter((line) => !decisive.test(line.item));
  const said = small.map((line) => `${amount(line, units)} ${what(line)}`).join(", ");
  return [
    el("h3", {}, isWrong ? "What is in it now: do not buy this" : "What to buy"),
    el(
      "ul",
      { class: isWrong ? "parts wrong" : "parts" },
      ...lines.filter((line) => decisive.test(line.item)).map((line) => part(line, units)),
    ),
    !isWrong && said !== "" && el("p", { class: "small-parts" }, el("strong", {}, "Small parts: "), `${said}.`),
  ];
}

/** @param {MaterialLine} line @param {Words["UnitSystem"]} units */
function part(line, units) {
  const { cutLengthMetres: cut, lengthMetres: laid } = line;
  const lies = cut === undefined || laid === undefined ? "" : `${length(laid, units)} as it lies`;
  return el(
    "li",
    {},
    el("span", { class: "amount" }, amount(line, units)),
    el("span", { class: "what" }, what(line), lies && el("small", {}, lies)),
  );
}

/** @param {MaterialLine} line @param {Words["UnitSystem"]} units */
function amount({ cutLengthMetres, lengthMetres, count }, units) {
  const bought = cutLengthMetres ?? lengthMetres;
  return bought === undefined ? `${count} ×` : lengthToBuy(bought, units);
}

/** @param {MaterialLine} line */
function what({ ratingAmps, family, size: gauge, material, item }) {
  const words = [
    ratingAmps === undefined ? undefined : `${ratingAmps} A`,
    family && families[family],
    gauge && size(gauge),
    material && materials[material],
    item,
  ];
  return words.filter(Boolean).join(" ");
}
