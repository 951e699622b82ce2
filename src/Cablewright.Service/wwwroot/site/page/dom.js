// Makes elements. Text goes in as text only, so that no name in a build becomes markup.

/**
 * @typedef {string | Node | null | undefined | false} Inside
 * @typedef {Record<string, string | number | boolean | undefined | EventListener>} Facts
 */

/** An element: a fact that is a function listens to the event of its name, any other is an attribute.
 * @template {keyof HTMLElementTagNameMap} Tag
 * @param {Tag} tag @param {Facts} [facts] @param {...Inside} inside @returns {HTMLElementTagNameMap[Tag]} */
export function el(tag, facts = {}, ...inside) {
  const element = document.createElement(tag);
  give(element, facts);
  element.append(...shown(inside));
  return element;
}

/** @param {Inside[]} inside @returns {(string | Node)[]} */
const shown = (inside) => inside.filter((part) => part instanceof Node || typeof part === "string");

/** @param {Element} element @param {Facts} facts */
function give(element, facts) {
  for (const [name, value] of Object.entries(facts)) {
    if (typeof value === "function") element.addEventListener(name, value);
    else if (value !== undefined && value !== false) element.setAttribute(name, value === true ? "" : String(value));
  }
}

/** A drawn sign. @param {string} viewBox @param {[string, Record<string, string>][]} parts @param {Facts} [facts] */
export function sign(viewBox, parts, facts = {}) {
  const space = "http://www.w3.org/2000/svg";
  const svg = document.createElementNS(space, "svg");
  give(svg, { viewBox, "aria-hidden": "true", focusable: "false", ...facts });
  for (const [tag, attributes] of parts) {
    const part = document.createElementNS(space, tag);
    give(part, attributes);
    svg.append(part);
  }
  return svg;
}

/** What the page has under that id. @param {string} id */
export function byId(id) {
  const element = document.getElementById(id);
  if (!element) throw new Error(`the page has no #${id}`);
  return element;
}

/** Shows other things in an element. @param {Element} element @param {...Inside} inside */
export const show = (element, ...inside) => element.replaceChildren(...shown(inside));

/** @param {string} label @param {EventListener} click @param {Facts} [facts] */
export const button = (label, click, facts = {}) => el("button", { type: "button", click, ...facts }, label);
