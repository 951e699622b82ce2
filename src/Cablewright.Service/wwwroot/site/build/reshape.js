// Changes to what a build consists of: amplifiers and a second battery, with the runs that they need.
import { batteries, blocks, firstBattery, freeName, grounds, names } from "./places.js";

/** @param {Build} build */
const runNames = (build) => build.runs.map((run) => run.id);

/** @param {Build} build */
const near = (build) => (build.units === "metric" ? "1 m" : "3 ft");

/** The build with one more amplifier, behind a block that is put in where there is none.
 * @param {Build} given @returns {Build} */
export function addAmplifier(given) {
  const build = structuredClone(given);
  const id = freeName(names(build), "amp-2");
  const isFirst = build.amplifiers.length === 0;
  const hasGrounds = build.runs.some((run) => run.from === build.amplifiers[0]?.id);
  const from = isFirst ? firstBattery(build) : (blocks(build)[0] ?? putBlock(build));
  build.amplifiers.push({ id, ratedOutput: "300 W" });
  build.runs.push({
    id: freeName(runNames(build), `${id}-feed`),
    from,
    to: id,
    length: near(build),
  });
  if (hasGrounds)
    build.runs.push({
      id: freeName(runNames(build), `${id}-ground`),
      from: id,
      to: "body",
      length: near(build),
    });
  return build;
}

/** Ends the first amplifier's feed at a block and goes on from there. @param {Build} build */
function putBlock(build) {
  const back = grounds(build);
  const amplifiers = new Set(build.amplifiers.map((amplifier) => amplifier.id));
  const feed = build.runs.find((run) => amplifiers.has(run.to) && !back.has(run));
  if (!feed) return firstBattery(build);
  const block = freeName(names(build), "block");
  build.runs.push({
    id: freeName(runNames(build), `${feed.to}-feed`),
    from: block,
    to: feed.to,
    length: near(build),
  });
  feed.to = block;
  return block;
}

/** The build without an amplifier and its runs; a block that is left with one way on is left out too.
 * @param {Build} given @param {string} id @returns {Build} */
export function removeAmplifier(given, id) {
  const build = structuredClone(given);
  build.amplifiers = build.amplifiers.filter((amplifier) => amplifier.id !== id);
  build.runs = build.runs.filter((run) => run.from !== id && run.to !== id);
  if (build.vehicle?.capacitors) build.vehicle.capacitors = build.vehicle.capacitors.filter((part) => part.at !== id);
  for (const block of blocks(build)) {
    const to = build.runs.filter((run) => run.to === block);
    const on = build.runs.filter((run) => run.from === block);
    const [main, feed] = [to[0], on[0]];
    if (to.length !== 1 || on.length !== 1 || !main || !feed || feed.conductor || feed.fuse) continue;
    main.to = feed.to;
    build.runs = build.runs.filter((run) => run !== feed);
  }
  return build;
}

/** The build with a place called otherwise wherever it is named. @param {Build} given @param {string} from @param {string} to
 * @returns {Build} */
export function rename(given, from, to) {
  const build = structuredClone(given);
  const named = (/** @type {string} */ place) => (place === from ? to : place);
  for (const part of [...build.amplifiers, ...batteries(build), ...(build.junctions ?? [])]) part.id = named(part.id);
  for (const run of build.runs) Object.assign(run, { from: named(run.from), to: named(run.to) });
  for (const part of build.vehicle?.capacitors ?? []) part.at = named(part.at);
  if (build.vehicle?.alternator?.at) build.vehicle.alternator.at = named(build.vehicle.alternator.at);
  return build;
}

/** A battery beside the amplifiers, charged over a relay: what led on from the first battery leads on from it.
 * @param {Build} given @returns {Build} */
export function addBattery(given) {
  const build = structuredClone(given);
  const first = firstBattery(build);
  const id = freeName(names(build), "rear");
  const back = grounds(build);
  const feed = build.runs.find((run) => run.from === first && !back.has(run));
  build.vehicle = {
    ...build.vehicle,
    batteries: [...(build.vehicle?.batteries ?? [{ id: first }]), { id, chemistry: "agm", capacity: "80 Ah" }],
  };
  if (!feed) return build;
  build.runs.unshift({
    id: freeName(runNames(build), "charging"),
    from: first,
    to: id,
    length: feed.length,
    ...(feed.route ? { route: feed.route } : {}),
    isolator: { kind: "relay" },
  });
  for (const run of build.runs) {
    if (run.to !== id && run.from === first && !back.has(run))
      Object.assign(run, { from: id, length: near(build), route: "cabin" });
  }
  build.runs.push({
    id: freeName(runNames(build), "rear-strap"),
    from: id,
    to: "body",
    length: near(build),
    route: "cabin",
  });
  return build;
}

/** The build with the amplifiers on the first battery again. @param {Build} given @param {string} id @returns {Build} */
export function removeBattery(given, id) {
  const build = structuredClone(given);
  const first = firstBattery(build);
  const charging = build.runs.find((run) => run.to === id && run.from === first);
  build.runs = build.runs.filter((run) => run !== charging && !(run.from === id && run.to === "body"));
  for (const run of build.runs) {
    if (run.from === id)
      Object.assign(run, {
        from: first,
        length: charging?.length ?? run.length,
      });
    if (run.to === id) run.to = first;
  }
  if (build.vehicle) build.vehicle.batteries = batteries(build).filter((battery) => battery.id !== id);
  return build;
}
