// The wiring drawing of the service, as an image: nothing in it can run. A service that draws none is not asked again.
import { post } from "../page/asker.js";
import { byId, el, show } from "../page/dom.js";

/** @type {AbortController | undefined} */
let call;
let isDrawn = true;
/** @type {string | undefined} */
let address;

/** @param {Build} build @param {string} said what the drawing shows, for those who do not see it */
export async function draw(build, said) {
  call?.abort();
  if (!isDrawn) return;
  call = new AbortController();
  const { signal } = call;
  try {
    const response = await post(build, "image/svg+xml", signal);
    isDrawn = response.status !== 406;
    const drawing = response.ok ? await response.blob() : undefined;
    if (!signal.aborted) put(drawing, said);
  } catch {
    if (!signal.aborted) put(undefined, said);
  }
}

/** @param {Blob | undefined} drawing @param {string} said */
function put(drawing, said) {
  if (address) URL.revokeObjectURL(address);
  address = drawing && URL.createObjectURL(drawing);
  byId("section-drawing").hidden = !address;
  if (!address) return show(byId("drawing"));
  const image = el("img", { src: address, alt: said });
  show(byId("drawing"), image, el("a", { href: address, download: "wiring.svg", class: "lead" }, "Save the drawing"));
}
