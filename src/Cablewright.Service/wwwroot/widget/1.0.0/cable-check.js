// <cable-check>: asks for the amplifier, the distance and the vehicle, and says whether a cable or a kit serves, or which cable
// to take. One file without dependencies, so that a page can pin its hash. Nothing of it is made of markup or evaluated text.

const version = "1.0.0";
const slowMilliseconds = 300;

/** From a battery in front to an amplifier in the boot, as kits are cut: common practice, no source. */
const distances = { us: { small: "14 ft", estate: "17 ft", van: "25 ft" }, metric: { small: "4 m", estate: "5 m", van: "8 m" } };

/** What is said; `strings` (attribute, JSON, or property) replaces any of it. `{holes}` are filled. */
const english = {
  title: "Does it fit your amplifier?",
  by: "You know its",
  byOutput: "power (RMS)",
  byFuses: "own fuses",
  output: "Power, all channels",
  outputLike: "such as 500 W",
  fuses: "Its fuses, added up",
  fusesLike: "such as 60 A",
  vehicle: "Vehicle",
  small: "Small car",
  estate: "Saloon or estate",
  van: "Van or camper",
  distance: "Cable from battery to amplifier",
  alternator: "Alternator, if you know it",
  alternatorLike: "such as 120 A",
  check: "Check",
  working: "Working it out …",
  safety: "Safety",
  performance: "Performance",
  supply: "Supply",
  unjudged: "not judged",
  good: "good",
  settle: "check",
  stop: "stop",
  take: "Take {cable}, with a {fuse} fuse close to the battery.",
  serves: "{product} serves.",
  servesWithChange: "{product} serves with a change.",
  fails: "{product} does not serve.",
  cautioned: "{product} would do, with something to settle first.",
  instead: "Take instead: {cable}, with a {fuse} fuse.",
  thisCable: "This {size} cable",
  thisKit: "This kit",
  cartTitle: "For the whole job",
  smallParts: "Small parts: {parts}",
  add: "Add to cart",
  copper: "copper",
  "tinned-copper": "tinned copper",
  "copper-clad-aluminium": "copper-clad aluminium",
  aluminium: "aluminium",
  caution: "Wiring can burn a car. Local codes, the makers' instructions and a qualified installer decide.",
  unreachable: "The check cannot be reached just now. Please try again.",
  busy: "Too many are asking just now. Please try again in {seconds} s.",
  unread: "This cannot be read: {reason}",
};

