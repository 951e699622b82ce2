// For those who build on the service: this build as JSON, and the call that answers it.
import { byId, show } from "../page/dom.js";

/** @param {Build} build */
export function showJson(build) {
  show(byId("json"), JSON.stringify(build, null, 2));
  show(byId("curl"), curl(build));
}

/** A line for a shell; a quote inside ends the quoted text, stands by itself and begins it again. @param {Build} build */
export function curl(build) {
  const quoted = JSON.stringify(build).replaceAll("'", "'\\''");
  return `curl -H 'Content-Type: application/json' --data '${quoted}' ${new URL("v1/assessments", document.baseURI).href}`;
}
