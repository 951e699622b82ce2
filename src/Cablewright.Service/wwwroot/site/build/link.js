// The link carries the build: its JSON behind the hash, which browsers do not send to the service.
const mark = "#build=";

/** @param {Build} build */
export function toHash(build) {
  const bytes = new TextEncoder().encode(JSON.stringify(build));
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return mark + btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** The build of a link; `null` where there is none, `undefined` where it cannot be read.
 * @param {string} hash @returns {Build | null | undefined} */
export function fromHash(hash) {
  if (!hash.startsWith(mark)) return null;
  try {
    const letters = atob(hash.slice(mark.length).replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const build = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
    return hasForm(build) ? build : undefined;
  } catch {
    return undefined;
  }
}

/** What the form needs to show a build; the service judges the rest. @param {any} build @returns {build is Build} */
function hasForm(build) {
  const isObject = (/** @type {unknown} */ part) => part !== null && typeof part === "object" && !Array.isArray(part);
  const areNamed = (/** @type {unknown} */ list) =>
    Array.isArray(list) && list.every((part) => isObject(part) && typeof part.id === "string");
  const isOptional = (/** @type {unknown} */ part, /** @type {(part: unknown) => boolean} */ is) =>
    part === undefined || is(part);
  return (
    isObject(build) &&
    areNamed(build.amplifiers) &&
    areNamed(build.runs) &&
    build.runs.every((/** @type {any} */ run) => [run.from, run.to].every((place) => typeof place === "string")) &&
    build.runs.every((/** @type {any} */ run) =>
      [run.conductor, run.fuse, run.isolator].every((part) => isOptional(part, isObject)),
    ) &&
    isOptional(build.vehicle, isObject) &&
    isOptional(build.vehicle?.batteries, areNamed) &&
    isOptional(build.vehicle?.capacitors, Array.isArray)
  );
}
