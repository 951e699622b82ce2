// What was assumed, and the cautions that every answer carries.
import { describe } from "../build/describe.js";
import { el } from "../page/dom.js";

/** @param {Assessment} answer @param {Build} build */
export function assumptions({ assumptions: all }, build) {
  if (all.length === 0) return [el("p", {}, "Nothing was assumed.")];
  return [
    el(
      "details",
      {},
      el("summary", {}, `${all.length} values were not stated and were assumed`),
      el(
        "ul",
        { class: "assumptions" },
        ...all.map(({ pointer, value, reason, source }) =>
          el(
            "li",
            {},
            el("strong", {}, `${describe(build, pointer)}: `),
            `${value}. `,
            el("span", { class: "why" }, `${reason}; ${source}`),
          ),
        ),
      ),
    ),
  ];
}

/** @param {Assessment} answer */
export const cautions = ({ safetyNotes }) => [el("ul", { class: "cautions" }, ...safetyNotes.map((note) => el("li", {}, note)))];
