/** Sizes of a column and its base that contradict each other or what they stand on. */
import { placedSection } from "../../catalog/sections.js";
import { isAbove } from "../../mechanics/compare.js";
import type { Base, Column, Support } from "../../project/model.js";
import { readQuantity } from "../../units/parse.js";
import type { Found, ShowAs } from "./judge.js";

interface Top {
  readonly x: number | undefined;
  readonly y: number | undefined;
}

/** Plan of a pad the plate stands right on. Plates on piers and pedestals have a check of their own. */
function padBelow({ foundation }: Support): Top | undefined {
  const fields = foundation?.fields;
  const kind = fields?.kind?.value;
  if (!fields || fields.pedestal || (kind !== "footing" && kind !== "footing on rock")) return undefined;
  return { x: fields.width?.value, y: fields.length?.value };
}

function* plateFound(support: Support, base: Base, show: ShowAs): Generator<Found> {
  const plate = base.plate;
  const B = plate?.value.width?.value;
  const N = plate?.value.length?.value;
  if (!plate || B === undefined || N === undefined) return;
  const shown = (value: number) => show(value, "length");
  const thickness = support.foundation?.fields.kind?.value === "wall on footing" ? support.foundation.fields.thickness?.value : undefined;
  if (thickness !== undefined && isAbove(Math.min(B, N), thickness)) yield { message: `Plate ${shown(Math.min(B, N))} on a wall of ${shown(thickness)}: it stands out past the faces. Take a smaller plate or a thicker wall.`, at: plate };
  const pad = padBelow(support);
  for (const [side, concrete, where] of [[B, pad?.x, "along x"], [N, pad?.y, "along y"]] as const)
    if (concrete !== undefined && isAbove(side, concrete)) yield { message: `Plate ${shown(side)} ${where}, pad ${shown(concrete)}: it stands out past the concrete. Take a smaller plate or a wider pad.`, at: plate };
  const section = support.column?.fields.section?.value;
  if (!section) return;
  const { alongX, alongY } = placedSection(section, support.column?.fields["deep side"]?.value ?? "along x");
  for (const [side, column, where] of [[B, alongX, "along x"], [N, alongY, "along y"]] as const)
    if (isAbove(column, side)) yield { message: `Column ${shown(column)} ${where}, plate ${shown(side)}: the column stands out past its plate. Take a larger plate.`, at: plate };
}

function* rodsFound({ anchors, grout, "gap below nuts": gap }: Base, show: ShowAs): Generator<Found> {
  const hook = anchors?.value["hook length"];
  if (hook && anchors?.value.end?.value === "headed") yield { message: `The rods are headed, and a hook of ${show(hook.value, "length")} is given. Take out the one that is wrong.`, at: hook };
  if (grout && gap && grout.value > 0 && gap.value > 0)
    yield { message: `Grout ${show(grout.value, "length")}, and a gap of ${show(gap.value, "length")} below the nuts, which is open only where no grout is placed. Correct one of them.`, at: gap };
}

const counts: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, six: 6, eight: 8, twelve: 12 };
const boltWords = /\b(one|two|three|four|six|eight|twelve|\d{1,2})\s+((?:\d+-)?\d+(?:\/\d+)?\s*(?:in\.?|mm))(?:\s+[\w.-]+){0,2}\s+bolts?\b/iu;

/** The connection in words against its bolts: "four 5/8 in bolts" with a count of six. */
function* detailFound(column: Column, show: ShowAs): Generator<Found> {
  const top = column["top connection"]?.value;
  const said = top?.detail && boltWords.exec(top.detail.value);
  const bolts = top?.bolts?.value;
  if (!said || !bolts) return;
  const count = counts[said[1].toLowerCase()] ?? Number(said[1]);
  const size = readQuantity(said[2].replace(".", ""), "length");
  if (bolts.count && bolts.count.value !== count) yield { message: `The detail at the column top says ${said[1]} bolts, and ${bolts.count.value} are given. Correct one of them.`, at: bolts.count };
  if (bolts.diameter && size.ok && (isAbove(bolts.diameter.value, size.value) || isAbove(size.value, bolts.diameter.value)))
    yield { message: `The detail at the column top says bolts of ${show(size.value, "length")}, and ${show(bolts.diameter.value, "length")} is given. Correct one of them.`, at: bolts.diameter };
}

/** What of a column, its plate and its rods does not agree. */
export function* steelFound(support: Support, show: ShowAs): Generator<Found> {
  if (support.base) {
    yield* plateFound(support, support.base.fields, show);
    yield* rodsFound(support.base.fields, show);
  }
  if (support.column) yield* detailFound(support.column.fields, show);
}
