// Reads what people type as the service wants it: a number with a unit. What it does not know it leaves as it is, so that the
// service says what is wrong with it.

/** Spellings that people use, and the one that the service knows. @type {[RegExp, string][]} */
const spellings = [
  [/['’′]|\b(?:feet|foot)\b/gi, "ft"],
  [/["”″]|\b(?:inches|inch)\b/gi, "in"],
  [/\b(?:metres?|meters?)\b/gi, "m"],
  [/\b(?:watts?|w ?rms|rms)\b/gi, "W"],
  [/\b(?:amps?|amperes?)\b/gi, "A"],
  [/\b(?:volts?)\b/gi, "V"],
  [/\b(?:hours?|hrs?)\b/gi, "h"],
  [/\b(?:minutes?|mins?)\b/gi, "min"],
  [/\b(?:percent)\b/gi, "%"],
  [/\bkw\b/gi, "kW"],
  [/(?<=\d)\s*a$/g, " A"],
  [/(?<=\d)\s*w$/g, " W"],
  [/(?<=\d)\s*v$/g, " V"],
  [/(?<=\d)\s*ah$/gi, " Ah"],
  [/(?<=\d)\s*(?:FT|Ft)$/g, " ft"],
];

/** @param {string} text @param {string} unit what a bare number is taken to be in; "length" goes by the units
 * @param {Words["UnitSystem"]} units */
export function typed(text, unit, units) {
  let read = text
    .trim()
    .replaceAll(/\s+/g, " ")
    .replace(/^(\d+),(\d{1,2})(?!\d)/, "$1.$2")
    .replace(/^(\d{1,3}),(\d{3})\b/, "$1$2");
  if (unit === "") return read;
  for (const [spelling, known] of spellings) read = read.replaceAll(spelling, known);
  read = read
    .replaceAll(/(?<=\d)(?=[A-Za-z%])/g, " ")
    .replaceAll(/(?<=[a-z])(?=\d)/gi, " ")
    .replaceAll(/\s+/g, " ")
    .trim();
  if (/^\d+(\.\d+)?$/.test(read)) return `${read} ${unit === "length" ? (units === "metric" ? "m" : "ft") : unit}`;
  return unit === "length" ? read.replace(/^(\d+(?:\.\d+)?) ft (\d+(?:\.\d+)?)$/, "$1 ft $2 in") : read;
}

/** A size as people type it: `4awg`, `AWG 4`, `0 gauge`, `16mm²`. @param {string} text */
export function typedSize(text) {
  const read = text.trim();
  const gauge = /^(?:awg\s*)?(\d{1,2}|0{2,4}|[1-4]\/0)\s*(?:awg|gauge|ga)?$/i.exec(read);
  if (gauge) return `${gauge[1] === "0" ? "1/0" : gauge[1]} AWG`;
  const metric = /^(\d+(?:[.,]\d+)?)\s*(?:mm2|mm²|mm\^2|sq\.? ?mm)$/i.exec(read);
  return metric ? `${/** @type {string} */ (metric[1]).replace(",", ".")} mm2` : read;
}
