// One labelled field that stands for one member of the build, with room for what is wrong with it.
import { get } from "../build/pointers.js";
import { member } from "../build/members.js";
import { typed, typedSize } from "../build/typed.js";
import { sizes, wordsOf } from "../build/words.js";
import { el } from "../page/dom.js";

/**
 * What a field needs of the page. `set` takes `undefined` for a member that is to be left out; `reshape` shows another build.
 * @typedef {{
 *   build: () => Build,
 *   answer: () => Assessment | undefined,
 *   set: (pointer: string, value: unknown) => void,
 *   reshape: (build: Build, focus?: string) => void,
 * }} Page
 * @typedef {{ label?: string, hint?: string, none?: string, extra?: string, list?: Record<string, string>, prefix?: string }} Look
 */

/** @param {string} pointer */
export const idOf = (pointer) => `field${pointer.replaceAll(/[^A-Za-z0-9]+/g, "-")}`;

/** A field for a member, of the kind that the member is. @param {Page} page @param {string} pointer @param {Look} [look] */
export function field(page, pointer, look = {}) {
  const { kind } = member(pointer);
  if (look.list || kind === "word") return framed(pointer, look, choice(page, pointer, look));
  if (kind === "size") return framed(pointer, look, sizeChoice(page, pointer, look));
  if (kind === "flag") return framed(pointer, look, flag(page, pointer));
  return framed(pointer, look, text(page, pointer, look));
}

/** The label, what is typed into, the hint and the place of a fault. @param {string} pointer @param {Look} look
 * @param {HTMLElement} control */
export function framed(pointer, look, control) {
  const id = (look.prefix ?? "") + idOf(pointer);
  control.id = id;
  if (!look.prefix) control.dataset.pointer = pointer;
  control.setAttribute("aria-describedby", `${id}-fault ${id}-hint`);
  return el(
    "div",
    { class: `field ${look.extra ?? ""}` },
    el("label", { for: id }, look.label ?? member(pointer).label),
    control,
    el("p", { class: "hint", id: `${id}-hint` }, look.hint ?? ""),
    el("p", { class: "fault", id: `${id}-fault` }),
  );
}

/** @param {Page} page @param {string} pointer @param {Look} look */
function text(page, pointer, look) {
  const { kind, unit, like } = member(pointer);
  const isNumber = kind === "count" || kind === "number";
  const read = (/** @type {string} */ said) => (isNumber ? said.trim() : typed(said, unit, page.build().units ?? "us"));
  const input = el("input", {
    type: "text",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    placeholder: look.none ?? (like && `such as ${like}`),
    value: String(get(page.build(), pointer) ?? ""),
  });
  input.addEventListener("input", () => {
    const said = read(input.value);
    page.set(
      pointer,
      said === "" ? undefined : isNumber && /^\d+(\.\d+)?$/.test(said) ? Number(said) : kind === "text" ? input.value : said,
    );
  });
  // What was read is shown, so that a bare number is seen with the unit that it was taken in.
  input.addEventListener("change", () => {
    if (kind !== "text") input.value = read(input.value);
  });
  return input;
}

/** @param {Page} page @param {string} pointer @param {Look} look */
function choice(page, pointer, look) {
  const words = look.list ?? wordsOf[pointer.split("/").at(-1) ?? ""] ?? {};
  const given = get(page.build(), pointer);
  const all = given === undefined || Object.hasOwn(words, given) ? words : { ...words, [given]: String(given) };
  const select = el(
    "select",
    {
      change: () => page.set(pointer, select.value === "" ? undefined : select.value),
    },
    el("option", { value: "" }, look.none ?? "not known"),
    ...Object.entries(all).map(([word, said]) => el("option", { value: word }, said)),
  );
  select.value = given ?? "";
  return select;
}

/** @param {Page} page @param {string} pointer @param {Look} look */
function sizeChoice(page, pointer, look) {
  const given = get(page.build(), pointer);
  const offered = sizes[page.build().units ?? "us"];
  const all = given === undefined || offered.includes(typedSize(given)) ? offered : [String(given), ...offered];
  const select = el(
    "select",
    {
      change: () => page.set(pointer, select.value === "" ? undefined : select.value),
    },
    el("option", { value: "" }, look.none ?? "pick for me"),
    ...all.map((size) => el("option", { value: size }, size.replace("mm2", "mm²"))),
  );
  select.value = given === undefined ? "" : offered.includes(typedSize(given)) ? typedSize(given) : String(given);
  return select;
}

/** @param {Page} page @param {string} pointer */
function flag(page, pointer) {
  const select = el(
    "select",
    {
      change: () => page.set(pointer, select.value === "" ? undefined : select.value === "true"),
    },
    el("option", { value: "" }, "not known"),
    el("option", { value: "true" }, "yes"),
    el("option", { value: "false" }, "no"),
  );
  select.value = String(get(page.build(), pointer) ?? "");
  return select;
}
