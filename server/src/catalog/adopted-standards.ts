/** Which editions of the standards each edition of the building code refers to (IBC chapter 35, from memory). */
export interface AdoptedStandards {
  readonly loads: string;
  readonly concrete: string;
  readonly steel: string;
}

export const adoptedStandards: Readonly<Record<string, AdoptedStandards>> = {
  "IBC 2018": { loads: "ASCE 7-16", concrete: "ACI 318-14", steel: "AISC 360-16" },
  "IBC 2021": { loads: "ASCE 7-16", concrete: "ACI 318-19", steel: "AISC 360-16" },
  "IBC 2024": { loads: "ASCE 7-22", concrete: "ACI 318-19", steel: "AISC 360-22" },
};
