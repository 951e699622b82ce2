// Each run as a tag: what it is, what it carries, what it loses. Another size can be tried there.
import { runTitle } from "../build/describe.js";
import { get, put, take } from "../build/pointers.js";
import { families, materials } from "../build/words.js";
import { field } from "../form/field.js";
import { el } from "../page/dom.js";
import { length, number, size, temperature, time, volts } from "./figures.js";

/** @param {Assessment} answer @param {import("../form/field.js").Page} page */
export function runs(answer, page) {
  return [el("ul", { class: "tags" }, ...answer.runs.map((run) => tag(run, page)))];
}

/** @param {RunResult} run @param {import("../form/field.js").Page} page */
function tag(run, page) {
  const build = page.build();
  const units = build.units ?? "us";
  const { conductor, fuse } = run;
  const index = build.runs.findIndex((one) => one.id === run.id);
  const cable = `${conductor.count > 1 ? `${conductor.count} × ` : ""}${size(conductor.size)} ${materials[conductor.material]}`;
  const share = run.utilisation === undefined ? undefined : `${Math.round(run.utilisation * 100)} % of what it may carry`;
  return el(
    "li",
    { class: `tag ${run.side}` },
    el("p", { class: "tag-title" }, runTitle(run)),
    el(
      "p",
      { class: "tag-cable" },
      `${length(run.lengthMetres, units)} of ${cable}`,
      el("span", { class: "decided" }, conductor.decided),
    ),
    el(
      "dl",
      {},
      ...pair("At full volume", `${number(run.peakCurrentAmps)} A`),
      ...pair("Loses", volts(run.dropVolts)),
      ...pair("Warms to", `${temperature(run.temperatureCelsius, units)}${share ? `, ${share}` : ""}`),
      ...(fuse ? pair("Fuse", `${fuse.ratingAmps} A ${families[fuse.family]}, ${fuse.decided}`) : []),
      ...(fuse?.opensSeconds === undefined || fuse.conductorWithstandSeconds === undefined
        ? []
        : pair("Short circuit", `opens in ${time(fuse.opensSeconds)}; cable stands ${time(fuse.conductorWithstandSeconds)}`)),
    ),
    index >= 0 && trial(page, index),
  );
}

/** @param {import("../form/field.js").Page} page @param {number} index */
function trial(page, index) {
  const pointer = `/runs/${index}/conductor/size`;
  const set = (/** @type {string} */ _, /** @type {unknown} */ value) => {
    const build = page.build();
    page.reshape(value === undefined ? take(build, pointer) : put(build, pointer, value), "tag");
  };
  const isGiven = get(page.build(), pointer) !== undefined;
  return field({ ...page, set }, pointer, {
    prefix: "try-",
    label: isGiven ? "Size" : "Try another size",
    none: isGiven ? "pick for me" : "as chosen",
    extra: "trial",
  });
}

/** @param {string} name @param {string} said */
const pair = (name, said) => [el("dt", {}, name), el("dd", {}, said)];
