// Copies text and says so on the button.
import { byId } from "./dom.js";

/** @param {HTMLElement} button @param {() => string} text */
export async function copyFrom(button, text) {
  const label = button.dataset.label ?? button.textContent ?? "";
  button.dataset.label = label;
  let said = "Copied";
  try {
    await navigator.clipboard.writeText(text());
  } catch {
    said = "Not copied: the browser does not allow it";
  }
  button.textContent = said;
  byId("live").textContent = said;
  setTimeout(() => void (button.textContent = label), 2000);
}
