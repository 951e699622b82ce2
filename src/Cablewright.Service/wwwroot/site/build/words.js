// The words of the contract, as people say them. The type check holds each list to the contract.

/** @type {Record<Words["AmplifierClass"], string>} */
const amplifierClass = {
  D: "Class D",
  AB: "Class AB",
  A: "Class A",
  B: "Class B",
  H: "Class H",
};

/** @type {Record<Words["Material"], string>} */
export const materials = {
  copper: "copper",
  "tinned-copper": "tinned copper",
  "copper-clad-aluminium": "copper-clad aluminium (CCA)",
  aluminium: "aluminium",
};

/** @type {Record<Words["Route"], string>} */
const routes = {
  cabin: "in the cabin",
  "engine-bay": "in the engine bay",
  underbody: "under the floor",
  loom: "in a loom",
};

/** @type {Record<Words["Chemistry"], string>} */
const chemistries = {
  flooded: "Flooded lead-acid",
  agm: "AGM",
  gel: "Gel",
  lifepo4: "Lithium (LiFePO4)",
};

/** @type {Record<Words["Programme"], string>} */
const programmes = {
  compressed: "Dense music",
  dynamic: "Dynamic music",
  sine: "Test tones",
};

/** @type {Record<Words["PowerSupply"], string>} */
const supplies = { regulated: "Regulated", unregulated: "Unregulated" };

/** @type {Record<Words["IsolatorKind"], string>} */
const isolators = {
  relay: "Split-charge relay",
  diode: "Isolator diode",
  "dc-dc-charger": "DC-DC charger",
};

/** @type {Record<Words["FuseFamilyName"], string>} */
export const families = {
  "blade-c": "Standard blade",
  "blade-e": "Maxi blade",
  "blade-f": "Mini blade",
  "strip-sf30": "Bolt-in strip SF30",
  "strip-sf51": "Bolt-in strip SF51",
  "mini-ANL": "mini-ANL",
  ANL: "ANL",
  "glass-agu": "Glass AGU",
  "single-bolt": "Single-bolt fuse",
  "class-t": "Class T",
  "circuit-breaker": "Circuit breaker",
};

/** @type {Record<Words["GroundSize"], string>} */
const grounds = { "as-supply": "as its supply", free: "free" };

/** @type {Record<Words["Prefer"], string>} */
const preferences = {
  cost: "least cost",
  mass: "least mass",
  "fewest-sizes": "fewest sizes",
};

/** By the member that they stand in. @type {Record<string, Record<string, string>>} */
export const wordsOf = {
  amplifierClass,
  material: materials,
  route: routes,
  chemistry: chemistries,
  programme: programmes,
  powerSupply: supplies,
  kind: isolators,
  family: families,
  groundSize: grounds,
  prefer: preferences,
};

/** Sizes that the list offers, as the trade writes them; a build may state others. */
export const sizes = {
  us: ["12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "2 AWG", "1 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG"],
  metric: ["4 mm2", "6 mm2", "10 mm2", "16 mm2", "25 mm2", "35 mm2", "50 mm2", "70 mm2", "95 mm2"],
};
