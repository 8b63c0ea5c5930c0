/** How a wall runs under a line of posts, how far its ends and joints are from each of them, and what length of it acts with one. */
interface Place {
  readonly x: number;
  readonly y: number;
}

export interface WallRun {
  /** Axis of the plan the wall runs along. */
  readonly axis: "x" | "y";
  /** From one post to the wall's nearest end or joint, toward smaller and larger coordinates, m; negative where the post stands beyond the end. */
  readonly before: number;
  readonly after: number;
  /** Set where a movement joint, and not the wall's end, is nearest on that side. */
  readonly jointBefore?: true;
  readonly jointAfter?: true;
}

/** What the notebook says of a wall in plan beside its length. */
export interface WallPlan {
  readonly axis?: "x" | "y";
  /** From the west or south end to the first post, m; without it the posts stand on the middle of the wall. */
  readonly first?: number;
  /** Movement joints, from the west or south end, m. */
  readonly joints?: readonly number[];
}

/**
 * A wall `length` m long under the posts at `places`. A single post gives no direction: the wall then runs along x unless the plan says otherwise.
 * Gives undefined where the posts stand in a line askew to the plan axes, or across the wall.
 */
export function wallRun(places: readonly Place[], place: number, length: number, { axis: stated, first: lead, joints = [] }: WallPlan = {}): WallRun | undefined {
  const first = places[0];
  const last = places[places.length - 1];
  const dx = last.x - first.x;
  const dy = last.y - first.y;
  const long = Math.max(Math.abs(dx), Math.abs(dy));
  if (Math.min(Math.abs(dx), Math.abs(dy)) > 1e-6 * long) return undefined;
  const found = Math.abs(dy) > Math.abs(dx) ? "y" : "x";
  if (stated !== undefined && long > 0 && stated !== found) return undefined;
  const axis = stated ?? found;
  const here = (places[place] ?? first)[axis];
  const low = Math.min(first[axis], last[axis]);
  const at = lead === undefined ? length / 2 + here - (first[axis] + last[axis]) / 2 : lead + here - low;
  let run: WallRun = { axis, before: at, after: length - at };
  for (const joint of joints) {
    if (joint <= at && at - joint < run.before) run = { ...run, before: at - joint, jointBefore: true };
    if (joint >= at && joint - at < run.after) run = { ...run, after: joint - at, jointAfter: true };
  }
  return run;
}

/** What ends the stretch of wall that acts with a post on one side: half the length stated, the wall's end, a joint, or half way to the next post. */
export type Cut = "length" | "end" | "joint" | "post";

export interface Stretch {
  /** From the post, toward smaller and larger coordinates, m. */
  readonly before: number;
  readonly after: number;
  readonly cutBefore: Cut;
  readonly cutAfter: Cut;
}

/** Length of wall that acts with the post at `place`: half of `lengthPerPost` to each side, cut short where the wall or the post's share of it ends. */
export function wallStretch(places: readonly Place[], place: number, run: WallRun, lengthPerPost: number): Stretch {
  const { axis } = run;
  const here = (places[place] ?? places[0])[axis];
  const side = (sign: 1 | -1, toEnd: number, isJoint: boolean): readonly [number, Cut] => {
    let reach: readonly [number, Cut] = [lengthPerPost / 2, "length"];
    if (toEnd < reach[0]) reach = [toEnd, isJoint ? "joint" : "end"];
    for (const other of places) {
      const half = (sign * (other[axis] - here)) / 2;
      if (half > 0 && half < reach[0] * (1 - 1e-12)) reach = [half, "post"];
    }
    return reach;
  };
  const [before, cutBefore] = side(-1, run.before, run.jointBefore === true);
  const [after, cutAfter] = side(1, run.after, run.jointAfter === true);
  return { before, after, cutBefore, cutAfter };
}
