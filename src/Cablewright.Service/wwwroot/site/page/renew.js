// Shows a part of the page anew and keeps what a person is at: what is open stays open, and the focus does not get lost.

/** @param {Element} part @param {() => void} show */
export function renew(part, show) {
  const open = new Set([...part.querySelectorAll("details[open]")].map(keyOf));
  const held = document.activeElement;
  const section = held && part.contains(held) ? held.closest("section") : null;
  const id = held?.id ?? "";
  show();
  for (const details of part.querySelectorAll("details")) if (open.has(keyOf(details))) details.open = true;
  if (!section || (held && part.contains(held))) return;
  const again = id === "" ? null : document.getElementById(id);
  const heading = section.querySelector("h2");
  if (again) again.focus();
  else if (heading instanceof HTMLElement) heading.focus();
}

/** Which details they are: by where they stand and what they say. @param {Element} details */
function keyOf(details) {
  const around = details.closest("li")?.querySelector("p")?.textContent ?? "";
  return `${around} ${(details.querySelector("summary")?.textContent ?? "").replaceAll(/\d+/g, "")}`;
}
