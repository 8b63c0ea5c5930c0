/** File name of a notebook's summary, without extension: `shelter.rootfast` gives `shelter-summary`. */
export const summaryStem = (file: string): string => `${(file.split(/[\\/:]/u).at(-1) ?? file).replace(/\.ya?ml$/iu, "").replace(/\.rootfast$/iu, "")}-summary`;
