// The whole form of a build: what plays, how it is wired, the vehicle, and whatever else was told.
import { byId, show } from "../page/dom.js";
import { amplifiers } from "./amplifiers.js";
import { cables } from "./cables.js";
import { extras } from "./extras.js";
import { job } from "./job.js";
import { vehicle } from "./vehicle.js";

/** Shows it. @param {import("./field.js").Page} page */
export function showForm(page) {
  show(byId("form-job"), ...job(page));
  show(byId("form-amplifiers"), ...amplifiers(page));
  show(byId("form-cables"), ...cables(page));
  show(byId("form-vehicle"), ...vehicle(page));
  showExtras(page);
}

/** Shows what the rest of the form has no field for. @param {import("./field.js").Page} page */
export function showExtras(page) {
  const told = extras(page);
  show(byId("form-extras"), ...told);
  byId("section-extras").hidden = told.length === 0;
}
