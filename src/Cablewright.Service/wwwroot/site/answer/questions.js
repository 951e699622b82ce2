// What to ask next: each question with a field, whose answer goes into the build.
import { member } from "../build/members.js";
import { get, memberOf, put } from "../build/pointers.js";
import { freeName } from "../build/places.js";
import { typed } from "../build/typed.js";
import { wordsOf } from "../build/words.js";
import { field } from "../form/field.js";
import { button, el } from "../page/dom.js";

/** As the service takes a strap that is not stated. */
const strapLength = { us: "16 in", metric: "0.4 m" };

/** @param {Assessment} answer @param {import("../form/field.js").Page} page */
export function questions({ askNext }, page) {
  if (askNext.length === 0) return [];
  return [el("ol", { class: "questions" }, ...askNext.map((asked) => item(asked, page)))];
}

/** @param {FollowUp} asked @param {import("../form/field.js").Page} page */
function item(asked, page) {
  // A part is more than a field holds, but for the strap, of which a size will do.
  const isField = asked.answer.kind !== "part" || isStrap(asked);
  return el(
    "li",
    {},
    el("p", { class: "question" }, asked.question),
    el("p", { class: "hint" }, asked.where),
    isField ? answerField(asked, page) : el("p", { class: "hint" }, "A curve goes in as JSON: see below."),
    el("p", { class: "hint" }, asked.why),
  );
}

/** @param {FollowUp} asked */
const isStrap = (asked) => asked.pointer === "/runs/-";

/** @param {FollowUp} asked @param {import("../form/field.js").Page} page */
function answerField(asked, page) {
  const pointer = isStrap(asked) ? "/runs/-/conductor/size" : asked.pointer;
  const { example, assumed } = asked.answer;
  /** @type {unknown} */
  let said;
  const aside = {
    ...page,
    set: (/** @type {string} */ _, /** @type {unknown} */ value) => void (said = value),
  };
  const asks = field(aside, pointer, {
    prefix: "ask-",
    label: isStrap(asked) ? "Cable size" : member(pointer).label,
    none: example ? `such as ${example}` : "not known",
    hint: assumed ? `Until then: ${wordsOf[memberOf(pointer)]?.[assumed] ?? assumed}` : "",
  });
  const answer = () => {
    if (said === undefined || said === get(page.build(), pointer)) return;
    const read = typeof said === "string" ? typed(said, member(pointer).unit, page.build().units ?? "us") : said;
    const build = page.build();
    page.reshape(isStrap(asked) ? withStrap(build, asked, String(read)) : put(build, pointer, read), "ask");
  };
  asks.addEventListener("keydown", (event) => {
    if (event.key === "Enter") answer();
  });
  return el(
    "div",
    { class: "answering" },
    asks,
    button("Take it in", answer, {
      "aria-label": `Take it in: ${asked.question}`,
    }),
  );
}

/** @param {Build} build @param {FollowUp} asked @param {string} size @returns {Build} */
function withStrap(build, asked, size) {
  const from = String(asked.params?.["place"] ?? asked.params?.["battery"] ?? build.vehicle?.batteries?.[0]?.id ?? "battery");
  const id = freeName(
    build.runs.map((run) => run.id),
    "strap",
  );
  return {
    ...build,
    runs: [
      ...build.runs,
      {
        id,
        from,
        to: "body",
        length: strapLength[build.units ?? "us"],
        conductor: { size },
      },
    ],
  };
}
