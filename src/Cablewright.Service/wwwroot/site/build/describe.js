// Names a place in a build for people: `/runs/0/conductor/size` is "Cable size, run feed".
import { get, steps } from "./pointers.js";
import { member } from "./members.js";

/** The name that sentences call a run by, and where it leads. @param {{ id: string, from: string, to: string }} run */
export const runTitle = ({ id, from, to }) => `${id}: ${placeTitle(from)} to ${placeTitle(to)}`;

/** @param {string} place */
const placeTitle = (place) => (place === "body" || place === "engine" ? `the ${place}` : place);

/** @param {string} text */
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** @param {Build} build @param {string} pointer */
export function describe(build, pointer) {
  const path = steps(pointer);
  if (path.length === 0) return "The whole build";
  const isBattery = path[1] === "batteries";
  const depth = isBattery ? 3 : /^(\d+|-)$/.test(path[1] ?? "") ? 2 : 0;
  if (depth === 0 || path.length < depth) return member(pointer).label;
  const part = get(build, `/${path.slice(0, depth).join("/")}`);
  const whose = typeof part?.id === "string" ? part.id : path[0] === "runs" ? "battery strap" : "";
  const kind = isBattery ? "battery" : path[0] === "runs" ? "run" : "amplifier";
  const named = part ? `${kind} ${whose}` : whose;
  if (path.length === depth) return capital(named);
  const of = path[0] === "runs" ? { fuse: "Fuse", conductor: "Cable" }[path.at(-1) ?? ""] : undefined;
  return `${of ?? member(pointer).label}, ${named}`;
}
