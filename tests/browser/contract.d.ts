// The contract's types under the names that the page's scripts call them by.
import type { components } from "./generated/contract.ts";

type Schemas = components["schemas"];

declare global {
  type Amplifier = Schemas["Amplifier"];
  type Assessment = Schemas["Assessment"];
  type Build = Schemas["Build"];
  type Change = Schemas["Change"];
  type Finding = Schemas["Finding"];
  type FollowUp = Schemas["FollowUp"];
  type MaterialLine = Schemas["MaterialLine"];
  type Problem = Schemas["Problem"];
  type Run = Schemas["Run"];
  type RunResult = Schemas["RunResult"];
  type Words = {
    [
      Name in
        | "AmplifierClass"
        | "Chemistry"
        | "FuseFamilyName"
        | "GroundSize"
        | "IsolatorKind"
        | "Material"
        | "PowerSupply"
        | "Prefer"
        | "Programme"
        | "Route"
        | "UnitSystem"
        | "Verdict"
    ]: Schemas[Name];
  };
}