const css = `
:host { display: block; container-type: inline-size; color-scheme: inherit;
  --good: var(--cable-check-good, light-dark(#1d6b3c, #7fd69b)); --settle: var(--cable-check-settle, light-dark(#7d5200, #f2c14e));
  --stop: var(--cable-check-stop, light-dark(#a81d22, #ff9a93)); --ink: var(--cable-check-ink, light-dark(#11272e, #e6eff1));
  --soft: var(--cable-check-soft, light-dark(#47606a, #a7bec6)); --ground: var(--cable-check-ground, light-dark(#fbfcfc, #13262d));
  --line: var(--cable-check-line, light-dark(#6d858e, #77929c)); --act: var(--cable-check-act, light-dark(#0a5768, #7fd0e0));
  --on-act: var(--cable-check-on-act, light-dark(#fff, #06262e)); --radius: var(--cable-check-radius, .3rem);
  font: var(--cable-check-font, 1rem/1.45 system-ui, sans-serif); color: var(--ink); }
:host([hidden]), [hidden] { display: none !important; }
* { box-sizing: border-box; min-width: 0; margin: 0; padding: 0; }
.frame { padding: 1rem; background: var(--ground); border: 1px solid var(--line); border-radius: var(--radius); }
h2 { font-size: 1.1rem; margin-bottom: .5rem; } h3 { font-size: 1rem; margin: .8rem 0 .2rem; }
form { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 11rem), 1fr)); gap: .5rem .8rem; align-items: end; }
fieldset { border: 0; grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: .2rem 1rem; } legend { float: left; }
label, legend { font-size: .875rem; color: var(--soft); } fieldset label { color: var(--ink); }
input:not([type=radio]), select, button { width: 100%; min-height: 2.4rem; padding: .3rem .5rem; font: inherit; color: var(--ink);
  background: var(--ground); border: 1px solid var(--line); border-radius: var(--radius); }
input::placeholder { color: var(--soft); opacity: 1; } input[aria-invalid=true] { border: 2px solid var(--stop); }
button { cursor: pointer; font-weight: 600; color: var(--on-act); background: var(--act); border-color: var(--act); }
:focus-visible { outline: 3px solid var(--act); outline-offset: 2px; }
.fault { color: var(--stop); font-size: .85rem; } .hint, .caution { color: var(--soft); font-size: .85rem; }
.verdict { display: flex; gap: .7rem; align-items: start; margin: .9rem 0 .6rem; font-weight: 600; font-size: 1.05rem; }
svg { width: 2rem; height: 2rem; flex: none; fill: currentcolor; } svg .mark { fill: none; stroke: var(--ground); stroke-width: 2.8;
  stroke-linecap: round; stroke-linejoin: round; }
.good { color: var(--good); } .settle { color: var(--settle); } .stop { color: var(--stop); } .said { color: var(--ink); }
ul { list-style: none; } .lights { display: flex; flex-wrap: wrap; gap: .2rem 1rem; font-size: .9rem; color: var(--ink); }
.lights svg { width: 1.1rem; height: 1.1rem; vertical-align: -.2rem; margin-right: .3rem; }
.parts li { padding: .25rem 0; border-bottom: 1px dotted var(--line); } .cart { margin-top: .7rem; } .caution { margin-top: .7rem; }
.verdict p { font-weight: 400; font-size: 1rem; margin: .2rem 0; } .verdict p.instead { font-weight: 600; } .cart { max-width: 20rem; }
`;

const shapes = {
  good: ["M12 1a11 11 0 1 1 0 22 11 11 0 0 1 0-22z", "M6.5 12.5l3.8 3.8 7.2-8"],
  settle: ["M12 1.2 23.4 22H.6z", "M12 8.5v6.2M12 17.4v1.6"],
  stop: ["M7.4 1h9.2L23 7.4v9.2L16.6 23H7.4L1 16.6V7.4z", "M8 8l8 8M16 8l-8 8"],
  unjudged: ["M3 10.5h18v3H3z", ""],
};

/** @typedef {keyof typeof shapes} Light */
/** @type {Record<string, Light>} */
const lightOf = {
  pass: "good",
  caution: "settle",
  fail: "stop",
  serves: "good",
  "serves-with-change": "settle",
  "does-not-serve": "stop",
};

/** @param {string} tag @param {Record<string, string>} [attributes] @param {...(Node | string)} inside */
function el(tag, attributes = {}, ...inside) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...inside);
  return element;
}

/** A light: its shape says what its colour says. @param {Light} light */
function sign(light) {
  const space = "http://www.w3.org/2000/svg";
  const svg = document.createElementNS(space, "svg");
  svg.setAttribute("viewBox", "0 0 24 24");
  svg.setAttribute("aria-hidden", "true");
  svg.setAttribute("class", light);
  for (const [index, drawn] of shapes[light].entries()) {
    const path = document.createElementNS(space, "path");
    path.setAttribute("d", drawn);
    if (index > 0) path.setAttribute("class", "mark");
    svg.append(path);
  }
  return svg;
}

/** A number without a unit is taken in the one that its field names. @param {string} text @param {string} unit */
const withUnit = (text, unit) => (/^\d+([.,]\d+)?$/.test(text.trim()) ? `${text.trim().replace(",", ".")} ${unit}` : text.trim());

class CableCheck extends HTMLElement {
  /** @type {Partial<typeof english>} */
  #strings = {};
  #root = this.attachShadow({ mode: "open" });
  /** @type {AbortController | undefined} */
  #call;

  constructor() {
    super();
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    this.#root.adoptedStyleSheets = [sheet];
  }

  connectedCallback() {
    this.#show();
  }

