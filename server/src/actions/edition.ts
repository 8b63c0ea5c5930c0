/** Editions of the load standard that combinations, snow, rain and earthquake have rows for. */
export type Edition = "ASCE 7-10" | "ASCE 7-16" | "ASCE 7-22";
