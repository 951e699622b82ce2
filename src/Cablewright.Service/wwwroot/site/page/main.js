// The try page: one build, a form that changes it, and the service's answer to it.
import { changes } from "../answer/changes.js";
import { draw } from "../answer/drawing.js";
import { findings } from "../answer/findings.js";
import { showJson } from "../answer/integrator.js";
import { lights } from "../answer/lights.js";
import { assumptions, cautions } from "../answer/notes.js";
import { parts } from "../answer/parts.js";
import { questions } from "../answer/questions.js";
import { runs } from "../answer/runs.js";
import { headline, spoken, verdict, worst } from "../answer/verdict.js";
import { examples } from "../build/examples.js";
import { fromHash, toHash } from "../build/link.js";
import { put, take } from "../build/pointers.js";
import { clearFaults, showFaults } from "../form/faults.js";
import { idOf } from "../form/field.js";
import { showForm } from "../form/form.js";
import { Asker } from "./asker.js";
import { copyFrom } from "./copy.js";
import { button, byId, el, show } from "./dom.js";
import { renew } from "./renew.js";

const first = /** @type {{ title: string, build: Build }} */ (examples[0]);

/** @type {{ build: Build, answer: Assessment | undefined, lastSet: string }} */
const state = { build: first.build, answer: undefined, lastSet: "" };

/** @type {import("../form/field.js").Page} */
const page = {
  build: () => state.build,
  answer: () => state.answer,
  set(pointer, value) {
    const isIsolator = pointer.endsWith("/isolator/kind") && value === undefined;
    const at = isIsolator ? pointer.replace(/\/kind$/, "") : pointer;
    const build = value === undefined ? take(state.build, at) : put(state.build, at, value);
    const changesFields = /\/(conductor\/size|isolator\/kind)$/.test(pointer) || (value === undefined && inExtras(pointer));
    if (changesFields) page.reshape(build, pointer);
    else become(build, state.lastSet === pointer, pointer);
  },
  reshape(build, focus) {
    become(build, false, "");
    showForm(page);
    if (focus) focusOn(focus);
    showFaultsAgain();
  },
};

const asker = new Asker(hear, (isSlow) => {
  byId("progress").hidden = !isSlow;
  byId("head").setAttribute("aria-busy", String(isSlow));
});

/** @type {(() => void) | undefined} */
let faultsAgain;
const showFaultsAgain = () => faultsAgain?.();

/** @param {string} pointer */
const inExtras = (pointer) => document.getElementById(idOf(pointer))?.closest("#form-extras") != null;

/** Takes a build over; each field that is typed into is one step back.
 * @param {Build} build @param {boolean} isSameStep @param {string} lastSet */
function become(build, isSameStep, lastSet) {
  state.build = build;
  state.lastSet = lastSet;
  if (isSameStep) history.replaceState(null, "", toHash(build));
  else history.pushState(null, "", toHash(build));
  byId("link-note").hidden = true;
  markExample();
  showJson(build);
  asker.ask(build);
}

/** Opens a build as a whole. @param {Build} build */
function open(build) {
  Object.assign(state, { build, lastSet: "", answer: undefined });
  faultsAgain = undefined;
  clearFaults();
  showForm(page);
  markExample();
  showJson(build);
  asker.ask(build, 0);
}

/** @param {import("./asker.js").Outcome} outcome */
function hear(outcome) {
  faultsAgain = undefined;
  const note = byId("note");
  note.hidden = true;
  byId("sheet").classList.toggle("stale", outcome.kind !== "answer");
  if (outcome.kind === "answer") {
    clearFaults();
    return showAnswer(outcome.answer, outcome.build);
  }
  if (outcome.kind === "faults") {
    faultsAgain = () => void showFaults(outcome.problem, outcome.build);
    const count = showFaults(outcome.problem, outcome.build);
    return tell(
      `${count === 1 ? "One thing" : `${count} things`} in the form cannot be read. It is marked there; the answer below is the one before.`,
    );
  }
  if (outcome.kind === "busy")
    return tell(`The service has too much to do. It is asked again in ${outcome.seconds} s; you need do nothing.`);
  tell(
    "The service cannot be reached. What you typed is kept, here and in the link. Check your connection, then",
    button("try again", () => asker.ask(state.build, 0)),
  );
}

/** @param {...import("./dom.js").Inside} said */
function tell(...said) {
  const note = byId("note");
  note.hidden = false;
  show(note, ...said);
}

/** @param {Assessment} answer @param {Build} build */
function showAnswer(answer, build) {
  state.answer = answer;
  renew(byId("sheet"), () => {
    show(byId("job-name"), build.name);
    show(byId("verdict"), verdict(answer));
    show(byId("strip"), verdict(answer));
    show(byId("lights"), lights(answer));
    show(byId("worst"), worst(answer));
    show(byId("parts"), ...parts(answer, build.units ?? "us"));
    show(byId("summary"), answer.summary);
    show(byId("findings"), ...findings(answer, build));
    show(byId("changes"), ...changes(answer, page));
    show(byId("ask-next"), ...questions(answer, page));
    byId("section-questions").hidden = answer.askNext.length === 0;
    show(byId("runs"), ...runs(answer, page));
    show(byId("assumptions"), ...assumptions(answer, build));
    show(byId("cautions"), ...cautions(answer));
    show(byId("ruleset"), `Ruleset ${answer.ruleset}, engine ${answer.engineVersion}`);
  });
  const live = byId("live");
  if (live.textContent !== spoken(answer)) live.textContent = spoken(answer);
  document.title = `${headline(answer)} · Cablewright`;
  void draw(build, `Wiring drawing. ${answer.summary}`);
}

/** @param {string} where a pointer, the id of an element, or a list whose first field is meant */
function focusOn(where) {
  const target = where.startsWith("/")
    ? document.getElementById(idOf(where))
    : (document.getElementById(where) ?? document.getElementById(idOf(where)));
  target?.focus();
}

/** Says which example is open, if it is as it came. */
function markExample() {
  const now = JSON.stringify(state.build);
  for (const [index, choice] of [...byId("examples").children].entries())
    choice.querySelector("button")?.setAttribute("aria-pressed", String(JSON.stringify(examples[index]?.build) === now));
}

function openFromLink() {
  const build = fromHash(location.hash);
  byId("link-note").hidden = build !== undefined;
  open(build ?? first.build);
}

show(
  byId("examples"),
  ...examples.map(({ title, build }) =>
    el(
      "li",
      {},
      button(title, () => {
        history.pushState(null, "", toHash(build));
        open(structuredClone(build));
      }),
    ),
  ),
);
byId("copy-link").addEventListener("click", () => {
  history.replaceState(null, "", toHash(state.build));
  void copyFrom(byId("copy-link"), () => location.href);
});
byId("copy-json").addEventListener("click", () => void copyFrom(byId("copy-json"), () => byId("json").textContent ?? ""));
byId("copy-curl").addEventListener("click", () => void copyFrom(byId("copy-curl"), () => byId("curl").textContent ?? ""));
byId("skip").addEventListener("click", (event) => {
  // The hash is the build's: the link must not change it.
  event.preventDefault();
  byId("form").focus();
});
byId("print").addEventListener("click", () => print());
addEventListener("popstate", openFromLink);
openFromLink();