  disconnectedCallback() {
    this.#call?.abort();
  }

  /** What is said in place of the English. @param {Partial<typeof english>} strings */
  set strings(strings) {
    this.#strings = { ...strings };
    if (this.isConnected) this.#show();
  }

  get strings() {
    return { ...english, ...json(this.getAttribute("strings")), ...this.#strings };
  }

  /** @param {keyof typeof english} key @param {Record<string, string>} [holes] */
  #say(key, holes = {}) {
    return String(this.strings[key]).replaceAll(/\{(\w+)\}/g, (hole, name) => holes[name] ?? hole);
  }

  /** @returns {"us" | "metric"} */
  get #units() {
    return this.getAttribute("units") === "metric" ? "metric" : "us";
  }

  #show() {
    this.#call?.abort();
    const form = el("form", { novalidate: "" }, ...this.#fields());
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      void this.#check();
    });
    const title = el("h2", { id: "title" }, this.#say("title"));
    const answer = el("div", { id: "answer", "aria-live": "polite" });
    const caution = el("p", { class: "caution" }, this.#say("caution"));
    this.#root.replaceChildren(
      el("section", { class: "frame", part: "frame", "aria-labelledby": "title" }, title, form, answer, caution),
    );
    this.#byFuses(false);
  }

  #fields() {
    const radio = (/** @type {string} */ value, /** @type {boolean} */ isFirst) => {
      const input = el("input", { type: "radio", name: "by", value, ...(isFirst ? { checked: "" } : {}) });
      input.addEventListener("change", () => this.#byFuses(value === "fuses"));
      return el("label", {}, input, " ", this.#say(value === "fuses" ? "byFuses" : "byOutput"));
    };
    const kinds = /** @type {const} */ (["small", "estate", "van"]);
    const vehicle = el("select", { id: "vehicle" }, ...kinds.map((kind) => el("option", { value: kind }, this.#say(kind))));
    if (vehicle instanceof HTMLSelectElement) vehicle.value = "estate";
    vehicle.addEventListener("change", () => {
      this.#input("length").value =
        distances[this.#units][/** @type {"small"} */ (/** @type {HTMLSelectElement} */ (vehicle).value)];
    });
    return [
      el("fieldset", {}, el("legend", {}, this.#say("by")), radio("output", true), radio("fuses", false)),
      this.#field("ratedOutput", "output", "", "outputLike"),
      this.#field("amplifierFuse", "fuses", "", "fusesLike"),
      el("div", {}, el("label", { for: "vehicle" }, this.#say("vehicle")), vehicle),
      this.#field("length", "distance", distances[this.#units].estate),
      this.#field("alternatorCurrent", "alternator", "", "alternatorLike"),
      el("div", {}, el("button", { part: "button" }, this.#say("check"))),
    ];
  }

  /** @param {string} id @param {keyof typeof english} label @param {string} value @param {keyof typeof english} [like] */
  #field(id, label, value, like) {
    const facts = {
      id,
      value,
      autocomplete: "off",
      "aria-describedby": `${id}-fault`,
      ...(like ? { placeholder: this.#say(like) } : {}),
    };
    const fault = el("p", { class: "fault", id: `${id}-fault` });
    return el("div", { id: `${id}-field` }, el("label", { for: id }, this.#say(label)), el("input", facts), fault);
  }

  /** @param {string} id */
  #input = (id) => /** @type {HTMLInputElement} */ (this.#root.getElementById(id));

  /** @param {boolean} is */
  #byFuses(is) {
    this.#input("ratedOutput-field").hidden = is;
    this.#input("amplifierFuse-field").hidden = !is;
  }

  /** What the fields say, by the names of the quick call; an empty field says nothing. */
  #asked() {
    const units = { ratedOutput: "W", amplifierFuse: "A", length: this.#units === "metric" ? "m" : "ft", alternatorCurrent: "A" };
    /** @type {Record<string, string>} */
    const asked = {};
    for (const [id, unit] of Object.entries(units)) {
      const input = this.#input(id);
      input.value = withUnit(input.value, unit);
      if (input.value !== "" && !this.#input(`${id}-field`).hidden) asked[id] = input.value;
    }
    return { ...asked, units: this.#units };
  }

  async #check() {
    this.#call?.abort();
    const call = (this.#call = new AbortController());
    const answer = this.#input("answer");
    const slow = setTimeout(() => answer.replaceChildren(el("p", {}, this.#say("working"))), slowMilliseconds);
    answer.setAttribute("aria-busy", "true");
    this.#clear();
    try {
      const found = await this.#ask(this.#asked(), call.signal);
      clearTimeout(slow);
      if (!call.signal.aborted) this.#tell(found);
    } catch (failure) {
      clearTimeout(slow);
      if (!call.signal.aborted) this.#fail(failure);
    }
    if (!call.signal.aborted) answer.removeAttribute("aria-busy");
  }

  /** Of the product, and of what the job needs. @param {Record<string, string>} asked @param {AbortSignal} signal */
  async #ask(asked, signal) {
    const kit = json(this.getAttribute("kit"));
    if (kit) {
      const { build } = await this.#get(asked, signal);
      const answer = await this.#fetch("v1/kit-checks", signal, { build, kit });
      const needs = answer.verdict === "serves" ? [] : answer.needs;
      return { light: lightOf[answer.verdict], answer, assessment: answer.trial, needs, product: this.#say("thisKit") };
    }
    /** @type {Record<string, string>} */
    const own = {};
    for (const name of ["size", "material", "fuse"]) if (this.getAttribute(name)) own[name] = this.getAttribute(name) ?? "";
    const answer = await this.#get({ ...asked, ...own }, signal);
    const better = own.size && answer.verdict !== "pass" ? await this.#get(asked, signal) : answer;
    const product = own.size ? this.#say("thisCable", { size: own.size }) : "";
    return { light: lightOf[answer.verdict], answer, assessment: answer, needs: better.materials, product };
  }

  /** @param {Record<string, string>} asked @param {AbortSignal} signal */
  #get = (asked, signal) => this.#fetch(`v1/assessments/quick?${new URLSearchParams(asked)}`, signal);

  /** @param {string} path @param {AbortSignal} signal @param {unknown} [body] @returns {Promise<any>} */
  async #fetch(path, signal, body) {
    const service = new URL(
      this.getAttribute("service") ?? "../../",
      this.getAttribute("service") ? document.baseURI : import.meta.url,
    );
    const post = { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
    const response = await fetch(new URL(path, service), { signal, credentials: "omit", ...(body ? post : {}) });
    if (response.ok) return response.json();
    const problem = await response.json().catch(() => ({}));
    throw Object.assign(new Error("refused"), { status: response.status, wait: response.headers.get("retry-after"), problem });
  }

  #clear() {
    for (const fault of this.#root.querySelectorAll(".fault")) fault.textContent = "";
    for (const input of this.#root.querySelectorAll("[aria-invalid]")) input.removeAttribute("aria-invalid");
  }

  /** @param {any} failure */
  #fail({ status, wait, problem }) {
    const faults = /** @type {any[]} */ (problem?.errors ?? []);
    const [first, ...others] = faults.map((fault) => ({ fault, input: this.#root.getElementById(fault.pointer.slice(1)) }));
    const isBusy = status === 429 || status === 503;
    const said = isBusy ? this.#say("busy", { seconds: wait ?? "10" }) : first ? "" : this.#say("unreachable");
    for (const { fault, input } of first ? [first, ...others] : []) {
      const at = input && !input.parentElement?.hidden ? input : this.#root.querySelector("div:not([hidden]) > input");
      at?.setAttribute("aria-invalid", "true");
      const place = at && this.#root.getElementById(`${at.id}-fault`);
      if (place) place.textContent = this.#say("unread", { reason: [fault.detail, fault.accepted].filter(Boolean).join("; ") });
    }
    this.#input("answer").replaceChildren(el("p", { class: "fault" }, said));
    if (first?.input instanceof HTMLElement && !isBusy) first.input.focus();
  }

  /** @param {{ light: Light | undefined, answer: any, assessment: any, needs: any[], product: string }} found */
  #tell({ light = "stop", answer, assessment, needs, product }) {
    const [sentence = "", ...more] = this.#sentences(light, answer, needs, product);
    const said = el(
      "div",
      { class: "said" },
      sentence,
      ...more.map((text, index) => el("p", index > 0 ? { class: "instead" } : {}, text)),
    );
    const line = el("div", { class: `verdict ${light}` }, sign(light), said);
    const add = el("button", { type: "button", class: "cart", part: "button" }, this.#say("add"));
    const detail = {
      version,
      light,
      sentence: [sentence, ...more].join(" "),
      product: this.getAttribute("product"),
      needs,
      answer,
    };
    add.addEventListener("click", () => this.#emit("cable-check-cart", detail));
    const isSmall = (/** @type {any} */ part) => !/^(power wire|ground wire|fuse|distribution block)/.test(part.item);
    const small = needs
      .filter(isSmall)
      .map((part) => this.#part(part))
      .join(", ");
    const lines = needs.filter((part) => !isSmall(part)).map((part) => el("li", {}, this.#part(part)));
    if (small) lines.push(el("li", { class: "hint" }, this.#say("smallParts", { parts: small })));
    const list = el("ul", { class: "parts" }, ...lines);
    const shown = needs.length > 0 ? [el("h3", {}, this.#say("cartTitle")), list] : [];
    this.#input("answer").replaceChildren(line, this.#lights(assessment), ...shown, add);
    this.#emit("cable-check-answer", detail);
  }

  /** What to do; why; what to take instead. @param {Light} light @param {any} answer @param {any[]} needs @param {string} product */
  #sentences(light, answer, needs, product) {
    const wire = needs.find((part) => part.item === "power wire");
    const fused = needs.find((part) => part.ratingAmps !== undefined);
    const holes = {
      product,
      cable: wire ? this.#part(wire) : "",
      fuse: fused ? `${fused.ratingAmps} A ${fused.family ?? ""}`.trim() : "",
    };
    const reason =
      (answer.findings ?? []).find((/** @type {any} */ finding) => finding.severity !== "info")?.message ?? answer.summary;
    if (!product) return light === "good" ? [this.#say("take", holes)] : [answer.summary];
    if (light === "good") return [this.#say("serves", holes)];
    const key = light === "stop" ? "fails" : this.hasAttribute("kit") ? "servesWithChange" : "cautioned";
    return [this.#say(key, holes), reason, ...(light === "stop" && fused ? [this.#say("instead", holes)] : [])];
  }

  /** The three lights in words; a supply of which nothing is known is not judged. @param {any} assessment */
  #lights(assessment) {
    if (!assessment) return "";
    const concerns = /** @type {const} */ (["safety", "performance", "supply"]);
    const items = concerns.map((concern) => {
      const isKnown = concern !== "supply" || assessment.supply.alternatorAvailableAmps !== undefined;
      const judged = lightOf[assessment.verdicts[concern]] ?? "unjudged";
      const light = judged === "good" && !isKnown ? "unjudged" : judged;
      return el("li", {}, sign(light), `${this.#say(concern)}: ${this.#say(light)}`);
    });
    return el("ul", { class: "lights" }, ...items);
  }

  /** @param {any} part */
  #part({ item, size, material, cutLengthMetres, lengthMetres, ratingAmps, family, count }) {
    const metres = cutLengthMetres ?? lengthMetres;
    const isMetric = this.#units === "metric";
    const long =
      metres === undefined ? "" : isMetric ? `${Math.ceil(metres * 2 - 0.01) / 2} m` : `${Math.ceil(metres / 0.3048 - 0.01)} ft`;
    const words = [long || `${count} ×`, ratingAmps && `${ratingAmps} A`, family, size, material && this.#say(material), item];
    return words.filter(Boolean).join(" ");
  }

  /** @param {string} name @param {unknown} detail */
  #emit = (name, detail) => this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}

/** @param {string | null} text */
function json(text) {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

if (!customElements.get("cable-check")) customElements.define("cable-check", CableCheck);
