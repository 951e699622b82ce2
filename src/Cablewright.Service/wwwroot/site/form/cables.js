// The runs: how long, which cable, which fuse.
import { batteries, grounds } from "../build/places.js";
import { runTitle } from "../build/describe.js";
import { families } from "../build/words.js";
import { button, el } from "../page/dom.js";
import { put, take } from "../build/pointers.js";
import { field, framed } from "./field.js";

/** @param {import("./field.js").Page} page */
export function cables(page) {
  const build = page.build();
  const back = grounds(build);
  const supply = build.runs.flatMap((run, index) => (back.has(run) ? [] : [supplyCard(page, run, index)]));
  const ground = build.runs.flatMap((run, index) => (back.has(run) ? [groundCard(page, run, index)] : []));
  const amplifier = build.amplifiers.find((one) => !build.runs.some((run) => run.from === one.id));
  const add = button(`Tell the ground cable of ${amplifier?.id}`, () => addGround(page, amplifier?.id ?? ""), { class: "add" });
  return [...supply, ...ground, amplifier && add];
}

/** @param {import("./field.js").Page} page @param {Run} run @param {number} index */
function supplyCard(page, run, index) {
  const at = `/runs/${index}`;
  const isFused = run.fuse && run.fuse.fitted !== false;
  const sources = batteries(page.build()).map((battery) => battery.id);
  const isBetweenBatteries = sources.includes(run.from) && sources.includes(run.to);
  return el(
    "fieldset",
    { class: "card" },
    el("legend", {}, runTitle(run)),
    el(
      "div",
      { class: "fields" },
      field(page, `${at}/length`, { hint: "As the cable lies, one way" }),
      field(page, `${at}/conductor/size`),
      run.conductor?.size && field(page, `${at}/conductor/material`, { none: "copper, as sold" }),
      fuseChoice(page, run, index),
      isFused && field(page, `${at}/fuse/rating`),
      isFused && field(page, `${at}/fuse/family`, { list: families }),
      isFused &&
        field(page, `${at}/fuse/distanceFromSource`, {
          label: "Cable up to the fuse",
        }),
      field(page, `${at}/route`),
      isBetweenBatteries && field(page, `${at}/isolator/kind`, { none: "plain cable" }),
      run.isolator?.kind === "dc-dc-charger" &&
        field(page, `${at}/isolator/ratedCurrent`, {
          label: "Charger rated for",
        }),
    ),
  );
}

/** @param {import("./field.js").Page} page @param {Run} run @param {number} index */
function fuseChoice(page, run, index) {
  const pointer = `/runs/${index}/fuse`;
  const state = run.fuse === undefined || run.fuse === null ? "" : run.fuse.fitted === false ? "none" : "mine";
  const select = el(
    "select",
    {
      change: () => {
        const build = page.build();
        if (select.value === "") page.reshape(take(build, pointer), pointer);
        else page.reshape(put(build, pointer, select.value === "none" ? { fitted: false } : chosenFuse(page, run)), pointer);
      },
    },
    el("option", { value: "" }, "pick for me"),
    el("option", { value: "mine" }, "this one:"),
    el("option", { value: "none" }, "none fitted"),
  );
  select.value = state;
  return framed(pointer, { label: `Fuse at ${run.from}` }, select);
}

/** What was chosen is where one starts from. @param {import("./field.js").Page} page @param {Run} run */
function chosenFuse(page, run) {
  const fuse = page.answer()?.runs.find((one) => one.id === run.id)?.fuse;
  return fuse ? { rating: `${fuse.ratingAmps} A`, family: fuse.family } : { rating: "80 A", family: "ANL" };
}

/** @param {import("./field.js").Page} page @param {Run} run @param {number} index */
function groundCard(page, run, index) {
  const at = `/runs/${index}`;
  return el(
    "fieldset",
    { class: "card ground" },
    el("legend", {}, runTitle(run)),
    el(
      "div",
      { class: "fields" },
      field(page, `${at}/length`),
      field(page, `${at}/conductor/size`),
      run.conductor?.size && field(page, `${at}/conductor/material`, { none: "copper, as sold" }),
    ),
  );
}

/** A ground of its own: to the second battery where the amplifier is fed from one, else to the body.
 * @param {import("./field.js").Page} page @param {string} amplifier */
function addGround(page, amplifier) {
  const build = structuredClone(page.build());
  const feed = build.runs.find((run) => run.to === amplifier);
  const source = batteries(build)
    .slice(1)
    .find((battery) => battery.id === feed?.from);
  build.runs.push({
    id: `${amplifier}-ground`,
    from: amplifier,
    to: source?.id ?? "body",
    length: build.units === "metric" ? "1 m" : "3 ft",
  });
  page.reshape(build, `/runs/${build.runs.length - 1}/length`);
}
