// Whatever the build states that no field above shows: answers to questions, and what came with a link.
import { describe } from "../build/describe.js";
import { leaves } from "../build/pointers.js";
import { button, el } from "../page/dom.js";
import { field, idOf } from "./field.js";

/** Members that the form takes care of without a field. */
const unseen = /^\/(units|ruleset)$|\/(id|from|to|side|fitted|at)$/;

/** @param {import("./field.js").Page} page */
export function extras(page) {
  const build = page.build();
  const isShown = (/** @type {string} */ pointer) => {
    const shown = document.getElementById(idOf(pointer));
    return shown !== null && !shown.closest("#form-extras, #ask-next");
  };
  return leaves(build)
    .map(([pointer]) => pointer)
    .filter((pointer) => !unseen.test(pointer) && !isShown(pointer) && !isSeat(pointer, build))
    .map((pointer) => {
      const what = describe(build, pointer);
      const leaveOut = button("Leave out", () => page.set(pointer, undefined), {
        class: "remove",
        "aria-label": `Leave out: ${what}`,
      });
      return el("div", { class: "extra" }, field(page, pointer, { label: what }), leaveOut);
    });
}

/** @param {string} pointer @param {Build} build */
const isSeat = (pointer, build) =>
  /^\/runs\/\d+\/engineBayLength$/.test(pointer) &&
  (build.runs[Number(pointer.split("/")[2])]?.engineBayLength ?? "").startsWith("0 ");
