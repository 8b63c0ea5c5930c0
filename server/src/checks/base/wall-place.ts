/** Where a post stands on its wall: read once for the faces round the rods and for the wall itself. */
import { type WallRun, wallRun } from "../../mechanics/wall-run.js";
import type { Support } from "../../project/model.js";
import type { Gather } from "../contract.js";

const axisOfSide = { north: "x", south: "x", east: "y", west: "y" } as const;

/** The wall under the post at `place`, to its ends and joints; undefined where that is not told, and `gather` then knows why. */
export function readWallRun(support: Support, gather: Gather, place: number, length: number): WallRun | undefined {
  const f = support.foundation?.fields;
  const side = gather.may(f?.fill?.value.side);
  const runs = gather.may(f?.["wall runs"]);
  const bySide = side && axisOfSide[side];
  const byName = runs && (runs === "east-west" ? "x" : "y");
  if (bySide && byName && bySide !== byName) {
    gather.block(`soil to the ${side} of a wall that runs ${runs} cannot be held back by it: correct \`wall runs\` or the side of the fill`);
    return undefined;
  }
  const joints = gather.may(f?.["movement joints"])?.map(({ value }) => value);
  const run = wallRun(support.places, place, length, { axis: bySide ?? byName, first: gather.may(f?.["first post"]), joints });
  if (run === undefined) {
    gather.block("the posts stand in a line askew to the plan axes or across their wall, so the wall's faces are askew to the plate; walls are worked out only along x or y");
    return undefined;
  }
  if (run.before <= 0 || run.after <= 0) gather.block(run.jointBefore || run.jointAfter ? "the post stands on a movement joint: move the joint" : "the wall is shorter than the line of posts on it");
  return run;
}
