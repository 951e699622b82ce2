// Reads and writes members of a build by JSON pointer (RFC 6901), the way the service names them.

/** @param {string} pointer */
export function steps(pointer) {
  return pointer
    .split("/")
    .slice(1)
    .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"));
}

/** The last step: the name of the member.
 * @param {string} pointer */
export const memberOf = (pointer) => steps(pointer).at(-1) ?? "";

/** @param {unknown} build @param {string} pointer @returns {any} */
export function get(build, pointer) {
  let at = /** @type {any} */ (build);
  for (const step of steps(pointer)) {
    if (at === null || typeof at !== "object" || !Object.hasOwn(at, step)) return undefined;
    at = at[step];
  }
  return at;
}

/** The build with a member set; what leads there is made where it is missing.
 * @param {Build} build @param {string} pointer @param {unknown} value @returns {Build} */
export function put(build, pointer, value) {
  const copy = structuredClone(build);
  const path = steps(pointer);
  const last = path.pop();
  if (last === undefined || [...path, last].includes("__proto__")) return copy;
  let at = /** @type {any} */ (copy);
  for (const [index, step] of path.entries()) {
    at[step] ??= /^(\d+|-)$/.test(path[index + 1] ?? last) ? [] : {};
    at = at[step];
  }
  if (Array.isArray(at) && last === "-") at.push(value);
  else at[last] = value;
  return copy;
}

/** The build without a member, nor what is left empty around it.
 * @param {Build} build @param {string} pointer @returns {Build} */
export function take(build, pointer) {
  const copy = structuredClone(build);
  const path = steps(pointer);
  for (let end = path.length; end > 0; end--) {
    const holder = get(
      copy,
      path
        .slice(0, end - 1)
        .map((step) => `/${step}`)
        .join(""),
    );
    const name = /** @type {string} */ (path[end - 1]);
    if (holder === undefined || holder === null) continue;
    const isAsked = end === path.length;
    const left = holder[name];
    const isList = Array.isArray(left) && end === 1; // a list of the build itself is there even if it is empty
    const isEmpty = typeof left === "object" && left !== null && Object.keys(left).length === 0 && !isList;
    if (!isAsked && !isEmpty) break;
    if (Array.isArray(holder)) {
      if (!isAsked) break;
      holder.splice(Number(name), 1);
    } else delete holder[name];
  }
  return copy;
}

/** Every member that holds a value, with its pointer.
 * @param {unknown} value @param {string} [pointer] @returns {[string, unknown][]} */
export function leaves(value, pointer = "") {
  if (value === null || typeof value !== "object") return [[pointer, value]];
  return Object.entries(value).flatMap(([name, inner]) =>
    leaves(inner, `${pointer}/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`),
  );
}
