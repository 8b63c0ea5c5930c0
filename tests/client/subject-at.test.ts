import { describe, expect, it } from "vitest";
import { subjectsAt } from "../../client/src/subject-at.js";

const text = `rootfast: 1
columns:
  north line:
    height: 9 ft
    base: A
    stands on: ledge wall   # rock
  south:
    reactions:
      dead:
        down: 2 kip
    stands on: pier
bases:
  A:
    grout: 1 in
foundations:
    pier:
        depth: 7 ft
    ledge wall:
        height: 3 ft
    spare: # not used

site:
  exposure: C`;

const rows: readonly (readonly [line: string, subjects: readonly string[]])[] = [
  ["  north line:", ["columns.north line"]],
  ["    base: A", ["columns.north line"]],
  ["        down: 2 kip", ["columns.south"]],
  ["    stands on: pier", ["columns.south"]],
  ["    grout: 1 in", ["bases.A", "columns.north line"]],
  ["        depth: 7 ft", ["foundations.pier", "columns.south"]],
  ["        height: 3 ft", ["foundations.ledge wall", "columns.north line"]],
  ["    spare: # not used", ["foundations.spare"]],
  ["", ["foundations.spare"]],
  ["columns:", []],
  ["rootfast: 1", []],
];

describe("the supports a line is about", () => {
  it.each(rows)("at %j are %j", (line, subjects) => {
    const lines = text.split("\n");
    expect(subjectsAt(lines, lines.indexOf(line))).toEqual(subjects);
  });

  it("are none above the first key", () => {
    expect(subjectsAt(["# a comment", "columns:"], 0)).toEqual([]);
  });
});
