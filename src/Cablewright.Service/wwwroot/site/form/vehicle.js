// The vehicle: alternator, starter battery and where it sits, a second battery.
import { batteries, firstBattery, grounds } from "../build/places.js";
import { put, take } from "../build/pointers.js";
import { addBattery, removeBattery } from "../build/reshape.js";
import { button, el } from "../page/dom.js";
import { field, framed } from "./field.js";

/** @param {import("./field.js").Page} page */
export function vehicle(page) {
  const second = batteries(page.build())[1];
  return [
    el(
      "fieldset",
      { class: "card" },
      el("legend", {}, "Alternator and starter battery"),
      el(
        "div",
        { class: "fields" },
        field(page, "/vehicle/alternator/ratedCurrent", {
          hint: "On its label, or in the handbook",
        }),
        seat(page),
        batteries(page.build()).length > 0 && field(page, "/vehicle/batteries/0/chemistry"),
        batteries(page.build()).length > 0 && field(page, "/vehicle/batteries/0/capacity", { none: "not known" }),
        batteries(page.build()).length > 0 &&
          field(page, "/vehicle/batteries/0/coldCrankingCurrent", {
            none: "not known",
          }),
      ),
    ),
    second
      ? secondCard(page, second.id)
      : button("Add a second battery", () => page.reshape(addBattery(page.build()), "/vehicle/batteries/1/capacity"), {
          class: "add",
        }),
  ];
}

/** @param {import("./field.js").Page} page @param {string} id */
function secondCard(page, id) {
  const remove = button("Remove", () => page.reshape(removeBattery(page.build(), id), "/vehicle/alternator/ratedCurrent"), {
    class: "remove",
    "aria-label": "Remove the second battery",
  });
  return el(
    "fieldset",
    { class: "card" },
    el("legend", {}, `Second battery: ${id}`),
    el(
      "div",
      { class: "fields" },
      field(page, "/vehicle/batteries/1/chemistry"),
      field(page, "/vehicle/batteries/1/capacity"),
      field(page, "/limits/engineOffTime", { none: "not needed" }),
    ),
    remove,
  );
}

/** Where the starter battery sits: in the boot no part of its cables lies in the engine bay.
 * @param {import("./field.js").Page} page */
function seat(page) {
  const build = page.build();
  const first = firstBattery(build);
  const back = grounds(build);
  const own = build.runs.flatMap((run, index) =>
    run.from === first && !back.has(run) ? [{ run, pointer: `/runs/${index}/engineBayLength` }] : [],
  );
  const isAft = own.length > 0 && own.every(({ run }) => run.engineBayLength?.startsWith("0 "));
  const select = el(
    "select",
    {
      change: () => {
        let next = page.build();
        for (const { pointer } of own) next = select.value === "aft" ? put(next, pointer, "0 ft") : take(next, pointer);
        page.reshape(next, "seat");
      },
    },
    el("option", { value: "bay" }, "in the engine bay"),
    el("option", { value: "aft" }, "in the cabin or boot"),
  );
  select.value = isAft ? "aft" : "bay";
  const shown = framed("seat", { label: "The battery sits" }, select);
  return shown;
}
