// Figures of an answer as people write them, in the units of the build.

/** @param {number} value @param {number} [digits] significant digits */
export function number(value, digits = 3) {
  const rounded = Number(value.toPrecision(digits));
  return Math.abs(rounded) >= 1000 ? rounded.toLocaleString("en") : String(rounded);
}

/** @param {number} value */
export const volts = (value) => (value < 0.1 ? `${Math.round(value * 1000)} mV` : `${number(value)} V`);

/** @param {number} metres @param {Words["UnitSystem"]} units */
export const length = (metres, units) => (units === "metric" ? `${number(metres)} m` : `${number(metres / 0.3048)} ft`);

/** A length to buy: up to the next half metre or whole foot. @param {number} metres @param {Words["UnitSystem"]} units */
export const lengthToBuy = (metres, units) =>
  units === "metric" ? `${Math.ceil(metres * 2 - 0.01) / 2} m` : `${Math.ceil(metres / 0.3048 - 0.01)} ft`;

/** @param {number} celsius @param {Words["UnitSystem"]} units */
export const temperature = (celsius, units) =>
  units === "metric" ? `${Math.round(celsius)} °C` : `${Math.round(celsius * 1.8 + 32)} °F`;

/** @param {number} seconds */
export const time = (seconds) =>
  seconds < 1 ? `${number(seconds * 1000, 2)} ms` : seconds < 120 ? `${number(seconds, 2)} s` : `${number(seconds / 60, 2)} min`;

/** @param {string} size */
export const size = (size) => size.replace("mm2", "mm²");
