/** Reads the roof's dead load: one number, a light and a heavy one, or layers. */
import { deadWeightOf } from "../catalog/dead-weights.js";
import type { Resolved, Roof, Sourced } from "../project/model.js";
import type { NotebookShape } from "../notebook/schema.js";
import type { Layer, RoofDead } from "./dead.js";
import { Wanted } from "./wanted.js";

type LayerFields = Resolved<NotebookShape["roof"]["fields"]["layers"]["of"]["fields"]>;

function readLayer(name: string, fields: LayerFields, wanted: Wanted): Layer {
  const { material, weight, thickness } = fields;
  const row = material && deadWeightOf(material.value);
  if (!row || weight) {
    const stated = weight?.value;
    const light = fields.light?.value ?? stated;
    const heavy = fields.heavy?.value ?? stated;
    if (light === undefined || heavy === undefined) wanted.missing.push(`the material or the weight of the roof's layer ${name}`);
    return { name, light: light ?? NaN, heavy: heavy ?? NaN, source: "as stated" };
  }
  const light = fields.light?.value;
  const heavy = fields.heavy?.value;
  if (light !== undefined && heavy !== undefined) return { name, light, heavy, source: "as stated" };
  if (!row.perThickness) return { name, light: light ?? row.light, heavy: heavy ?? row.heavy, source: `${row.name}, ${row.source}` };
  return { name, light: row.light, heavy: row.heavy, thickness: wanted.need(thickness, `the thickness of the roof's layer ${name}`), source: `${row.name}, ${row.source}` };
}

const finite = (value: Sourced<number> | undefined): number | undefined => (value && Number.isFinite(value.value) ? value.value : undefined);

/** The dead load, with what it lacks noted. */
export function readDead(roof: Roof, wanted: Wanted): RoofDead {
  const layers = roof.layers?.value;
  if (layers && layers.size > 0) return { layers: [...layers].map(([name, layer]) => readLayer(name, layer.value, wanted)) };
  const stated = finite(roof.dead);
  const light = finite(roof["light dead"]) ?? stated;
  const heavy = finite(roof["heavy dead"]) ?? stated;
  if (light === undefined && heavy === undefined) wanted.missing.push("the dead load of the roof");
  else if (light === undefined) wanted.missing.push("the light dead load of the roof, or one dead load for both");
  else if (heavy === undefined) wanted.missing.push("the heavy dead load of the roof, or one dead load for both");
  return { light: light ?? NaN, heavy: heavy ?? NaN };
}

/** Dead loads that contradict each other, in words. */
export function deadConflict(roof: Roof): string | undefined {
  const hasLayers = (roof.layers?.value.size ?? 0) > 0;
  if (hasLayers && (roof.dead || roof["light dead"] || roof["heavy dead"])) {
    return "the roof's dead load is stated as a number and by its layers: keep one of the two";
  }
  const dead = readDead(roof, new Wanted());
  const wrong = "layers" in dead ? dead.layers.find(({ light, heavy }) => light > heavy)?.name : dead.light > dead.heavy ? "the roof" : undefined;
  return wrong === undefined ? undefined : `the light dead load of ${wrong} is more than the heavy one: the light one is the least it can weigh`;
}
