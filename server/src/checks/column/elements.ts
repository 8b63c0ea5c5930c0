/** Widths of the flat parts of a section, and their slenderness: AISC 360-22 B4.1. */
import { formula } from "../../formula/declare.js";

const section = "columns.*.section";

export const flatOf = formula({
  id: "column.flat-width",
  text: "b = B - 3 * t",
  source: "AISC 360-22 B4.1b(d): outside width less three design walls",
  symbols: {
    b: { kind: "length", meaning: "flat width of a wall" },
    B: { kind: "length", meaning: "outside width of that side", field: section, range: [0.05, 0.3] },
    t: { kind: "length", meaning: "design wall", field: section, range: [0.003, 0.012] },
  },
});

export const wallRatio = formula({
  id: "column.wall-ratio",
  text: "lambda = b / t",
  source: "AISC 360-22 B4.1",
  symbols: { lambda: { kind: "ratio", meaning: "width over thickness" }, b: { kind: "length", meaning: "width of the wall, or the diameter", field: section }, t: { kind: "length", meaning: "its thickness", field: section } },
});

export const flangeLean = formula({
  id: "column.half-flange",
  text: "b = B / 2",
  source: "AISC 360-22 B4.1a(a): half the full flange width",
  symbols: { b: { kind: "length", meaning: "half of the flange" }, B: { kind: "length", meaning: "flange width", field: section } },
});

export const webFlat = formula({
  id: "column.web-clear",
  text: "h = H - 2 * t_f - 2 * r_k",
  source: "AISC 360-22 B4.1b(a): clear between the flanges less the fillets",
  symbols: {
    h: { kind: "length", meaning: "clear height of the web" },
    H: { kind: "length", meaning: "depth of the section", field: section, range: [0.1, 0.4] },
    t_f: { kind: "length", meaning: "flange thickness", field: section, range: [0.005, 0.02] },
    r_k: { kind: "length", meaning: "radius of the fillet", field: section, range: [0.005, 0.02] },
  },
});

export const flangeDistance = formula({
  id: "column.flange-distance",
  text: "h_o = H - t_f",
  source: "AISC 360-22 F2.2",
  symbols: {
    h_o: { kind: "length", meaning: "between the middles of the flanges" },
    H: { kind: "length", meaning: "depth of the section", field: section, range: [0.1, 0.4] },
    t_f: { kind: "length", meaning: "flange thickness", field: section, range: [0.005, 0.02] },
  },
});
