// What would cure a build that fails: each change is tried out already, and can be taken over at a click.
import { put, take } from "../build/pointers.js";
import { valueOf } from "../build/members.js";
import { button, el } from "../page/dom.js";
import { light, wordFor } from "./lights.js";

/** @param {Assessment} answer @param {import("../form/field.js").Page} page */
export function changes({ feasibility }, page) {
  if (!feasibility) return [];
  const isCured = feasibility.changes.length > 0;
  const [first, ...others] = isCured ? feasibility.changes : feasibility.nearest ? [feasibility.nearest] : [];
  if (!first) return [];
  return [
    el("h3", {}, isCured ? "What cures it" : "What comes nearest"),
    el("ol", { class: "changes" }, item(first, true, page)),
    others.length > 0 &&
      el(
        "details",
        {},
        el("summary", {}, `Other ways (${others.length})`),
        el("ol", { class: "changes" }, ...others.map((change) => item(change, false, page))),
      ),
  ];
}

/** @param {Change} change @param {boolean} isFirst @param {import("../form/field.js").Page} page */
function item(change, isFirst, page) {
  const apply = button("Change it so", () => page.reshape(applied(page.build(), change)), {
    class: isFirst ? "primary" : "",
    "aria-label": `Change it so: ${change.message}`,
  });
  return el(
    "li",
    { class: "change" },
    el("p", {}, change.message),
    el("p", { class: "after" }, "After it: ", light(change.verdict), el("strong", {}, wordFor(change.verdict))),
    apply,
  );
}

/** The build after a change. @param {Build} build @param {Change} change @returns {Build} */
export const applied = (build, change) =>
  change.edits.reduce(
    (so, edit) => (edit.to === undefined ? take(so, edit.pointer) : put(so, edit.pointer, valueOf(edit.pointer, edit.to))),
    build,
  );
