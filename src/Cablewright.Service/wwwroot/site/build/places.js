// Which places a build has, and which of its runs are grounds.

/** @param {Build} build */
export const batteries = (build) => build.vehicle?.batteries ?? [];

/** The battery that the alternator charges, by its name. @param {Build} build */
export const firstBattery = (build) => batteries(build)[0]?.id ?? "battery";

/** @param {Build} build @returns {Set<string>} */
export function names(build) {
  return new Set([
    "body",
    "engine",
    ...batteries(build).map((battery) => battery.id),
    ...build.amplifiers.map((amplifier) => amplifier.id),
    ...build.runs.flatMap((run) => [run.from, run.to]),
  ]);
}

/** @param {Iterable<string>} taken @param {string} wanted */
export function freeName(taken, wanted) {
  const names = new Set(taken);
  for (let number = 1; ; number++) {
    const name = number === 1 ? wanted : `${wanted}-${number}`;
    if (!names.has(name)) return name;
  }
}

/** The runs that lead back: from an amplifier, to or from the body or the engine, and on from where such a run ends.
 * @param {Build} build @returns {Set<Run>} */
export function grounds(build) {
  const amplifiers = new Set(build.amplifiers.map((amplifier) => amplifier.id));
  const sources = new Set(batteries(build).map((battery) => battery.id));
  /** @type {Set<Run>} */
  const found = new Set();
  const negative = new Set(["body", "engine"]);
  for (let before = -1; before !== found.size;) {
    before = found.size;
    for (const run of build.runs) {
      const leadsBack = run.side === "return" || amplifiers.has(run.from) || negative.has(run.from) || negative.has(run.to);
      if (run.side === "supply" || !leadsBack) continue;
      found.add(run);
      for (const place of [run.from, run.to]) if (!amplifiers.has(place) && !sources.has(place)) negative.add(place);
    }
  }
  return found;
}

/** The blocks that feed: what a supply run leads to and is neither battery nor amplifier.
 * @param {Build} build @returns {string[]} */
export function blocks(build) {
  const back = grounds(build);
  const others = new Set([...build.amplifiers, ...batteries(build)].map((part) => part.id));
  return [...new Set(build.runs.filter((run) => !back.has(run) && !others.has(run.to)).map((run) => run.to))];
}
