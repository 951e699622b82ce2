// The three lights: each a shape, a word and a colour, so that no one of them has to be seen.
import { el, sign } from "../page/dom.js";

/** @typedef {Words["Verdict"] | "unjudged"} State */

/** @type {Record<State, { word: string, parts: [string, Record<string, string>][] }>} */
const states = {
  pass: {
    word: "Good",
    parts: [
      ["circle", { cx: "12", cy: "12", r: "11" }],
      ["path", { d: "M6.5 12.5l3.8 3.8 7.2-8", class: "mark" }],
    ],
  },
  caution: {
    word: "Check",
    parts: [
      ["path", { d: "M12 1.2 23.4 22H.6z" }],
      ["path", { d: "M12 8.5v6.2M12 17.4v1.6", class: "mark" }],
    ],
  },
  fail: {
    word: "Stop",
    parts: [
      ["path", { d: "M7.4 1h9.2L23 7.4v9.2L16.6 23H7.4L1 16.6V7.4z" }],
      ["path", { d: "M8 8l8 8M16 8l-8 8", class: "mark" }],
    ],
  },
  unjudged: {
    word: "Not judged",
    parts: [
      ["circle", { cx: "12", cy: "12", r: "10", class: "open" }],
      ["path", { d: "M7.5 12h9", class: "mark" }],
    ],
  },
};

/** @param {State} state @param {string} [className] */
export const light = (state, className = "") =>
  sign("0 0 24 24", states[state].parts, {
    class: `light ${state} ${className}`,
  });

/** @param {State} state */
export const wordFor = (state) => states[state].word;

/** The supply is judged once the alternator, or something that fails without it, is known.
 * @param {Assessment} answer @returns {[string, State, string][]} */
export function lightsOf({ verdicts, supply }) {
  const isSupplyKnown = verdicts.supply !== "pass" || supply.alternatorAvailableAmps !== undefined;
  return [
    ["Safety", verdicts.safety, "fire and fuses"],
    ["Performance", verdicts.performance, "volts that arrive"],
    ["Supply", isSupplyKnown ? verdicts.supply : "unjudged", isSupplyKnown ? "charging" : "say the alternator"],
  ];
}

/** @param {Assessment} answer */
export const lights = (answer) =>
  el(
    "ul",
    { class: "lights", "aria-label": "Lights" },
    ...lightsOf(answer).map(([name, state, about]) =>
      el(
        "li",
        { class: state },
        light(state),
        el("span", { class: "light-name" }, name),
        el("strong", {}, wordFor(state)),
        el("span", { class: "light-about" }, about),
      ),
    ),
  );
