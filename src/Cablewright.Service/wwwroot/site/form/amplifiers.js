// The amplifiers: name, power, class, fuses of their own.
import { names } from "../build/places.js";
import { addAmplifier, removeAmplifier, rename } from "../build/reshape.js";
import { button, el } from "../page/dom.js";
import { field, framed, idOf } from "./field.js";

/** Without a shop's key a build has at most this many. */
const most = 16;

/** @param {import("./field.js").Page} page */
export function amplifiers(page) {
  const all = page.build().amplifiers;
  const add = button(
    "Add an amplifier",
    () => page.reshape(addAmplifier(page.build()), `/amplifiers/${all.length}/ratedOutput`),
    {
      class: "add",
    },
  );
  return [...all.map((amplifier, index) => card(page, amplifier.id, index)), all.length < most && add];
}

/** @param {import("./field.js").Page} page @param {string} id @param {number} index */
function card(page, id, index) {
  const at = `/amplifiers/${index}`;
  const isOnly = page.build().amplifiers.length === 1;
  const remove = button("Remove", () => page.reshape(removeAmplifier(page.build(), id), "/amplifiers/0/id"), {
    class: "remove",
    "aria-label": `Remove amplifier ${id}`,
  });
  return el(
    "fieldset",
    { class: "card" },
    el("legend", {}, `Amplifier ${index + 1}`),
    el(
      "div",
      { class: "fields" },
      field(page, `${at}/ratedOutput`, {
        hint: "All channels together",
      }),
      field(page, `${at}/amplifierClass`),
      field(page, `${at}/fuse`, { none: "not known", hint: "Added up" }),
      nameField(page, at, id),
    ),
    !isOnly && remove,
  );
}

/** A name is a place that runs lead to: they follow it. @param {import("./field.js").Page} page @param {string} at @param {string} id */
export function nameField(page, at, id) {
  const pointer = `${at}/id`;
  const input = el("input", {
    type: "text",
    autocomplete: "off",
    spellcheck: "false",
    value: id,
  });
  input.addEventListener("change", () => {
    const wanted = input.value.trim().replaceAll(/\s+/g, "-");
    const isTaken = wanted !== id && names(page.build()).has(wanted);
    const fault = document.getElementById(`${idOf(pointer)}-fault`);
    if (wanted === "" || isTaken) {
      input.setAttribute("aria-invalid", "true");
      if (fault) fault.textContent = isTaken ? `There is something else called ${wanted}.` : "It needs a name, such as bass.";
    } else if (wanted !== id) page.reshape(rename(page.build(), id, wanted), pointer);
  });
  return framed(pointer, { hint: "" }, input);
}
