// What the members of a build are called, and what a person may type into them.
import { wordsOf } from "./words.js";

/**
 * @typedef {"quantity" | "word" | "size" | "count" | "number" | "flag" | "text"} Kind
 * @typedef {{ label: string, kind: Kind, unit: string, like: string }} Member
 */

/** Label, unit of a bare number (length: by the build's units), and an example. @type {Record<string, [string, string, string]>} */
const quantities = {
  ratedOutput: ["Power (RMS)", "W", "500 W"],
  ratedInputCurrent: ["Input current at full output", "A", "60 A"],
  efficiency: ["Efficiency", "%", "80 %"],
  crestFactor: ["Crest factor", "dB", "9 dB"],
  length: ["Length", "length", "17 ft"],
  engineBayLength: ["Of it in the engine bay", "length", "4 ft"],
  bundledLength: ["Of it in a bundle", "length", "2 ft"],
  distanceFromSource: ["Fuse to battery", "length", "7 in"],
  jointResistance: ["Its joints together", "mOhm", "0.1 mOhm"],
  insulationRating: ["Insulation rated for", "C", "105 C"],
  rating: ["Fuse rating", "A", "80 A"],
  voltageRating: ["Its voltage rating", "V", "32 V"],
  interruptingRating: ["Rated to interrupt", "A", "6000 A"],
  ratedCurrent: ["Rated current", "A", "120 A"],
  idleCurrent: ["Current at idle", "A", "65 A"],
  lowSpeedCurrent: ["Current at low speed", "A", "55 A"],
  hotFactor: ["Left when hot", "%", "80 %"],
  idleSpeed: ["Idle speed", "rpm", "800 rpm"],
  chargingVoltage: ["Charging voltage", "V", "14.2 V"],
  baseLoad: ["Draw of the vehicle, engine on", "A", "45 A"],
  standbyLoad: ["Draw of the vehicle, engine off", "A", "3 A"],
  capacity: ["Capacity", "Ah", "70 Ah"],
  reserveCapacity: ["Reserve capacity", "min", "115 min"],
  ratingTime: ["Capacity is for", "h", "20 h"],
  coldCrankingCurrent: ["Cranking current (CCA)", "A", "700 A"],
  internalResistance: ["Internal resistance", "mOhm", "5 mOhm"],
  stateOfCharge: ["Charged to", "%", "100 %"],
  usableShare: ["Share that may be used", "%", "50 %"],
  contactResistance: ["Contact resistance", "mOhm", "0.5 mOhm"],
  forwardVoltage: ["Forward voltage", "V", "0.7 V"],
  outputVoltage: ["Output voltage", "V", "14.4 V"],
  maxDrop: ["Largest drop that you accept", "%", "3 %"],
  engineOffTime: ["Music, engine off", "h", "2 h"],
  cabinTemperature: ["Air in the cabin", "C", "40 C"],
  engineBayTemperature: ["Air in the engine bay", "C", "80 C"],
  underbodyTemperature: ["Air below the floor", "C", "60 C"],
  capacitance: ["Capacitance", "F", "1 F"],
  seriesResistance: ["Series resistance", "mOhm", "1.5 mOhm"],
  returnResistance: ["Resistance of the body", "mOhm", "1 mOhm"],
  lowest: ["Works down to", "V", "10 V"],
  highest: ["Works up to", "V", "16 V"],
};

/** @type {Record<string, string>} */
const labels = {
  amplifierClass: "Class",
  material: "Metal",
  route: "Where it lies",
  chemistry: "Kind of battery",
  programme: "What it plays",
  powerSupply: "Its converter",
  kind: "Joined by",
  family: "Kind of fuse",
  size: "Cable size",
  largestConductor: "Largest cable that fits",
  id: "Name",
  name: "Name of this job",
};

/** @type {Record<string, Kind>} */
const others = {
  size: "size",
  largestConductor: "size",
  count: "count",
  terminals: "count",
  maxParallel: "count",
  peukertExponent: "number",
  pulleyRatio: "number",
  fitted: "flag",
  perConductor: "flag",
};

/** @param {string} pointer @returns {Member} */
export function member(pointer) {
  const name = pointer.split("/").at(-1) ?? "";
  if (name === "fuse")
    return {
      label: "Its own fuses",
      kind: "quantity",
      unit: "A",
      like: "60 A",
    };
  if (pointer.endsWith("/alternator/ratedCurrent"))
    return {
      label: "Alternator",
      kind: "quantity",
      unit: "A",
      like: "120 A",
    };
  const quantity = Object.hasOwn(quantities, name) ? quantities[name] : undefined;
  if (quantity)
    return {
      label: quantity[0],
      kind: "quantity",
      unit: quantity[1],
      like: quantity[2],
    };
  const kind = Object.hasOwn(others, name) ? others[name] : Object.hasOwn(wordsOf, name) ? "word" : "text";
  return {
    label: labels[name] ?? spoken(name),
    kind: kind ?? "text",
    unit: "",
    like: "",
  };
}

/** A member's name as words: `peukertExponent` is "Peukert exponent". @param {string} name */
function spoken(name) {
  const words = name.replaceAll(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** An edit's text as the build holds it. @param {string} pointer @param {string} text */
export function valueOf(pointer, text) {
  const { kind } = member(pointer);
  if (kind === "flag" && (text === "true" || text === "false")) return text === "true";
  if ((kind === "count" || kind === "number") && /^\d+(\.\d+)?$/.test(text.trim())) return Number(text);
  return text;
}
