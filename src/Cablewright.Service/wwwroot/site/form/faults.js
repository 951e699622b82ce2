// Shows each fault of a build beside the field that it belongs to, and the rest above the form.
import { describe } from "../build/describe.js";
import { get } from "../build/pointers.js";
import { byId, el, show } from "../page/dom.js";

/** The field nearest to a pointer: its own, else the one that it lies below, else the first below it.
 * @param {string} pointer @returns {HTMLElement | undefined} */
export function fieldAt(pointer) {
  const fields = [...document.querySelectorAll("[data-pointer]")].filter((field) => field instanceof HTMLElement);
  for (let at = pointer; at !== ""; at = at.slice(0, at.lastIndexOf("/"))) {
    const own = fields.find((field) => field.dataset.pointer === at);
    if (own) return own;
    const below = fields.find((field) => field.dataset.pointer?.startsWith(`${at}/`));
    if (below && at.split("/").length > 2) return below;
  }
  return undefined;
}

/** Takes every fault off. */
export function clearFaults() {
  for (const field of document.querySelectorAll("[aria-invalid]")) field.removeAttribute("aria-invalid");
  for (const fault of document.querySelectorAll(".fault")) fault.replaceChildren();
  show(byId("faults"));
}

/** @param {Problem} problem @param {Build} build @returns {number} how many are shown */
export function showFaults(problem, build) {
  clearFaults();
  /** @type {HTMLElement[]} */
  const others = [];
  const told = new Set(problem.errors.map((error) => error.pointer));
  for (const error of problem.errors) {
    const named = nameOf(build, error.pointer);
    if (named && told.has(named)) continue;
    const field = fieldAt(named ?? error.pointer);
    const said = sentence(error);
    const place = field && document.getElementById(`${field.id}-fault`);
    if (field && place) {
      field.setAttribute("aria-invalid", "true");
      place.append(place.childNodes.length > 0 ? ` ${said}` : said);
    } else others.push(el("li", {}, `${describe(build, error.pointer)}: ${said}`));
  }
  if (problem.errors.length === 0) others.push(el("li", {}, problem.detail));
  show(byId("faults"), others.length > 0 && el("ul", {}, ...others));
  return Math.max(problem.errors.length, 1);
}

/** Where a run's end is an amplifier, what is wrong with its name belongs to the amplifier's own field.
 * @param {Build} build @param {string} pointer @returns {string | undefined} */
function nameOf(build, pointer) {
  if (!/^\/runs\/\d+\/(from|to)$/.test(pointer)) return undefined;
  const index = build.amplifiers.findIndex((amplifier) => amplifier.id === get(build, pointer));
  return index < 0 ? undefined : `/amplifiers/${index}/id`;
}

/** @param {Problem["errors"][number]} error */
function sentence({ detail, accepted }) {
  const said = `${detail.charAt(0).toUpperCase()}${detail.slice(1).replace(/\.$/, "")}.`;
  return accepted ? `${said} Right would be: ${accepted.replace(/\.$/, "")}.` : said;
}
